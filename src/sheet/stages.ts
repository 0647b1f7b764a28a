import { coverageOf, type Entry, type JobState } from '../job/index.ts'
import type { Stage } from './sheet.ts'

const stages: readonly Stage[] = ['Arrival', 'Findings', 'Plan', 'Strip', 'Refit', 'Angles', 'Handover']

/** How far a stage is, as its log says. */
export interface StageState {
  readonly stage: Stage
  /** "now": the first that is not done once the last that is done is behind. */
  readonly state: 'done' | 'now' | 'open'
}

/**
 * Where a job is, as far as its log says. A stage that nothing was written in is passed over when a later one is done:
 * not every job strips a corner.
 *
 * @source own derivation: the log's vocabulary, docs/methods/formats.md
 */
export function stagesOf(entries: readonly Entry[], state: JobState): readonly StageState[] {
  const done = doneStages(entries, state)
  const last = stages.findLastIndex((stage) => done.has(stage))
  const now = stages.find((stage, i) => !done.has(stage) && (i > last || worked(stage, state))) ?? null
  return stages.map((stage) => ({
    stage,
    state: stage === now ? 'now' : done.has(stage) ? 'done' : 'open',
  }))
}

function doneStages(entries: readonly Entry[], state: JobState): ReadonlySet<Stage> {
  const done = new Set<Stage>()
  const { opened, pressures, heights, rounds, renewed, undone } = state
  if (opened && pressures && heights.length > 0) done.add('Arrival')
  if (renewed.length > 0 || undone.length > 0 || state.extraWork.length > 0) done.add('Findings')
  if (undone.length > 0) done.add('Plan')
  if (undone.length > 0 && closedAgain(state)) {
    done.add('Strip')
    if (allFinal(state)) done.add('Refit')
  }
  const read = rounds.findLast(({ readings }) => readings.length > 0)
  if (read?.purpose === 'proving' && read.moves.length === 0) done.add('Angles')
  if (isSigned(entries)) done.add('Handover')
  return done
}

/** A part is back, or a joint is being closed: the strip is over. */
const closedAgain = ({ tightenings, renewed }: JobState): boolean =>
  tightenings.length > 0 || renewed.length > 0

/** Every joint that was undone is final again by the log; what else holds it the bolt book says. */
const allFinal = ({ undone, tightenings }: JobState): boolean =>
  undone.every(({ joint, wheel, entry }) =>
    tightenings.some(
      (one) => one.joint === joint && one.wheel === wheel && one.stage === 'final' && one.entry > entry,
    ),
  )

/** A stage before the last that is done, in which something was begun and is not finished. */
const worked = (stage: Stage, state: JobState): boolean =>
  stage === 'Refit' && state.undone.length > 0 && closedAgain(state)

const isSigned = (entries: readonly Entry[]): boolean => {
  const last = coverageOf(entries).at(-1)
  return last !== undefined && last.late.length === 0
}
