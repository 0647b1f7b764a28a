import type { KeptPlace } from './kept-edits.ts'
import { noChoice, type PlanChoice } from './plan-messages.ts'

const place = ({ job, mark }: KeptPlace) => `axlewright/1/plan/${job}/${mark}`

const isIds = (value: unknown): value is readonly string[] | null =>
  value === null || (Array.isArray(value) && value.every((one) => typeof one === 'string'))

/** What was chosen about a job's plan on this device; nothing where there is none or it cannot be read. */
export function keptPlan(of: KeptPlace): PlanChoice {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place(of)) ?? 'null')
    if (typeof kept !== 'object' || kept === null) return noChoice
    const { goal, support, order, make } = kept as Record<string, unknown>
    if (!isIds(goal) || !isIds(order)) return noChoice
    const held = support === 'lift' || support === 'jack and stands' ? support : null
    const made = make === 'safe to stand' || make === 'safe to roll' ? make : null
    return { goal, support: held, order, make: made, longer: false }
  } catch {
    return noChoice
  }
}

/** Keeps what was chosen on this device. Returns false when the device refuses. */
export function keepPlan(of: KeptPlace, choice: PlanChoice): boolean {
  try {
    const { longer: _, ...kept } = choice
    if (Object.values(kept).every((one) => one === null)) localStorage.removeItem(place(of))
    else localStorage.setItem(place(of), JSON.stringify(kept))
    return true
  } catch {
    return false
  }
}
