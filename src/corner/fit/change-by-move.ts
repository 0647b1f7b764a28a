import { type Adjuster, displacementByStroke, strokeOf } from '../../adjust/index.ts'
import {
  type AnyCornerPoints,
  type Displacement,
  type Point,
  sumOfDisplacements,
  type WheelAngle,
} from '../../linkage/index.ts'
import { type Metre, metre } from '../../quantity/index.ts'
import { cornerPoints } from '../corner-points.ts'
import { saysWhere } from './angle-read.ts'
import type { CornerAt } from './corner-at.ts'
import type { Observable } from './observable.ts'
import { posedAt, type Shift } from './posed-at.ts'
import { seenLazily } from './seen-lazily.ts'
import { cornerWith } from './unknowns.ts'

/** A move of one adjuster, others where they are. @source definition */
export interface AdjusterMove {
  readonly adjuster: Adjuster
  /** Settings in the adjuster's own unit (`settingUnit`). */
  readonly from: number
  readonly to: number
  /** Where it stood when the vehicle had the points that are asked for. Default: `from`. */
  readonly standing?: number
  /** Height at which the angles were read, above ride height. Default: at ride height. */
  readonly travel?: Metre
}

/**
 * What a move of an adjuster, or of several at once, changes on an angle: read before and after, or asked for before it is made.
 *
 * @param moves one or more; the height of the first counts for all
 * @returns angle after minus angle before, by the exact poses
 * @throws {Refusal} when it is computed: `not-for-this-layout` for a whole axle; `setting-out-of-range`; `no-such-point`;
 *   `unreachable`
 * @source own derivation: docs/methods/fit.md
 */
export function changeByMove(angle: WheelAngle, ...moves: readonly AdjusterMove[]): Observable {
  const travel = moves[0]?.travel ?? metre(0)
  const names = moves.map(({ adjuster }) => adjuster.name).join(' and ')
  return {
    says: `change of ${angle === 'sai' ? 'SAI' : angle}${saysWhere({ travel })} by ${names}`,
    unit: 'rad',
    at: (corner) => {
      const at = (end: 'from' | 'to') => {
        const shifts = moves.flatMap((move) => {
          const { adjuster, standing = move.from } = move
          const stroke = strokeOf(adjuster, move[end]) - strokeOf(adjuster, standing)
          return stroke === 0 ? [] : [shiftOf(corner, adjuster, stroke)]
        })
        return posedAt(corner, { travel, rack: metre(0) }, together(shifts)).angle(angle)
      }
      const [before, after] = [at('from'), at('to')]
      return seenLazily(after.value - before.value, () =>
        after.slopes.map((slope, i) => slope - before.slopes[i]!),
      )
    },
  }
}

/** Several shifts as one. */
function together(shifts: readonly Shift[]): Shift | null {
  if (shifts.length < 2) return shifts[0] ?? null
  return {
    by: sumOfDisplacements(shifts.map(({ by }) => by)),
    slopes: () => {
      const all = shifts.map(({ slopes }) => slopes()).filter((list) => list.length > 0)
      return (all[0] ?? []).map((_, i) => sumOfDisplacements(all.map((list) => list[i]!)))
    },
  }
}

/** Which unknowns a displacement can depend on: what turns about a bolt goes with its point, a wedge with the toe. */
function shiftOf(corner: CornerAt, adjuster: Adjuster, stroke: number): Shift {
  const { unknowns, values } = corner
  const { points } = corner.linkage()
  const by = displacementByStroke(adjuster, points, stroke)
  if (adjuster.kind !== 'slotted bolt' && adjuster.kind !== 'wedge') return { by, slopes: () => [] }
  const slopes = () =>
    Array.from(values, (value, i) => {
      // linear in every point, and as good as linear in toe over so little of it
      const step = i === unknowns.toe || i === unknowns.camber ? 1e-5 : 1
      const there = (sign: number) =>
        displacementByStroke(
          adjuster,
          pointsWith(corner, (n) => (n === i ? value + sign * step : values[n]!)),
          stroke,
        )
      return difference(there(1), there(-1), 2 * step)
    })
  return { by, slopes }
}

const pointsWith = ({ unknowns, values }: CornerAt, value: (n: number) => number): AnyCornerPoints =>
  cornerPoints(
    cornerWith(
      unknowns,
      Array.from(values, (_, n) => value(n)),
    ),
  )

function difference(a: Displacement, b: Displacement, over: number): Displacement {
  const between = (p: Point, q: Point): Point => [
    (p[0] - q[0]) / over,
    (p[1] - q[1]) / over,
    (p[2] - q[2]) / over,
  ]
  const knuckle = Object.fromEntries(
    Object.entries(a.knuckle ?? {}).map(([name, p]) => [name, between(p, b.knuckle![name]!)]),
  )
  return { knuckle, ...(a.spin ? { spin: between(a.spin, b.spin!) } : {}) }
}
