import { type Mechanism, type Pose, poseAt, rackRange } from '../linkage/index.ts'
import { metre, type Radian, rad } from '../quantity/index.ts'
import { type AxisAngles, axisFromSweep } from './axis-from-sweep.ts'
import { gaugeRefusal } from './gauge-refusal.ts'
import type { SweepReading } from './observation.ts'

const TRIES = 100
/** Rad of steer, or m of rack, that nobody could read. */
const CLOSE = 1e-12
const INSIDE = 0.999

/**
 * How the joint axis straight ahead differs from what a sweep sees.
 *
 * @source definition
 */
export interface SweepOffset {
  /** Joint axis − sweep, rad; null for a corner without a joint axis (five-link): there the sweep is all there is. */
  readonly offset: AxisAngles | null
  readonly sweep: AxisAngles
}

/**
 * What a steer sweep would read on a corner model, and how far the axis through its joints stands from that: the
 * arms turn a little while steering at one wheel height, so the wheel turns about another axis than the joints'.
 *
 * @param m a left corner
 * @param turns steer angles of the sweep as on a left wheel, rad, + to the left
 * @throws {Refusal} `no-sweep` when the corner cannot steer that far; whatever `poseAt` refuses
 * @source own derivation: docs/methods/steer-sweep.md
 */
export function sweepThroughLinkage(m: Mechanism, turns: readonly [Radian, Radian]): SweepOffset {
  const straight = poseAt(m, { travel: metre(0), rack: metre(0) })
  const places = turns.map((steer) => placeOf(steered(m, straight, steer), straight))
  const sweep = axisFromSweep(places, { side: 'left' })
  const { caster, sai } = straight
  return {
    sweep,
    offset:
      caster === null || sai === null
        ? null
        : { caster: rad(caster - sweep.caster), sai: rad(sai - sweep.sai) },
  }
}

/**
 * Pose at a steer angle from straight: the rack by the Illinois variant of false position, which keeps the angle
 * between two racks and needs a handful of poses.
 */
function steered(m: Mechanism, straight: Pose, steer: Radian): Pose {
  const { left, right } = rackRange(m, { travel: metre(0) })
  const at = (rack: number) => poseAt(m, { travel: metre(0), rack: metre(rack) })
  const missing = (pose: Pose) => straight.toe - pose.toe - steer
  let [low, high] = [INSIDE * right, INSIDE * left]
  let [below, above] = [missing(at(low)), missing(at(high))]
  if (!(below * above < 0))
    throw gaugeRefusal(
      'no-sweep',
      'steer',
      steer,
      `On this corner model the wheel cannot be steered by ${((steer * 180) / Math.PI).toFixed(1)}°.`,
      'Check the model, or take the reading without it.',
    )
  for (let i = 0; i < TRIES; i++) {
    const rack = high - (above * (high - low)) / (above - below)
    const pose = at(rack)
    const miss = missing(pose)
    if (Math.abs(miss) < CLOSE || Math.abs(high - low) < CLOSE) return pose
    if (miss * above < 0) {
      low = high
      below = above
    } else below /= 2
    high = rack
    above = miss
  }
  return at(high)
}

/**
 * The gauge readings of a pose: across from its spin axis, along from the level line of the straight wheel carried with
 * the knuckle. The steer gauge was set to zero straight ahead, so it shows the change of heading, not the heading: a
 * wheel with toe-in reads caster by about toe · tan SAI too little, and so must the model.
 */
function placeOf(pose: Pose, straight: Pose): SweepReading {
  const level = [Math.cos(straight.toe), -Math.sin(straight.toe), 0] as const
  const [w, x, y, z] = product(pose.turn!, inverse(straight.turn!))
  const up =
    2 * (x * z - w * y) * level[0] + 2 * (y * z + w * x) * level[1] + (1 - 2 * (x * x + y * y)) * level[2]
  return { steer: rad(straight.toe - pose.toe), camber: pose.camber, tilt: rad(Math.asin(up)) }
}

type Quaternion = readonly [number, number, number, number]
const inverse = ([w, x, y, z]: Quaternion): Quaternion => [w, -x, -y, -z]
const product = ([a, b, c, d]: Quaternion, [e, f, g, h]: Quaternion): Quaternion => [
  a * e - b * f - c * g - d * h,
  a * f + b * e + c * h - d * g,
  a * g - b * h + c * e + d * f,
  a * h + b * g - c * f + d * e,
]
