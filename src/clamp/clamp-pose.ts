import {
  type AnyCornerPoints,
  bushTwist,
  type Displacement,
  type Mechanism,
  mechanism,
  type Pose,
  poseAt,
  type Side,
} from '../linkage/index.ts'
import { combine, type Measured, normal, propagate } from '../measure/index.ts'
import { type MassUnit, metre, type NewtonMetrePerRadian, Refusal } from '../quantity/index.ts'
import { type Caution, cautionsOf } from './caution.ts'
import type { ClampRefusal } from './clamp-refusal.ts'
import { typicalStiffness } from './typical-stiffness.ts'

/** A bush as the clamp pose sees it. @source definition */
export interface ClampBush {
  readonly id: string
  /** "front bush of the lower arm" */
  readonly name: string
  /** Inner pivot, by the linkage's name: lowerFrontInner, inner2 … */
  readonly pivot: string
  /** Bonded rubber is a spring in rotation; a bush that slips is not. */
  readonly bonded: boolean
  /** Torsional stiffness with its relative standard uncertainty; null: a typical range is taken. */
  readonly stiffness: { readonly value: NewtonMetrePerRadian; readonly spread: number } | null
  /** Whether its bolt carries an adjuster. */
  readonly adjuster: boolean
}

/** What a clamp pose is worked out from. @source definition */
export interface ClampTask {
  readonly side: Side
  /** Drawn as a LEFT corner. */
  readonly points: AnyCornerPoints
  /** Where its adjusters stand. */
  readonly displacement?: Displacement
  /** Travel from the design pose at which the bolts are final, m. */
  readonly target: Measured
  /** Travel at which the wheel hangs, m. */
  readonly hanging: Measured
  readonly bushes: readonly ClampBush[]
  /** Vertical rate at this wheel, springs and bushes together, N/m; null when nobody knows. */
  readonly wheelRate: Measured | null
  /** Load of the corner on its wheel, N; null when nobody knows. */
  readonly cornerLoad?: number | null
  readonly airSprung?: boolean
  /** In which unit a load is told. Default: kg. */
  readonly mass?: MassUnit
}

/** One bush: what it would carry if it were made final hanging. @source definition */
export interface ClampedBush extends ClampBush {
  /** Twist left at the target, rad; bump is positive. */
  readonly twist: Measured
  /** Torque that this twist holds, N·m; null for a bush that slips. */
  readonly torque: Measured | null
  /** How far the body would stand too high, m; null when it cannot be said. */
  readonly height: Measured | null
  /** Why `torque` or `height` is null, or that the stiffness is a typical range; empty when all was given. */
  readonly remark: string
  readonly rule: 'final only at ride height' | 'stays run up until the last move' | 'final in any position'
}

/** The pose in which bush bolts are final. @source definition */
export interface ClampPose {
  readonly side: Side
  readonly target: Measured
  readonly hanging: Measured
  /** How far to raise the hub from where it hangs, by rule from hub to arch, m. */
  readonly raise: Measured
  /** How far each arm turns against the body from where it hangs, rad; null where there is no such arm. */
  readonly armTurn: { readonly lower: Measured | null; readonly upper: Measured | null }
  readonly bushes: readonly ClampedBush[]
  /** All bonded bushes made final hanging: how far the body would stand too high, m; null when it cannot be said. */
  readonly height: Measured | null
  readonly cautions: readonly Caution[]
}

/** Step for the rate of turn, m: wide against rounding, narrow against the bend. */
const step = 1e-4

/**
 * The clamp pose: how far to raise the hub and turn the arm from hanging, and what each bush would carry, in
 * twist, torque and ride height, if it were made final hanging.
 *
 *     raise   = target − hanging
 *     torque  = stiffness · twist
 *     height  = Σ torque · dφ/dz / wheel rate        (φ turn of the bush, z travel, at the target)
 *
 * @throws {Refusal} `hangs-above-target`; `no-such-pivot`; `not-positive` for a stiffness, spread or wheel rate below zero;
 *   `not-finite`; and what the linkage says when a pose cannot be reached
 * @assumes arms stiff, bushes straight springs, the wheel rate taken with its bushes
 * @source own derivation: docs/methods/clamp-pose.md
 */
