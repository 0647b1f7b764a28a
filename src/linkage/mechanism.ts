import { Refusal } from '../quantity/index.ts'
import { checkDisplaced, checkPoints } from './check-points.ts'
import { constraintRows, type RowFacts, rowsRoom } from './constraint-rows.ts'
import { partsOf } from './layout-parts.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import { bodyAt, numericForm } from './numeric-form.ts'
import type { AnyCornerPoints, Displacement, Point } from './points.ts'
import { turned } from './vector.ts'

/** A corner made ready for computing. Make it with `mechanism`; the numbers inside are for this room only. @source definition */
export interface Mechanism {
  readonly points: AnyCornerPoints
  readonly displacement: Displacement
  readonly facts: RowFacts
  /** Numbers of the corner as designed, and as displaced. */
  readonly design: Float64Array
  readonly form: Float64Array
  /** Typical lever of a constraint about the wheel centre, m: makes turns and shifts comparable. */
  readonly size: number
  /** Wheel centre at design, not displaced. */
  readonly home: Point
  /** Unit spin axis in the knuckle, displaced. */
  readonly spin: Point
}

/** Below this ratio of smallest to largest pivot the design pose is not held by its links. */
const rankFloor = 1e-9

/**
 * Checks a corner and makes it ready. Link lengths are the design distances and stay when points are
 * displaced, unless `length` names them.
 *
 * @param points at the design pose, a LEFT corner
 * @param displacement what an adjuster, a fault or an error does to it
 * @throws {Refusal} `not-finite`; `bad-input`; `zero-length-link`; `coincident-pivots`; `degenerate`; `singular`:
 *   the first in this order counts
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example inDegrees(mechanism(points).points.camber) // -0.5
 */
export function mechanism(points: AnyCornerPoints, displacement: Displacement = {}): Mechanism {
  checkPoints(points, displacement)
  const design = numericForm(points, {})
  const form = numericForm(points, displacement)
  const hinged = points.layout === 'semi-trailing arm'
  const strut = points.layout === 'strut' || hinged
  const facts: RowFacts = {
    strut,
    rackLeg: rackLegOf(points),
    across: acrossOf(points),
  }
  const home = points.wheelCentre
  const size = Math.sqrt(meanSquareLever(design, strut))
  checkRank(facts, design, home, size)
  return {
    points,
    displacement,
    facts,
    design,
    form,
    size,
    home,
    spin: spinOf(points, displacement),
  }
}

/**
 * The same corner displaced otherwise, in place of what displaced it before: cheaper than a new mechanism, because
 * the points are known to be sound.
 *
 * @throws {Refusal} `not-finite`; `bad-input`; `zero-length-link`; `coincident-pivots`; `degenerate`
 * @source definition
 * @example displaced(m, { length: { tie: 0.001 } }).displacement // { length: { tie: 0.001 } }
 */
export function displaced(m: Mechanism, displacement: Displacement): Mechanism {
  checkDisplaced(m.points, displacement)
  return {
    ...m,
    displacement,
    form: numericForm(m.points, displacement),
    spin: spinOf(m.points, displacement),
  }
}

function rackLegOf(points: AnyCornerPoints): number {
  if (points.layout === 'five-link') return points.links.findIndex((link) => link.rack)
  return points.layout === 'semi-trailing arm' ? -1 : points.layout === 'strut' ? 2 : 4
}

function acrossOf(points: AnyCornerPoints): number {
  if (points.layout === 'strut') return squarest(points.topMount, points.strutLower)
  return points.layout === 'semi-trailing arm' ? squarest(points.innerRear, points.innerFront) : 0
}

/** Unit spin axis at design, turned by what displaces it. */
function spinOf({ camber, toe }: AnyCornerPoints, { spin }: Displacement): Point {
  const s0: Point = [Math.cos(camber) * Math.sin(toe), Math.cos(camber) * Math.cos(toe), -Math.sin(camber)]
  return spin ? turned(s0, spin) : s0
}

function squarest(a: Point, b: Point): number {
  const size = [0, 1, 2].map((i) => Math.abs(a[i]! - b[i]!))
  return size.indexOf(Math.min(...size))
}

function meanSquareLever(form: Float64Array, strut: boolean): number {
  const used = strut ? 4 : 5
  let sum = 0
  for (let i = 0; i < 3 * used; i++) sum += form[i]! ** 2
  // a corner whose points all sit in the wheel centre has no lever; its links' size stands in
  for (let i = 0; i < 3 * used; i++) sum += 1e-4 * (form[bodyAt + i]! - form[bodyAt + (i % 3)]!) ** 2
  return sum / used || 1
}

/** Rank of the 5 × 5 Jacobian (height held) at the design pose, by elimination with full exchange. */
function checkRank(facts: RowFacts, design: Float64Array, home: Point, size: number): void {
  const rows = rowsRoom()
  constraintRows(facts, design, Float64Array.of(...home, 1, 0, 0, 0), 0, rows)
  const a: number[][] = []
  for (let i = 0; i < 5; i++) {
    const j = rows.jacobian.subarray(6 * i, 6 * i + 6)
    const row = [j[0]!, j[1]!, j[3]! / size, j[4]! / size, j[5]! / size]
    const length = Math.hypot(...row)
    a.push(row.map((x) => (length > 0 ? x / length : 0)))
  }
  let largest = 0
  for (let k = 0; k < 5; k++) {
    let [p, q] = [k, k]
    for (let i = k; i < 5; i++)
      for (let j = k; j < 5; j++) if (Math.abs(a[i]![j]!) > Math.abs(a[p]![q]!)) [p, q] = [i, j]
    ;[a[k], a[p]] = [a[p]!, a[k]!]
    for (const row of a) [row[k], row[q]] = [row[q]!, row[k]!]
    const pivot = a[k]![k]!
    largest = Math.max(largest, Math.abs(pivot))
    if (Math.abs(pivot) < rankFloor * largest || largest === 0)
      throw new Refusal<LinkageRefusal>({
        code: 'singular',
        at: 'points',
        given: '',
        sentence:
          'At the design pose the links do not hold the wheel: it could move although every link keeps its length and the wheel its height.',
        remedy: 'Look for two links that are the same, or that lie in one line, and measure them again.',
      })
    for (let i = k + 1; i < 5; i++) {
      const factor = a[i]![k]! / pivot
      for (let j = k; j < 5; j++) a[i]![j]! -= factor * a[k]![j]!
    }
  }
}

/** Names that a displacement may use on this corner. @source definition */
export function displaceable(points: AnyCornerPoints): {
  readonly body: readonly string[]
  readonly knuckle: readonly string[]
  readonly length: readonly string[]
} {
  const parts = partsOf(points.layout)
  return { body: parts.body, knuckle: parts.knuckle, length: parts.legs.map((leg) => leg.name) }
}
