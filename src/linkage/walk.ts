import { constraintRows, type Rows, rowsRoom } from './constraint-rows.ts'
import { formRates } from './form-rates.ts'
import type { Mechanism } from './mechanism.ts'
import { formSize } from './numeric-form.ts'
import { solveLinear } from './solve-linear.ts'

/** A straight way in travel, rack and the numbers of the form; `share` runs along it. */
export interface Way {
  readonly travel: readonly [from: number, rate: number]
  readonly rack: readonly [from: number, rate: number]
  /** Form at share 0, and what a share of 1 adds; null when it stays. */
  readonly form: readonly [from: Float64Array, rate: Float64Array | null]
  /** How many metres of shift a share of 1 is worth, for comparing with the knuckle's own motion. */
  readonly worth: number
}

/** A place on the way. */
export interface Place {
  /** Wheel centre x, y, z and unit quaternion. */
  readonly state: Float64Array
  readonly share: number
  /** Unit tangent: wheel centre x, y; turn × size (3); share × worth. */
  readonly tangent: Float64Array
  /** Sign of the determinant of equations and tangent together: the same all along one curve. */
  readonly side: number
}

/** A way with room to compute in. */
export interface Trip {
  readonly m: Mechanism
  readonly way: Way
  readonly rows: Rows
  readonly form: Float64Array
  readonly column: Float64Array
  readonly a: Float64Array
  readonly b: Float64Array
}

/** Makes a trip. */
export const tripOn = (m: Mechanism, way: Way): Trip => ({
  m,
  way,
  rows: rowsRoom(),
  form: Float64Array.from(way.form[0]),
  column: new Float64Array(5),
  a: new Float64Array(36),
  b: new Float64Array(6),
})

/** Rows, and the column against share, at a state and share; the state's height is put where the way wants it. */
function look(trip: Trip, state: Float64Array, share: number): void {
  const { m, way, rows, form, column } = trip
  const [from, rate] = way.form
  if (rate) for (let i = 0; i < formSize; i++) form[i] = from[i]! + share * rate[i]!
  state[2] = m.home[2] + way.travel[0] + share * way.travel[1]
  constraintRows(m.facts, form, state, way.rack[0] + share * way.rack[1], rows)
  if (rate) formRates(m.facts, rows, rate, column)
  else column.fill(0)
  for (let i = 0; i < 5; i++) column[i]! += rows.jacobian[6 * i + 2]! * way.travel[1]
  const leg = m.facts.rackLeg
  if (leg >= 0) column[leg]! -= rows.along[3 * leg + 1]! * way.rack[1]
}

/** Puts the scaled 5 × 6 equations into the first five rows of `a`. */
function fill(trip: Trip): void {
  const { m, way, rows, column, a } = trip
  for (let i = 0; i < 5; i++) {
    const j = 6 * i
    a[j] = rows.jacobian[j]!
    a[j + 1] = rows.jacobian[j + 1]!
    for (let k = 3; k < 6; k++) a[j + k - 1] = rows.jacobian[j + k]! / m.size
    a[j + 5] = column[i]! / way.worth
  }
}

/** Moves a state by a scaled change of wheel centre x, y and turn. */
export function moveState(state: Float64Array, change: Float64Array, size: number, by = 1): void {
  state[0] = state[0]! + by * change[0]!
  state[1] = state[1]! + by * change[1]!
  const half = (0.5 * by) / size
  const x = half * change[2]!
  const y = half * change[3]!
  const z = half * change[4]!
  const [qw, qx, qy, qz] = [state[3]!, state[4]!, state[5]!, state[6]!]
  const w2 = qw - x * qx - y * qy - z * qz
  const x2 = qx + x * qw + y * qz - z * qy
  const y2 = qy + y * qw + z * qx - x * qz
  const z2 = qz + z * qw + x * qy - y * qx
  const scale = 1 / Math.sqrt(w2 * w2 + x2 * x2 + y2 * y2 + z2 * z2)
  state[3] = w2 * scale
  state[4] = x2 * scale
  state[5] = y2 * scale
  state[6] = z2 * scale
}

const length = (v: Float64Array, n: number): number => {
  let sum = 0
  for (let i = 0; i < n; i++) sum += v[i]! * v[i]!
  return Math.sqrt(sum)
}

/** Tangent at a state and share, on the side of `toward`. Null where it does not exist. */
export function tangentAt(
  trip: Trip,
  state: Float64Array,
  share: number,
  toward: Float64Array,
): { readonly tangent: Float64Array; readonly side: number } | null {
  look(trip, state, share)
  fill(trip)
  trip.a.set(toward, 30)
  const t = new Float64Array(6)
  t[5] = 1
  const determinant = solveLinear(trip.a, t, 6)
  if (determinant === 0) return null
  const size = length(t, 6)
  if (!Number.isFinite(size)) return null
  for (let i = 0; i < 6; i++) t[i] = t[i]! / size
  return { tangent: t, side: Math.sign(determinant) }
}

/** Newton at a fixed share, from a state close by. Null when it does not settle. */
export function settle(trip: Trip, near: Float64Array, share: number): Float64Array | null {
  const state = Float64Array.from(near)
  const { a, b, rows, m } = trip
  let before = Number.POSITIVE_INFINITY
  for (let turn = 0; turn < 30; turn++) {
    look(trip, state, share)
    for (let i = 0; i < 5; i++) {
      for (let k = 0; k < 2; k++) a[5 * i + k] = rows.jacobian[6 * i + k]!
      for (let k = 3; k < 6; k++) a[5 * i + k - 1] = rows.jacobian[6 * i + k]! / m.size
      b[i] = -rows.error[i]!
    }
    if (solveLinear(a, b, 5) === 0) return null
    const step = length(b, 5)
    if (!Number.isFinite(step) || step > m.size) return null
    if (step >= 0.5 * before && step < 1e-11 * m.size) return state
    if (step > 2 * before) return null
    moveState(state, b, m.size)
    if (step < 1e-15 * m.size) return state
    before = step
  }
  return null
}

/** How far the first correction may lead off, in steps. */
const largestCorrection = 0.15

/** One step of arc length `h` from a place. Null when the curve bends too much for it. */
export function stepFrom(trip: Trip, from: Place, h: number, straightness: number): Place | null {
  const state = Float64Array.from(from.state)
  const { a, b, rows, m, way } = trip
  const t0 = from.tangent
  moveState(state, t0, m.size, h)
  let share = from.share + (h * t0[5]!) / way.worth
  let first = 0
  for (let turn = 0; ; turn++) {
    if (turn > 7) return null
    look(trip, state, share)
    fill(trip)
    a.set(t0, 30)
    for (let i = 0; i < 5; i++) b[i] = -rows.error[i]!
    b[5] = 0
    if (solveLinear(a, b, 6) === 0) return null
    const step = length(b, 6)
    if (turn === 0) {
      first = step
      if (!(step < largestCorrection * h)) return null
    } else if (!(step < 0.35 * first || step < 1e-13 * m.size)) return null
    moveState(state, b, m.size)
    share += b[5]! / way.worth
    if (step < 1e-12 * m.size) break
  }
  const found = tangentAt(trip, state, share, t0)
  // another sign is another curve that passes close by
  if (!found || found.side !== from.side) return null
  const { tangent, side } = found
  let alike = 0
  for (let i = 0; i < 6; i++) alike += tangent[i]! * t0[i]!
  return alike < straightness ? null : { state, share, tangent, side }
}
