import { coverageOf, type Entry, type JobState } from '../job/index.ts'
import type { HandoverSheet } from './handover-sheet.ts'
import type { ProofSheet } from './proof-sheet.ts'
import type { SheetSources } from './sources.ts'

/**
 * What a sign-off would cover, in a sentence; the last one, and each entry that came in after it.
 *
 * @source own derivation: docs/methods/record.md
 */
export function handoverSigning(
  { job, corners, spec, kit }: SheetSources,
  state: JobState,
  { sentence, hands, doubts }: Pick<ProofSheet, 'sentence' | 'hands'> & Pick<HandoverSheet, 'doubts'>,
  notedWords: (entry: number) => string,
): Pick<HandoverSheet, 'covers' | 'signed'> {
  const entries: readonly Entry[] = job.entries
  const models = [corners.front.name, corners.rear?.name, spec && 'the spec sheet', kit && 'the kit'].filter(
    Boolean,
  )
  const people = hands.map(({ hand }) => hand).filter((hand) => hand !== 'not said')
  const last = coverageOf(entries).at(-1)
  const fact = last && state.signedOff.find(({ entry }) => entry === last.entry)
  return {
    covers: `Signing covers all ${entries.length} entries of this job${people.length > 0 ? `, by ${people.join(', ')}` : ''}, and what they mean by ${models.join(', ')}. It says: ${sentence}${doubts.length > 0 ? ` On the road test ${doubts.length === 1 ? 'one answer is' : `${doubts.length} answers are`} not well.` : ''} What is noted afterwards stands as late.`,
    signed: last
      ? {
          words: `Signed off, ${notedWords(last.entry)}: ${last.covers.length} ${last.covers.length === 1 ? 'entry' : 'entries'} covered.${fact?.remark ? ` ${fact.remark}` : ''}`,
          late: last.late.map((entry) => `${upper(whatOf(entries[entry]!))}, ${notedWords(entry)}`),
        }
      : null,
  }
}

/** A kind with what it is about: "follow-up, wheel nuts again". */
function whatOf({ kind, data }: Entry): string {
  const about = ['what', 'joint', 'part', 'wheel', 'text', 'reason'].flatMap((name) => {
    const text = data[name]
    return typeof text === 'string' ? [text] : []
  })
  return [kind, ...about.slice(0, 2)].join(', ')
}

const upper = (words: string) => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`
