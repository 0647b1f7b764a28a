import { useState } from 'react'
import type { PlanSheet } from '../../../sheet/index.ts'
import { usePrinting } from '../../drawing/use-printing.ts'
import type { OpenPlan } from '../../state/use-plan.ts'
import { upper } from '../bolts/upper.ts'
import '../angles/choice.css'

type Choice = PlanSheet['choices'][number]

const supports = [
  ['lift', 'Lift'],
  ['jack and stands', 'Jack and stands'],
] as const

const makes = [
  ['safe to stand', 'Make it safe to stand'],
  ['safe to roll', 'Make it safe to roll'],
] as const

/** What is replaced, and what carries the vehicle: both may be chosen. */
export function PlanGoal({ plan, sheet }: { plan: OpenPlan; sheet: PlanSheet }) {
  const [choosing, setChoosing] = useState(false)
  const [leaving, setLeaving] = useState(false)
  const printing = usePrinting()
  // What was touched counts at once, before the plan of it is there.
  const goal = plan.choice.goal ?? sheet.choices.filter((one) => one.chosen).map(({ id }) => id)
  const has = ({ id }: Choice) => goal.includes(id)
  const open = !printing && (choosing || sheet.bands.length === 0)
  const toggle = (ids: readonly string[], on: boolean) =>
    plan.choose({ goal: [...goal.filter((id) => !ids.includes(id)), ...(on ? ids : [])] })
  return (
    <section className="plan-goal" aria-label="What is replaced">
      <div className="plan-goal-head">
        <h2>Replaced</h2>
        <p className="plan-goal-said">
          {sheet.goal.length > 0 ? sheet.goal.map(upper).join(' · ') : 'Nothing is chosen yet'}
        </p>
        <div className="plan-goal-buttons screen-only">
          {sheet.bands.length > 0 && (
            <button type="button" aria-expanded={choosing} onClick={() => setChoosing(!choosing)}>
              {choosing ? 'Done choosing' : 'Choose parts'}
            </button>
          )}
          {plan.choice.make === null ? (
            <button type="button" aria-expanded={leaving} onClick={() => setLeaving(!leaving)}>
              Leave it unfinished
            </button>
          ) : (
            <button type="button" onClick={() => plan.choose({ make: null })}>
              Go on with the work
            </button>
          )}
          {plan.choice.goal && plan.choice.make === null && (
            <button type="button" onClick={() => plan.choose({ goal: null })}>
              As the log says
            </button>
          )}
        </div>
      </div>
      {leaving && plan.choice.make === null && (
        <div className="plan-leave">
          <p>
            From how it stands by the log: what holds springs and wheels comes first, and a tag says what is
            open.
          </p>
          <div className="plan-goal-buttons">
            {makes.map(([make, word]) => (
              <button
                key={make}
                type="button"
                onClick={() => {
                  setLeaving(false)
                  plan.choose({ make })
                }}
              >
                {word}
              </button>
            ))}
          </div>
        </div>
      )}
      {open && (
        <>
          <ul className="plan-choices">
            {rowsOf(sheet.choices).map(({ name, sides }) => (
              <li key={name}>
                <span className="plan-part">{upper(name)}</span>
                {sides.map((side) => (
                  <button
                    key={side.id}
                    type="button"
                    className="plan-side"
                    aria-pressed={has(side)}
                    aria-label={sideOf(side) === 'Replace' ? `Replace ${side.words}` : side.words}
                    onClick={() => toggle([side.id], !has(side))}
                  >
                    {sideOf(side)}
                  </button>
                ))}
                {sides.length === 2 && (
                  <button
                    type="button"
                    className="plan-side"
                    aria-label={`${name}, both sides`}
                    aria-pressed={sides.every(has)}
                    onClick={() =>
                      toggle(
                        sides.map((side) => side.id),
                        !sides.every(has),
                      )
                    }
                  >
                    Both
                  </button>
                )}
              </li>
            ))}
          </ul>
          <fieldset className="choice">
            <legend>Carried by</legend>
            {supports.map(([support, word]) => (
              <button
                key={support}
                type="button"
                aria-pressed={plan.choice.support === support}
                onClick={() => plan.choose({ support: plan.choice.support === support ? null : support })}
              >
                {word}
              </button>
            ))}
          </fieldset>
        </>
      )}
    </section>
  )
}

const sideOf = ({ wheel }: Choice) =>
  wheel.includes('left') ? 'Left' : wheel.includes('right') ? 'Right' : 'Replace'

/** One row a part, its sides together. */
function rowsOf(choices: readonly Choice[]) {
  const rows = new Map<string, { name: string; sides: Choice[] }>()
  for (const choice of choices) {
    const name = choice.words.replace(/\b(left|right) /, '')
    const key = `${choice.wheel.replace(/ ?(left|right)/, '')} ${name}`
    const row = rows.get(key) ?? { name, sides: [] }
    row.sides.push(choice)
    rows.set(key, row)
  }
  const alike = new Set([...rows.values()].map(({ name }) => name)).size < rows.size
  return [...rows.entries()].map(([key, { name, sides }]) => ({ name: alike ? key : name, sides }))
}
