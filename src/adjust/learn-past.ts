import type { Side, WheelAngle } from '../linkage/index.ts'
import { covarianceMatrix, type Measured, type Part } from '../measure/index.ts'
import { lessonOf, type RecordedMove } from './learn-lesson.ts'
import { roleOf } from './learn-role.ts'
import { priorResponse } from './prior-response.ts'
import type { WheelSetup } from './problem.ts'
import type { PointsKnown } from './response-prior.ts'

/** Whose moves they were. @source definition */
export interface PastJob {
  /** Names the job among all jobs. */
  readonly job: string
  readonly vehicle: string
  /** Names what was drawn: two vehicles of one drawing have one model. */
  readonly model: string
  /** "front double wishbone, typical": what answers alike by its nature, and how its points are known. */
  readonly layout: string
  /** When, by the device's clock; shown, never used to order. */
  readonly when: string | null
}

/** What one move of a past job did to one angle of one wheel. @source definition */
export interface PastMove {
  readonly side: Side
  /** Names of the adjusters that were turned. */
  readonly turned: readonly string[]
  /** Change of the angle by the points and by the readings, rad. */
  readonly foreseen: number
  readonly seen: number
  /** What one standard deviation of each role's slope would add, rad: stroke · u of the prior. */
  readonly weights: readonly number[]
}

/** What the moves of a past job say of one angle; plain data that a file can keep. @source definition */
export interface PastResponse extends PastJob {
  readonly angle: WheelAngle
  /** Columns of the weights. */
  readonly roles: readonly string[]
  readonly moves: readonly PastMove[]
  /** Covariance of what was seen, rad², row after row: readings and settings, with what they share. */
  readonly noise: readonly number[]
}

/** A move of a past job, with the wheel as it stood before. @source definition */
export interface PastTurn {
  readonly side: Side
  readonly wheel: WheelSetup
  readonly move: RecordedMove
  /** Rounds of readings before and after: what was set in one round and undone in another is one error. */
  readonly rounds: readonly [number, number]
}

/** Nothing is known better than this, rad (a hundredth of a minute of arc): keeps exact data from being infinitely sure. @source own choice */
const finest = 3e-6

/**
 * What a job's moves say of how its corners answer, angle by angle, with everything that made it unsure.
 *
 * @param known how the corner's points are known
 * @throws {Refusal} `setting-out-of-range` when a recorded setting lies outside its adjuster's range
 * @source own derivation: docs/methods/learned-response.md
 */
export function pastResponses(
  job: PastJob,
  known: PointsKnown,
  turns: readonly PastTurn[],
): readonly PastResponse[] {
  const rows = turns.flatMap((turn) => rowsOf(turn, known))
  const roles = [...new Set(rows.flatMap(({ weights }) => [...weights.keys()]))].sort()
  return (['camber', 'caster', 'toe'] as const).flatMap((angle) => {
    const own = rows.filter((row) => row.angle === angle)
    if (own.length === 0) return []
    const noise = covarianceMatrix(own.map(({ read }) => read))
    return [
      {
        ...job,
        angle,
        roles,
        moves: own.map(({ side, turned, foreseen, read, weights }) => ({
          side,
          turned,
          foreseen,
          seen: read.value,
          weights: roles.map((role) => weights.get(role) ?? 0),
        })),
        noise: noise.flatMap((row, i) => row.map((value, j) => value + (i === j ? finest ** 2 : 0))),
      },
    ]
  })
}

interface Row extends Omit<PastMove, 'seen' | 'weights'> {
  readonly angle: WheelAngle
  readonly read: Measured
  readonly weights: ReadonlyMap<string, number>
}

function rowsOf({ side, wheel, move, rounds }: PastTurn, known: PointsKnown): Row[] {
  const prior = priorResponse(wheel, { known, source: 'past' })
  const count = prior.mean.length
  const { moved, seen, foreseen, setting } = lessonOf(wheel, move, prior.angles)
  return foreseen.map((change, p): Row => {
    const angle = seen[p]!
    const row = prior.angles.indexOf(angle) * wheel.adjusters.length
    const weights = new Map<string, number>()
    const slack: Part[] = []
    wheel.adjusters.forEach((adjuster, j) => {
      if (moved[j] === 0) return
      const { role, sign } = roleOf(adjuster)
      const u = Math.sqrt(prior.covariance[(row + j) * (count + 1)]!)
      weights.set(role, (weights.get(role) ?? 0) + sign * moved[j]! * u)
      for (const [end, way] of [
        [rounds[0], -1],
        [rounds[1], 1],
      ] as const)
        slack.push({
          source: `${side} ${adjuster.id} as set before round ${end}`,
          effect: way * setting[j]![p]!,
          shape: 'rectangular',
          dof: Number.POSITIVE_INFINITY,
        })
    })
    const read = move.change[angle]!
    return {
      side,
      angle,
      turned: wheel.adjusters.filter((_, j) => moved[j] !== 0).map(({ name }) => name),
      foreseen: change,
      read: { value: read.value, parts: [...read.parts, ...slack] },
      weights,
    }
  })
}
