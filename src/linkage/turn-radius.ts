import { type Metre, metre } from '../quantity/index.ts'
import { type AckermannTurn, checkedTurn } from './outer-wheel-angle.ts'

/**
 * Radius of the turn, to the middle of the axle that is not steered.
 *
 *     radius = wheelbase · cot inner + track / 2
 *
 * @returns m
 * @throws {Refusal} `not-finite`; `bad-input`, as `outerWheelAngle`
 * @source own derivation: docs/methods/steering-axis.md
 * @example turnRadius({ wheelbase: metre(2.7), pivotTrack: metre(1.5), inner: deg(30) }) // 5.426537 m
 */
export function turnRadius(turn: AckermannTurn): Metre {
  const { wheelbase, pivotTrack, inner } = checkedTurn(turn)
  return metre(wheelbase / Math.tan(inner) + pivotTrack / 2)
}