export function clampPose(task: ClampTask): ClampPose {
  const { side, points, target, hanging, bushes, wheelRate } = task
  checkTravel(target, hanging)
  if (wheelRate && !(wheelRate.value > 0))
    throw refusal(
      'not-positive',
      'wheelRate',
      wheelRate.value,
      `A wheel rate of ${wheelRate.value} N/m holds nothing.`,
    )
  const m = mechanism(points, task.displacement)
  const [low, high] = [poseNear(m, hanging.value), poseNear(m, target.value)]
  const turned = (of: (from: Pose, to: Pose) => number): Measured => {
    const sum = combine([
      { of: target, times: of(high.below, high.above) / (2 * step) },
      { of: hanging, times: -of(low.below, low.above) / (2 * step) },
    ])
    return { value: of(low.at, high.at), parts: sum.parts }
  }
  const arm = (name: 'armLower' | 'armUpper') =>
    high.at[name] === null ? null : turned((from, to) => to[name]! - from[name]!)
  const clamped = bushes.map((bush) => {
    const twistOf = (from: Pose, to: Pose): number => {
      const angle = bushTwist(m, { from, to })[bush.pivot]
      if (angle === undefined)
        throw refusal(
          'no-such-pivot',
          bush.id,
          bush.pivot,
          `The corner has no arm pivot called "${bush.pivot}".`,
        )
      return angle
    }
    const rate = twistOf(high.below, high.above) / (2 * step)
    return { clamped: clampedBush(bush, turned(twistOf), rate, wheelRate), rate }
  })
  const heights = clamped.filter((one) => one.clamped.bonded).map((one) => one.clamped.height)
  return {
    side,
    target,
    hanging,
    raise: combine([
      { of: target, times: 1 },
      { of: hanging, times: -1 },
    ]),
    armTurn: { lower: arm('armLower'), upper: arm('armUpper') },
    bushes: clamped.map((one) => one.clamped),
    height:
      heights.length > 0 && heights.every((one) => one !== null)
        ? combine(heights.map((of) => ({ of: of!, times: 1 })))
        : null,
    cautions: cautionsOf({
      cornerLoad: task.cornerLoad ?? null,
      hasAdjuster: bushes.some((bush) => bush.adjuster),
      hasBonded: bushes.some((bush) => bush.bonded),
      airSprung: task.airSprung ?? false,
      ...(task.mass ? { mass: task.mass } : {}),
    }),
  }
}

function clampedBush(
  bush: ClampBush,
  twist: Measured,
  rate: number,
  wheelRate: Measured | null,
): ClampedBush {
  if (!bush.bonded)
    return {
      ...bush,
      twist,
      torque: null,
      height: null,
      remark: 'it slips and holds no twist',
      rule: 'final in any position',
    }
  const stiffness = stiffnessOf(bush)
  const torque = propagate(([k, phi]) => k! * phi!, [stiffness, twist])
  const height = wheelRate
    ? propagate(([k, phi, K]) => (k! * phi! * rate) / K!, [stiffness, twist, wheelRate])
    : null
  return {
    ...bush,
    twist,
    torque,
    height,
    remark: [
      bush.stiffness ? '' : 'stiffness not known: a typical range',
      wheelRate ? '' : 'height needs the rate at the wheel',
    ]
      .filter((text) => text !== '')
      .join('; '),
    rule: bush.adjuster ? 'stays run up until the last move' : 'final only at ride height',
  }
}

function stiffnessOf({ id, name, stiffness }: ClampBush): Measured {
  if (!stiffness) return typicalStiffness(id)
  if (!(stiffness.value > 0 && stiffness.spread >= 0 && Number.isFinite(stiffness.value + stiffness.spread)))
    throw refusal(
      'not-positive',
      id,
      stiffness.value,
      `The stiffness of ${name} must be positive, its spread not below zero.`,
    )
  return normal(stiffness.spread * stiffness.value, `stiffness of ${id}`, stiffness.value)
}

function poseNear(m: Mechanism, travel: number): { at: Pose; below: Pose; above: Pose } {
  const at = (z: number) => poseAt(m, { travel: metre(z), rack: metre(0) })
  return { at: at(travel), below: at(travel - step), above: at(travel + step) }
}

function checkTravel(target: Measured, hanging: Measured): void {
  for (const [at, { value }] of Object.entries({ target, hanging }))
    if (!Number.isFinite(value))
      throw refusal('not-finite', at, value, `The travel at ${at} is not a number.`)
  if (hanging.value > target.value)
    throw refusal(
      'hangs-above-target',
      'hanging',
      hanging.value,
      `The wheel cannot hang ${((hanging.value - target.value) * 1000).toFixed(0)} mm above its ride height.`,
    )
}

const refusal = (code: ClampRefusal, at: string, given: unknown, sentence: string) =>
  new Refusal<ClampRefusal>({
    code,
    at,
    given: String(given),
    sentence,
    remedy: 'Look at this number again: a rule from hub centre to arch edge, hanging and on its wheels.',
  })
