import { type Metre, metre, type Radian, Refusal, rad } from '../quantity/index.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import type { Drive, Point } from './points.ts'
import { poseAt } from './pose-at.ts'
import { ratesAt } from './rates-at.ts'
import { cross, dot, minus, plus, times, unit } from './vector.ts'

/** The axis that the knuckle turns about at this instant while it is steered at a fixed wheel height. @source definition */
export interface SteeringScrew {
  /** Side view of the screw axis; top rearward is positive. */
  readonly caster: Radian
  /** Front view of the screw axis; top inward is positive. */
  readonly sai: Radian
  /** Unit, upwards. */
  readonly direction: Point
  /** The point of the axis nearest the wheel centre. */
  readonly point: Point
  /** Slide along the axis per radian of turn, m. */
  readonly pitch: Metre
  /** Where the axis meets the level of the contact point, as scrub and trail, body axes; null when it lies level. */
  readonly scrub: Metre | null
  readonly trail: Metre | null
  /** The axis through the two joints, for comparison; null for a five-link. */
  readonly jointCaster: Radian | null
  readonly jointSai: Radian | null
}

/**
 * The instantaneous screw axis of steering at fixed wheel height. It is what a steer sweep turns about, and the
 * only steering axis of a five-link. It is not the line through the ball joints: the arms turn a little too.
 *
 *     direction = ω/|ω|,  point = W + ω × v / |ω|²,  pitch = v · ω / |ω|²
 *
 * @param by the link that steers where the rack moves none: `link4`
 * @throws {Refusal} as `poseAt`; `not-for-this-layout` when nothing steers; `singular` when the knuckle does not turn
 * @source own derivation: docs/methods/steering-axis.md
 * @example inDegrees(steeringScrew(m, ride).caster) // 3.12818
 */
export function steeringScrew(
  m: Mechanism,
  drive: Drive,
  { by }: { readonly by?: string } = {},
): SteeringScrew {
  if (by === undefined && m.facts.rackLeg < 0)
    throw new Refusal<LinkageRefusal>({
      code: 'not-for-this-layout',
      at: 'links',
      sentence: 'No link of this corner is moved by the rack, so nothing steers it.',
      remedy: 'Say which link sets the toe.',
    })
  const pose = poseAt(m, drive)
  const { wheelCentre: v, turn: omega } = ratesAt(
    m,
    pose,
  )(by === undefined ? { rack: 1 } : { length: { [by]: 1 } })
  const speed = dot(omega, omega)
  if (!(speed > 1e-12))
    throw new Refusal<LinkageRefusal>({
      code: 'singular',
      at: by ?? 'rack',
      sentence: 'The knuckle does not turn when it is steered, so it has no steering axis here.',
      remedy: 'Choose the link that sets the toe.',
    })
  const direction = unit(times(omega[2] < 0 ? -1 : 1, omega))
  const point = plus(pose.wheelCentre, times(1 / speed, cross(omega, v)))
  const level = Math.abs(direction[2]) < 1e-9
  const pierce = plus(point, times((pose.contact[2] - point[2]) / direction[2], direction))
  const [x, y] = minus(pose.contact, pierce)
  return {
    caster: rad(Math.atan2(-direction[0], direction[2])),
    sai: rad(Math.atan2(-direction[1], direction[2])),
    direction,
    point,
    pitch: metre(dot(v, omega) / speed),
    scrub: level ? null : metre(y),
    trail: level ? null : metre(-x),
    jointCaster: pose.caster,
    jointSai: pose.sai,
  }
}
