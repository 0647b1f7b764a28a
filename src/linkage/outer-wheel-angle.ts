import { type Metre, type Radian, Refusal, rad } from '../quantity/index.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'

/** Steering of one axle whose wheels roll about one point on the line of the other axle. @source definition */
export interface AckermannTurn {
  readonly wheelbase: Metre
  /** Between the steering axes at the ground. */
  readonly pivotTrack: Metre
  /** Steer angle of the inner wheel, 0 < inner < π/2. */
  readonly inner: Radian
}

/**
 * The steer angle at which the outer wheel rolls about the same point as the inner one, without side slip.
 *
 *     cot outer = cot inner + track / wheelbase
 *
 * @returns rad, smaller than the inner angle
 * @throws {Refusal} `not-finite`; `bad-input` when a length or the angle is not positive, or the angle is a right one
 * @source ISO 8855:2011, 7.1.9 (definition); relation derived in docs/methods/steering-axis.md
 * @example outerWheelAngle({ wheelbase: metre(2.7), pivotTrack: metre(1.5), inner: deg(30) }) // 0.412107 rad
 */
export function outerWheelAngle(turn: AckermannTurn): Radian {
  const { wheelbase, pivotTrack, inner } = checkedTurn(turn)
  return rad(Math.atan2(1, 1 / Math.tan(inner) + pivotTrack / wheelbase))
}

/** Lengths and angle of a turn that can be. */
export function checkedTurn(turn: AckermannTurn): AckermannTurn {
  const { wheelbase, pivotTrack, inner } = turn
  for (const [name, value] of Object.entries({ wheelbase, pivotTrack, inner })) {
    const bad = !(value > 0) || (name === 'inner' && !(value < Math.PI / 2))
    if (!Number.isFinite(value) || bad)
      throw new Refusal<LinkageRefusal>({
        code: Number.isFinite(value) ? 'bad-input' : 'not-finite',
        at: name,
        given: String(value),
        sentence: `${name} is ${value}; it must be above 0${name === 'inner' ? ' and below a right angle' : ''}.`,
        remedy: 'Enter the measured value.',
      })
  }
  return turn
}
