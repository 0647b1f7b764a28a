import { clearedBy, type JobState, type Told } from '../job/index.ts'
import type { ArrivalNoted } from './arrival-sheet.ts'
import type { HandoverSheet } from './handover-sheet.ts'

/**
 * What was agreed, declined or held back, each with what is still to be done about it.
 *
 * @source definition
 */
export function handoverFacts(
  state: JobState,
  noted: (fact: Told) => ArrivalNoted,
): Pick<HandoverSheet, 'extra' | 'followUps' | 'notReady' | 'hours'> {
  const shown = (fact: Told) => noted(fact).texts
  return {
    notReady: state.notRoadReady.map((fact) => ({
      noted: noted(fact),
      what: fact.reason,
      words: said(
        `told: ${shown(fact)['told']}`,
        fact.keys && `keys: ${fact.keys}`,
        fact.made && `made ${fact.made}`,
        fact.hand,
      ),
      done: clearedBy(state, fact.entry) !== null,
    })),
    extra: state.extraWork.map((fact) => ({
      noted: noted(fact),
      what: fact.what,
      words: said(
        fact.answer === 'asked' ? 'asked, not answered' : fact.answer === 'yes' ? 'agreed' : 'declined',
        fact.by && `by ${shown(fact)['by']}`,
        fact.how,
        fact.why,
        fact.answer === 'no' && (fact.risk ? `risk said: ${fact.risk}` : 'no risk recorded'),
      ),
      done:
        fact.answer !== 'asked' ||
        state.extraWork.some((other) => other.what === fact.what && other.answer !== 'asked'),
    })),
    followUps: state.followUps.map((fact) => ({
      noted: noted(fact),
      what: fact.what,
      when: fact.on?.slice(0, 10) ?? (fact.after ? `after ${fact.after.text}` : 'no day said'),
      words: said(fact.wheels?.join(', '), fact.card && 'the driver has a card', fact.remark),
      card: fact.card === true,
      done: clearedBy(state, fact.entry) !== null,
    })),
    hours: state.notes.flatMap(({ text }) =>
      text.startsWith(hoursSaid) ? [text.slice(hoursSaid.length)] : [],
    ),
  }
}

/** How hours stand in the log: a note. */
const hoursSaid = 'Hours worked: '

const said = (...parts: readonly (string | false | null | undefined)[]) => parts.filter(Boolean).join(', ')
