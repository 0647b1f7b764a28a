import { closedNumbers } from './closed-numbers.ts'
import type { Mechanism } from './mechanism.ts'
import { strutClosed } from './strut-closed.ts'
import { wishboneClosed } from './wishbone-closed.ts'

/** Numbers and room for closed-form poses without allocation. @source own derivation: docs/methods/pose-of-a-corner.md */
export interface ClosedKernel {
  readonly strut: boolean
  readonly numbers: Float64Array
  /** Wheel centre, spin axis, steering axis, lower outer point, e2, rate of height, room to a dead centre. */
  readonly out: Float64Array
  /** Height of the wheel centre at travel 0, m. */
  readonly home: number
  /** Rate of the wheel's height at design, m/rad of the lower arm. */
  readonly rate: number
}

/** How near to a dead centre or to the turn of the travel the closed form is still trusted. */
const leastRoom = 0.02
const leastRate = 0.15
/** Largest turn of the lower arm from design, rad. */
const largestTurn = 1
const settled = 1e-15

/** A kernel for a double wishbone or a strut; null where there is no closed form, or none close to design. @source own derivation: docs/methods/pose-of-a-corner.md */
export function closedKernel(m: Mechanism): ClosedKernel | null {
  const numbers = closedNumbers(m)
  if (!numbers) return null
  const out = new Float64Array(17)
  const strut = m.facts.strut
  const closes = strut ? strutClosed(numbers, 0, 0, out) : wishboneClosed(numbers, 0, 0, out)
  const rate = out[15]!
  return closes && out[16]! > leastRoom && Math.abs(rate) > 1e-3 * m.size
    ? { strut, numbers, out, home: m.home[2], rate }
    : null
}

/**
 * The lower arm's angle at a wheel height, by Newton on the height with its exact rate. `kernel.out` holds the pose.
 *
 * @param from angle to start from: that of a neighbouring pose, or travel / rate
 * @returns the angle, rad; NaN when the pose lies near a dead centre or a turn of the travel, or does not close
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export function closedAngle(k: ClosedKernel, travel: number, rack: number, from: number): number {
  const { numbers, out, strut, rate } = k
  const want = k.home + travel
  let phi = from
  for (let turn = 0; turn < 12; turn++) {
    const closes = strut ? strutClosed(numbers, phi, rack, out) : wishboneClosed(numbers, phi, rack, out)
    if (!closes || out[16]! < leastRoom || out[15]! * rate < leastRate * rate * rate) return Number.NaN
    const step = (want - out[2]!) / out[15]!
    if (Math.abs(step) < settled || (turn > 0 && Math.abs(step) < 4e-16)) return phi
    phi += step
    if (!(Math.abs(phi) < largestTurn)) return Number.NaN
    // quadratic: an error this small is gone after the step just made, but the pose must be taken there
    if (Math.abs(step) < 1e-9) {
      if (strut) strutClosed(numbers, phi, rack, out)
      else wishboneClosed(numbers, phi, rack, out)
      return phi
    }
  }
  return Number.NaN
}
