import type { AxleEnd } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Adjuster, AdjustRefusal } from './adjuster.ts'
import { angleOrder } from './angles-at-strokes.ts'
import type { Axis } from './axis.ts'
import { checkAdjuster } from './check-adjuster.ts'
import type { FaultKind } from './fault-kinds.ts'
import type { MovesProblem, WheelSetup } from './problem.ts'
import type { ReadingRow } from './reading-rows.ts'
import { type ResponseSurface, responseSurface } from './response-surface.ts'
import { strokeMeant } from './stroke-meant.ts'
import { strokeOf } from './stroke-of.ts'

/** All wheels of a problem with their response, and all adjusters as axes. */
export interface SearchSpace {
  /** Front or rear, in the problem's order of axles. */
  readonly ends: readonly AxleEnd[]
  readonly wheels: readonly WheelSetup[]
  readonly surfaces: readonly ResponseSurface[]
  readonly axes: readonly Axis[]
  /** First axis of each wheel, and one past the last of all. */
  readonly starts: readonly number[]
  readonly rows: readonly ReadingRow[]
  /** Correction of the slopes that recorded moves have taught, [wheel][angle · adjusters + adjuster], rad/m. */
  readonly taught: readonly Float64Array[]
  /** Kinds of fault that are not to be named. */
  readonly unlikely: readonly FaultKind[]
}

/**
 * Lays out the search: checks the adjusters, finds the present strokes and takes each wheel's response there.
 *
 * @throws {Refusal} `bad-adjuster`; `repeated-id` for two adjusters of one wheel with one id; `setting-out-of-range`; `no-such-point`
 * @source own derivation: docs/methods/moves.md
 */
export function searchSpace(problem: MovesProblem, rows: readonly ReadingRow[]): SearchSpace {
  const wheels = problem.axles.flatMap((axle) => [axle.left, axle.right])
  const axes: Axis[] = []
  const starts: number[] = []
  wheels.forEach((wheel, w) => {
    starts.push(axes.length)
    wheel.adjusters.forEach((adjuster, column) => {
      checkAdjuster(adjuster)
      if (wheel.adjusters.some((other, i) => i < column && other.id === adjuster.id))
        throw new Refusal<AdjustRefusal>({
          code: 'repeated-id',
          at: adjuster.id,
          sentence: `Two adjusters of one wheel are both called "${adjuster.id}".`,
          remedy: 'Give each adjuster of a corner its own id.',
        })
      axes.push(axisOf(adjuster, wheel, w, column))
    })
  })
  starts.push(axes.length)
  return {
    ends: problem.axles.map((axle) => axle.end),
    wheels,
    axes,
    starts,
    rows,
    surfaces: wheels.map((wheel, w) =>
      responseSurface(
        wheel,
        axes.slice(starts[w], starts[w + 1]).map((axis) => axis.baseStroke),
      ),
    ),
    taught: wheels.map(taughtSlopes),
    unlikely: problem.unlikely ?? [],
  }
}

function axisOf(adjuster: Adjuster, wheel: WheelSetup, w: number, column: number): Axis {
  const given = wheel.settings[adjuster.id]
  const known = given !== null && given !== undefined
  const base = known ? given : (adjuster.range[0] + adjuster.range[1]) / 2
  const ends = adjuster.range.map((end) => strokeMeant({ adjuster, known, base }, end))
  return {
    adjuster,
    wheel: w,
    column,
    side: w % 2 === 0 ? 'left' : 'right',
    known,
    base,
    baseStroke: strokeOf(adjuster, base),
    low: Math.min(...ends),
    high: Math.max(...ends),
  }
}

function taughtSlopes(wheel: WheelSetup): Float64Array {
  const n = wheel.adjusters.length
  const slopes = new Float64Array(angleOrder.length * n)
  const response = wheel.response
  if (response)
    response.angles.forEach((angle, a) => {
      response.adjusters.forEach((id, j) => {
        const column = wheel.adjusters.findIndex((adjuster) => adjuster.id === id)
        if (column >= 0)
          slopes[angleOrder.indexOf(angle) * n + column] = response.mean[a * response.adjusters.length + j]!
      })
    })
  return slopes
}
