import type { Assembly, Consequence } from '../plan/index.ts'
import type { PlanSheet } from './plan-sheet.ts'

/** What the work obliges to afterwards, apart from what it follows from. */
export const planConsequences = (
  { parts, joints }: Assembly,
  consequences: readonly Consequence[],
): PlanSheet['consequences'] =>
  consequences.map(({ sentence, because }) => {
    const called = because.map((id) => parts[id]?.called ?? joints[id]?.called ?? id)
    const listed = [called.slice(0, -1).join(', '), ...called.slice(-1)].filter(Boolean).join(' and ')
    const head = `${capital(listed)}: `
    const words = sentence.startsWith(head) ? capital(sentence.slice(head.length)) : sentence
    return { words, because: listed }
  })

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
