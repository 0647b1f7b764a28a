import {
  type AxleSetup,
  type LearnedResponse,
  learnMove,
  type PastJob,
  priorResponse,
  type TaughtByJobs,
  taughtPrior,
  type WheelSetup,
} from '../adjust/index.ts'
import type { Corner } from '../corner/index.ts'
import type { JobState } from '../job/index.ts'
import { Refusal } from '../quantity/index.ts'
import { cornerOfJob } from './past-job.ts'
import { type ReadRound, recordedMove } from './recorded-move.ts'
import { axleSetup, cornersSetup, pointsKnown } from './wheel-setups.ts'

/** What other jobs have taught, and whose vehicle asks. */
export interface TaughtFor {
  readonly taught: TaughtByJobs
  readonly job: Pick<PastJob, 'vehicle'>
}

/**
 * Both wheels with what other jobs and earlier moves of this one have taught about them: one answer for both, since an error of
 * the drawing is the same on either side. A whole axle is taken as its points say, since what one wheel's adjuster does there
 * is no other wheel's lesson.
 */
export function taughtSetup(
  corner: Corner,
  state: JobState,
  rounds: readonly ReadRound[],
  past: TaughtFor | null,
): AxleSetup {
  const last = rounds.at(-1)!
  const setup = axleSetup(corner, state, last.round)
  if ('axle' in setup) return setup
  const start = startOf(corner, setup.left, past)
  const response = rounds.slice(1).reduce((sofar, after, i) => {
    const before = rounds[i]!
    return (['left', 'right'] as const).reduce((response, side) => {
      const move = recordedMove(corner, state, [before, after], side)
      return move ? learned(response, cornersSetup(corner, state, before.round)[side], move) : response
    }, sofar)
  }, start)
  return { ...setup, left: { ...setup.left, response }, right: { ...setup.right, response } }
}

function startOf(corner: Corner, wheel: WheelSetup, past: TaughtFor | null): LearnedResponse {
  const from = { known: pointsKnown(corner), source: `response: ${corner.id}` }
  return past
    ? taughtPrior(wheel, from, past.taught, { ...past.job, ...cornerOfJob(corner) })
    : priorResponse(wheel, from)
}

function learned(
  response: LearnedResponse,
  wheel: WheelSetup,
  move: NonNullable<ReturnType<typeof recordedMove>>,
): LearnedResponse {
  try {
    return learnMove(response, wheel, move)
  } catch (error) {
    // A recorded setting outside the adjuster's range teaches nothing; the job's troubles name it.
    if (!(error instanceof Refusal)) throw error
    return response
  }
}
