import { type PastResponse, type PastTurn, pastResponses } from '../adjust/index.ts'
import { isWholeAxle } from '../corner/index.ts'
import { foldJob, type JobState } from '../job/index.ts'
import type { AxleEnd } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import { cornerOfJob, nameOfJob } from './past-job.ts'
import { readRounds } from './read-rounds.ts'
import { recordedMove } from './recorded-move.ts'
import { cornerAt, type SheetSources } from './sources.ts'
import { cornersSetup, pointsKnown } from './wheel-setups.ts'

export type { PastResponse }

/**
 * What the moves of a job say of how its corners answer, drawn out of its log: plain data, small enough to keep beside the job,
 * that another vehicle's `SheetSources.learned` takes. Whole axles say nothing, nor do wheels whose moves teach nothing.
 *
 * @returns one for each axle and angle, in the order front, rear
 * @source own derivation: docs/methods/learned-response.md
 */
export function responsesOf(sources: SheetSources): readonly PastResponse[] {
  const state = foldJob(sources.job.entries)
  return (['front', 'rear'] as const).flatMap((end) => responsesAt(sources, state, end))
}

function responsesAt(sources: SheetSources, state: JobState, end: AxleEnd): readonly PastResponse[] {
  const corner = cornerAt(sources, end)
  if (!corner || isWholeAxle(corner.layout)) return []
  const rounds = readRounds(sources, state)
  const name = { ...nameOfJob(sources, state), ...cornerOfJob(corner) }
  const when = rounds.at(-1)?.round.readings[0]?.at ?? null
  const turns = rounds.slice(1).flatMap((after, i) =>
    (['left', 'right'] as const).flatMap((side): PastTurn[] => {
      const before = rounds[i]!
      const move = recordedMove(corner, state, [before, after], side)
      const wheel = cornersSetup(corner, state, before.round)[side]
      return move ? [{ side, wheel, move, rounds: [before.round.number, after.round.number] }] : []
    }),
  )
  const told = (some: readonly PastTurn[]) => pastResponses({ ...name, when }, pointsKnown(corner), some)
  return told(turns.filter((turn) => teaches(() => told([turn]))))
}

/** A setting beyond its adjuster's range, or a corner that cannot stand so, teaches nothing; the job's own sheet tells why. */
function teaches(work: () => unknown): boolean {
  try {
    work()
    return true
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return false
  }
}
