import type { JobState } from '../job/index.ts'
import type { ProofSheet } from './proof-sheet.ts'

type Parts = Pick<
  ProofSheet,
  | 'angles'
  | 'after'
  | 'bolts'
  | 'declined'
  | 'deviations'
  | 'electronics'
  | 'heights'
  | 'wear'
  | 'notRoadReady'
  | 'troubles'
> & { readonly unread: readonly string[]; readonly missing: readonly string[] }

/**
 * All that is open, each in a sentence: what is unsafe first. Nothing is left out to make a proof look finished.
 */
export function proofOpen(parts: Parts, state: JobState): readonly string[] {
  const { angles, after, bolts, deviations, electronics, declined, heights, troubles, unread } = parts
  const joints = bolts.flatMap(({ done, name, wheel, state: now, open }) =>
    done ? [] : [open[0] ?? `${upper(name)}, ${wheel}, is ${now}.`],
  )
  const work = state.moves.length > 0 || state.renewed.length > 0
  const rounds =
    after === null
      ? [
          angles.length > 0 || work
            ? 'The angles were not read again after the work: nothing here proves them.'
            : 'No angles were read.',
        ]
      : [
          ...(after.purpose === 'proving'
            ? []
            : [`The last readings are of a ${after.purpose} round, not of a proving one.`]),
          ...(after.renewedSince ? ['A part was renewed after the last readings: read again.'] : []),
          ...(after.movedSince ? ['Adjusters were turned after the last readings: read again.'] : []),
        ]
  const rows = [...angles, ...heights].flatMap(({ label, limit, after: now }) => {
    if (!limit || now === null) return []
    return now.verdict === 'inside' ? [] : [`${label}: ${now.text} ${now.spread}, ${now.verdict}.`]
  })
  const notRead = [
    ...(after
      ? [...angles, ...heights].flatMap(({ label, limit, after: now }) =>
          limit && now === null ? [`${label}: not read again.`] : [],
        )
      : []),
    ...unread.map((what) => `${what}: has a limit and was never read.`),
  ]
  return [
    ...parts.notRoadReady.map((reason) => `Not road-ready: ${reason}`),
    ...joints,
    ...rounds,
    ...rows,
    ...notRead,
    ...parts.wear.flatMap(({ open, what, words }) => (open ? [`${what}: ${words}`] : [])),
    ...deviations.flatMap(({ open, what, words }) => (open ? [`${what}: ${words}.`] : [])),
    ...electronics.flatMap(({ open, what, words }) => (open ? [`${what}: ${words}.`] : [])),
    ...declined.flatMap(({ open, what, words }) => (open ? [`${what}: ${words}.`] : [])),
    ...parts.missing,
    ...troubles,
  ]
}

/** "Not finished: 12 joints are open, 4 readings are not proven inside, …" */
export function proofSentence(parts: Parts, open: readonly string[]): string {
  if (open.length === 0)
    return `Finished: ${parts.bolts.length > 0 ? 'every joint that was opened is closed' : 'no joint was opened'}${parts.angles.length > 0 ? ', and every reading with a limit is inside it' : ''}.`
  const joints = parts.bolts.filter(({ done }) => !done).length
  const rows = [...parts.angles, ...parts.heights].filter(
    ({ limit, after }) => limit && after && after.verdict !== 'inside',
  ).length
  const other = open.length - joints - rows
  const count = (n: number, one: string, more: string) => (n === 0 ? [] : [`${n} ${n === 1 ? one : more}`])
  return `Not finished: ${[
    ...(parts.notRoadReady.length > 0 ? ['it is not road-ready'] : []),
    ...count(joints, 'joint is open', 'joints are open'),
    ...count(rows, 'value is not proven inside', 'values are not proven inside'),
    ...count(other - parts.notRoadReady.length, 'other thing is open', 'other things are open'),
  ].join(', ')}.`
}

const upper = (words: string) => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`
