import { clearedBy, coverageOf, type Entry, foldJob, type Job, type JobState } from '../job/index.ts'
import type { Stage } from './sheet.ts'
import { type StageState, stagesOf } from './stages.ts'

/** One job on the list of jobs: what, which vehicle, where it stands, what is due. @source definition */
export interface JobLine {
  readonly job: string
  readonly workshop: string
  readonly vehicle: string
  readonly complaint: string
  /** The stage at which the work goes on; null once the job is signed off. */
  readonly stage: Stage | null
  readonly stages: readonly StageState[]
  /** "Signed off", "Signed off, 3 entries not covered", "Not road-ready: …", "Parts wait for an answer: …" */
  readonly stands: string
  /** Follow-ups that are not done, the nearest first; those without a day last. */
  readonly due: readonly { readonly what: string; readonly on: string | null }[]
  /** Lots and numbers of parts that were fitted: what a search finds. */
  readonly lots: readonly string[]
  /** When it was opened and last written on, as the devices' clocks had it. */
  readonly opened: string | null
  readonly last: string | null
  /** The old job that this one follows. */
  readonly follows: string | null
  readonly invented: boolean
}

/**
 * A job as one line. Pure, and without the angles: it is quick.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function jobLineOf(job: Job): JobLine {
  const state = foldJob(job.entries)
  const stages = stagesOf(job.entries, state)
  const timed = job.entries.flatMap(({ at }) => (at === undefined ? [] : [at]))
  return {
    job: job.job,
    workshop: job.workshop,
    vehicle: state.opened?.vehicle ?? 'Vehicle not named',
    complaint: state.opened?.complaint ?? '',
    stage: stages.find((one) => one.state === 'now')?.stage ?? null,
    stages,
    stands: standsOf(job.entries, state, stages),
    due: state.followUps
      .filter(({ entry }) => clearedBy(state, entry) === null)
      .map(({ what, on, after }) => ({
        what: after ? `${what}, after ${after.text}` : what,
        on: on?.slice(0, 10) ?? null,
      }))
      .sort((a, b) => order(a.on).localeCompare(order(b.on))),
    lots: [
      ...new Set(
        state.renewed.flatMap(({ lot, number }) => [lot, number].filter((one) => one !== undefined)),
      ),
    ],
    opened: timed[0] ?? null,
    last: timed.at(-1) ?? null,
    follows: state.cameBack.at(-1)?.job ?? null,
    invented: state.opened?.invented === true,
  }
}

/** Days sort as texts; without one comes last. */
const order = (on: string | null) => on ?? '9999'

function standsOf(entries: readonly Entry[], state: JobState, stages: readonly StageState[]): string {
  const held = state.notRoadReady.find(({ entry }) => clearedBy(state, entry) === null)
  if (held) return `Not road-ready: ${held.reason}`
  // Two rules may ask about the same two entries.
  const conflicts = new Set(state.troubles.flatMap(({ choice }) => (choice ? [choice.join()] : []))).size
  if (conflicts > 0)
    return conflicts === 1 ? 'Two values: somebody must decide' : `${conflicts} things to decide`
  const signed = coverageOf(entries).at(-1)
  if (signed)
    return signed.late.length === 0
      ? 'Signed off'
      : `Signed off, ${signed.late.length} ${signed.late.length === 1 ? 'entry' : 'entries'} not covered`
  const asked = state.extraWork.find(
    (one) =>
      one.answer === 'asked' && !state.extraWork.some((o) => o.what === one.what && o.answer !== 'asked'),
  )
  if (asked) return `Waits for an answer: ${asked.what}`
  const now = stages.find((one) => one.state === 'now')
  return now ? `At ${now.stage}` : 'All stages done, not signed'
}
