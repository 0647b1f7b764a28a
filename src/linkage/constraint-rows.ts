import { bodyAt, lengthAt, strutTopAt } from './numeric-form.ts'

// State of a knuckle: wheel centre x, y, z and the unit quaternion w, x, y, z of its turn from the design attitude.

/** The fixed facts that the rows need beside the numbers of the form. */
export interface RowFacts {
  readonly strut: boolean
  /** Which link's inner end the rack moves; −1 when none. */
  readonly rackLeg: number
  /** Strut: the coordinate axis that the strut crosses most squarely. */
  readonly across: number
}

/** Room for one evaluation. */
export interface Rows {
  /** Errors of the five constraints, m. */
  readonly error: Float64Array
  /** 5 × 6, row-major: against wheel-centre velocity x, y, z and angular velocity x, y, z. */
  readonly jacobian: Float64Array
  /** Rotation matrix, row-major. */
  readonly turn: Float64Array
  /** Each constraint's unit direction in space: along the link, or across the strut. */
  readonly along: Float64Array
  /** Strut: the two directions across it, in the knuckle. */
  readonly acrossKnuckle: Float64Array
  /** Strut: present length against its length at design. */
  strutRatio: number
}

/** Makes room for evaluations. */
export const rowsRoom = (): Rows => ({
  error: new Float64Array(5),
  jacobian: new Float64Array(30),
  turn: new Float64Array(9),
  along: new Float64Array(15),
  acrossKnuckle: new Float64Array(6),
  strutRatio: 0,
})

/** Rotation matrix of a unit quaternion at `state[3…6]`. */
export function turnOf(state: Float64Array, out: Float64Array): void {
  const w = state[3]!
  const x = state[4]!
  const y = state[5]!
  const z = state[6]!
  out[0] = 1 - 2 * (y * y + z * z)
  out[1] = 2 * (x * y - w * z)
  out[2] = 2 * (x * z + w * y)
  out[3] = 2 * (x * y + w * z)
  out[4] = 1 - 2 * (x * x + z * z)
  out[5] = 2 * (y * z - w * x)
  out[6] = 2 * (x * z - w * y)
  out[7] = 2 * (y * z + w * x)
  out[8] = 1 - 2 * (x * x + y * y)
}

/**
 * Errors and Jacobian of a corner's five constraints.
 *
 *     link:  (|d|² − L²) / 2L,  d = W + R q − b        row  (d, r × d) / L,  r = R q
 *     strut: (T − P) · N for two N across its line      row  (−N, −(T − W) × N)
 *
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export function constraintRows(
  facts: RowFacts,
  form: Float64Array,
  state: Float64Array,
  rack: number,
  out: Rows,
): void {
  const { error, jacobian, turn, along } = out
  turnOf(state, turn)
  const legs = facts.strut ? 3 : 5
  for (let i = 0; i < legs; i++) {
    const length = form[lengthAt + i]!
    const [rx, ry, rz] = rotated(turn, form[3 * i]!, form[3 * i + 1]!, form[3 * i + 2]!)
    const dx = state[0]! + rx - form[bodyAt + 3 * i]!
    const dy = state[1]! + ry - form[bodyAt + 3 * i + 1]! - (i === facts.rackLeg ? rack : 0)
    const dz = state[2]! + rz - form[bodyAt + 3 * i + 2]!
    const now = Math.sqrt(dx * dx + dy * dy + dz * dz)
    error[i] = ((now - length) * (now + length)) / (2 * length)
    along.set([dx / length, dy / length, dz / length], 3 * i)
    putRow(jacobian, i, dx / length, dy / length, dz / length, rx, ry, rz)
  }
  if (facts.strut) strutRows(facts, form, state, out)
}

function strutRows(facts: RowFacts, form: Float64Array, state: Float64Array, out: Rows): void {
  const { error, jacobian, turn, along, acrossKnuckle } = out
  const sx = form[strutTopAt]! - form[9]!
  const sy = form[strutTopAt + 1]! - form[10]!
  const sz = form[strutTopAt + 2]! - form[11]!
  const design = Math.sqrt(sx * sx + sy * sy + sz * sz)
  const e = [sx / design, sy / design, sz / design] as const
  const a = [0, 0, 0]
  a[facts.across] = 1
  const n1x = e[1] * a[2]! - e[2] * a[1]!
  const n1y = e[2] * a[0]! - e[0] * a[2]!
  const n1z = e[0] * a[1]! - e[1] * a[0]!
  const size = Math.sqrt(n1x * n1x + n1y * n1y + n1z * n1z)
  acrossKnuckle[0] = n1x / size
  acrossKnuckle[1] = n1y / size
  acrossKnuckle[2] = n1z / size
  acrossKnuckle[3] = (e[1] * n1z - e[2] * n1y) / size
  acrossKnuckle[4] = (e[2] * n1x - e[0] * n1z) / size
  acrossKnuckle[5] = (e[0] * n1y - e[1] * n1x) / size
  const [px, py, pz] = rotated(turn, form[9]!, form[10]!, form[11]!)
  const tx = form[bodyAt + 9]! - state[0]!
  const ty = form[bodyAt + 10]! - state[1]!
  const tz = form[bodyAt + 11]! - state[2]!
  const [ex, ey, ez] = rotated(turn, e[0], e[1], e[2])
  out.strutRatio = ((tx - px) * ex + (ty - py) * ey + (tz - pz) * ez) / design
  for (let j = 0; j < 2; j++) {
    const [nx, ny, nz] = rotated(
      turn,
      acrossKnuckle[3 * j]!,
      acrossKnuckle[3 * j + 1]!,
      acrossKnuckle[3 * j + 2]!,
    )
    error[3 + j] = (tx - px) * nx + (ty - py) * ny + (tz - pz) * nz
    along.set([nx, ny, nz], 9 + 3 * j)
    putRow(jacobian, 3 + j, -nx, -ny, -nz, tx, ty, tz)
  }
}

/** Row of direction d at lever r: (d, r × d). */
function putRow(
  jacobian: Float64Array,
  row: number,
  dx: number,
  dy: number,
  dz: number,
  rx: number,
  ry: number,
  rz: number,
): void {
  const at = 6 * row
  jacobian[at] = dx
  jacobian[at + 1] = dy
  jacobian[at + 2] = dz
  jacobian[at + 3] = ry * dz - rz * dy
  jacobian[at + 4] = rz * dx - rx * dz
  jacobian[at + 5] = rx * dy - ry * dx
}

function rotated(turn: Float64Array, x: number, y: number, z: number): [number, number, number] {
  return [
    turn[0]! * x + turn[1]! * y + turn[2]! * z,
    turn[3]! * x + turn[4]! * y + turn[5]! * z,
    turn[6]! * x + turn[7]! * y + turn[8]! * z,
  ]
}
