import type { Mechanism } from './mechanism.ts'
import { bodyAt } from './numeric-form.ts'

/** Numbers of one answer: camber, toe, caster, SAI (rad; 0 where there is no joint axis), wheel centre (m), flag. @source definition */
export const batchStride = 8
/** The last number of an answer. @source definition */
export const batchFlag = { answered: 0, unreachable: 1 } as const

/** Where a joint axis finds its ends in the numbers of a form; null where there is no joint axis. */
export interface AxisPlaces {
  readonly lower: number
  /** Place of the upper end: a knuckle point, or the strut's top mount on the body. */
  readonly upper: number
  readonly strut: boolean
}

/** Places of the joint axis' ends in the form of a mechanism. */
export const axisPlaces = (m: Mechanism): AxisPlaces | null =>
  m.points.layout === 'five-link' || m.points.layout === 'semi-trailing arm'
    ? null
    : m.facts.strut
      ? { lower: 0, upper: bodyAt + 9, strut: true }
      : { lower: 6, upper: 0, strut: false }

/** Writes camber, toe, caster and SAI from the spin axis and the joint axis. Timed. */
export function writeAngles(
  out: Float64Array,
  at: number,
  sx: number,
  sy: number,
  sz: number,
  kx: number,
  ky: number,
  kz: number,
): void {
  out[at] = -Math.asin(sz)
  out[at + 1] = Math.atan2(sx, sy)
  out[at + 2] = Math.atan2(-kx, kz)
  out[at + 3] = Math.atan2(-ky, kz)
}

/** Writes one answer from a state. Timed. */
export function writeState(
  out: Float64Array,
  at: number,
  state: Float64Array,
  form: Float64Array,
  spin: Float64Array,
  axis: AxisPlaces | null,
): void {
  const w = state[3]!
  const x = state[4]!
  const y = state[5]!
  const z = state[6]!
  const m00 = 1 - 2 * (y * y + z * z)
  const m01 = 2 * (x * y - w * z)
  const m02 = 2 * (x * z + w * y)
  const m10 = 2 * (x * y + w * z)
  const m11 = 1 - 2 * (x * x + z * z)
  const m12 = 2 * (y * z - w * x)
  const m20 = 2 * (x * z - w * y)
  const m21 = 2 * (y * z + w * x)
  const m22 = 1 - 2 * (x * x + y * y)
  const px = spin[0]!
  const py = spin[1]!
  const pz = spin[2]!
  const sx = m00 * px + m01 * py + m02 * pz
  const sy = m10 * px + m11 * py + m12 * pz
  const sz = m20 * px + m21 * py + m22 * pz
  if (axis === null) {
    writeAngles(out, at, sx, sy, sz, 0, 0, 1)
    out[at + 2] = 0
    out[at + 3] = 0
  } else {
    const l = axis.lower
    const u = axis.upper
    let qx = -form[l]!
    let qy = -form[l + 1]!
    let qz = -form[l + 2]!
    let kx = 0
    let ky = 0
    let kz = 0
    if (axis.strut) {
      kx = form[u]! - state[0]!
      ky = form[u + 1]! - state[1]!
      kz = form[u + 2]! - state[2]!
    } else {
      qx += form[u]!
      qy += form[u + 1]!
      qz += form[u + 2]!
    }
    kx += m00 * qx + m01 * qy + m02 * qz
    ky += m10 * qx + m11 * qy + m12 * qz
    kz += m20 * qx + m21 * qy + m22 * qz
    writeAngles(out, at, sx, sy, sz, kx, ky, kz)
  }
  out[at + 4] = state[0]!
  out[at + 5] = state[1]!
  out[at + 6] = state[2]!
  out[at + 7] = batchFlag.answered
}
