import {
  type ClampBush,
  type ClampedBush,
  cautionsOf,
  clampPose,
  clampTarget,
  travelFromArch,
} from '../clamp/index.ts'
import {
  type Bush,
  bushesOf,
  type Corner,
  cornerPoints,
  isWholeAxle,
  wholeAxlePoints,
} from '../corner/index.ts'
import type { HeightFact, JobState, Round } from '../job/index.ts'
import { type AnyCornerPoints, type Side, twistBeamArm } from '../linkage/index.ts'
import { combine, type Measured, normal, rectangular } from '../measure/index.ts'
import type { Metre, UnitChoice } from '../quantity/index.ts'
import type { Spec } from '../spec/index.ts'
import type { SheetClamp } from './sheet.ts'
import { sheetNumber } from './sheet-number.ts'
import { adjustersStanding, displacementStanding } from './wheel-setups.ts'

/** How far a wheel may hang off the model's droop when nobody measured it, half-width, m. @source own choice */
const droopWithin = 0.01

/** What the clamp pose of one wheel is worked out from. */
export interface ClampSources {
  readonly corner: Corner
  readonly spec: Spec | null
  readonly state: JobState
  readonly round: Round | null
  readonly side: Side
  readonly units: UnitChoice
  /** A height fact as a measured value. */
  readonly measured: (height: HeightFact) => Measured
}

/** The clamp pose of one wheel; null where the model has no bonded bush, no height to refer to, or no target. */
export function sheetClamp(from: ClampSources): SheetClamp | null {
  const { corner, spec, state, side, units } = from
  const atDesign = corner.rideHeight?.at
  const bushes = bushesOf(corner).filter((bush) => bush.bonded)
  if (atDesign === undefined || bushes.length === 0) return null
  const wheel = `${corner.axle} ${side}` as const
  const facts = state.heights.filter((h) => h.wheel === wheel)
  const before = facts.find((h) => h.when === 'before lifting')
  const limit = spec?.rideHeight?.[corner.axle] ?? null
  const springs = state.renewed.some((r) => r.wheels.includes(wheel) && isSpring(corner, r.part))
    ? 'renewed'
    : 'stay'
  const target = clampTarget({
    springs,
    before: before ? from.measured(before) : null,
    sheet: limit && {
      low: limit.low.value,
      high: limit.high.value,
      ...(limit.preferred ? { preferred: limit.preferred.value } : {}),
    },
  })
  const title = `Clamp pose, ${side} ${corner.axle}`
  const length = { kind: 'length', unit: units.length } as const
  const angle = { kind: 'angle', unit: units.angle } as const
  if (!target.height) {
    return {
      side,
      title,
      target: null,
      targetWhy: target.why,
      raise: null,
      armTurn: null,
      bushes: [],
      cautions: cautionsOf({
        cornerLoad: corner.load ?? null,
        hasAdjuster: bushes.some((bush) => bush.adjuster !== null),
        hasBonded: true,
        airSprung: corner.airSprung ?? false,
        mass: units.mass,
      }).map((c) => c.sentence),
    }
  }
  const hung = facts.filter((h) => h.when === 'hanging').at(-1)
  const hanging = hung
    ? travelFromArch(from.measured(hung), atDesign)
    : rectangular(droopWithin, `droop of ${corner.id}, not measured`, -(corner.travel?.droop ?? 0.07))
  const points = armOf(corner, side)
  if (points === null) return onItsAxle({ corner, title, side, target, hanging, atDesign, bushes, units })
  const pose = clampPose({
    side,
    points,
    ...(isWholeAxle(corner.layout)
      ? {}
      : {
          displacement: displacementStanding({
            points,
            ...adjustersStanding(corner, from.round?.settings ?? state.settings, side),
          }),
        }),
    target: travelFromArch(target.height, atDesign),
    hanging,
    bushes: bushes.map(
      (bush): ClampBush => ({
        id: `${bush.joint}, ${side} ${corner.axle}`,
        name: bush.name,
        pivot: corner.layout === 'twist beam' ? 'innerFront' : bush.pivot,
        bonded: true,
        stiffness:
          bush.stiffness === null ? null : { value: bush.stiffness, spread: bush.stiffnessSpread ?? 0.3 },
        adjuster: bush.adjuster !== null,
      }),
    ),
    wheelRate: wheelRateOf(corner, side),
    cornerLoad: corner.load ?? null,
    airSprung: corner.airSprung ?? false,
    mass: units.mass,
  })
  const row = (bush: ClampedBush, i: number): SheetClamp['bushes'][number] => ({
    name: bush.name,
    letter: bushes[i]!.letter,
    twistHanging: sheetNumber(absolute(bush.twist), angle),
    torque: bush.torque && sheetNumber(absolute(bush.torque), { kind: 'torque', unit: units.torque }),
    height: bush.height && sheetNumber(absolute(bush.height), length),
    rule: bush.rule,
  })
  return {
    side,
    title,
    target: sheetNumber(target.height, length),
    targetWhy: target.why,
    raise: sheetNumber(pose.raise, length),
    armTurn: pose.armTurn.lower && sheetNumber(pose.armTurn.lower, angle),
    bushes: pose.bushes.map(row),
    cautions: pose.cautions.map((c) => c.sentence),
  }
}

/** The arm whose bushes are twisted; null for a solid axle, whose springs and links are not computed one by one. */
function armOf(corner: Corner, side: Side): AnyCornerPoints | null {
  if (!isWholeAxle(corner.layout)) return cornerPoints(corner)
  const axle = wholeAxlePoints(corner)
  return 'location' in axle ? null : twistBeamArm(axle, side, 'together')
}

/** A solid axle: the height at which eyes, shackles and links are final; their twist is not computed. */
function onItsAxle({
  corner,
  title,
  side,
  target,
  hanging,
  atDesign,
  bushes,
  units,
}: {
  readonly corner: Corner
  readonly title: string
  readonly side: Side
  readonly target: ReturnType<typeof clampTarget>
  readonly hanging: Measured
  readonly atDesign: Metre
  readonly bushes: readonly Bush[]
  readonly units: UnitChoice
}): SheetClamp {
  const height = target.height!
  const length = { kind: 'length', unit: units.length } as const
  const named = bushes.map(({ letter, name }) => `${letter} ${name}`.trim()).join('; ')
  return {
    side,
    title,
    target: sheetNumber(height, length),
    targetWhy: target.why,
    raise: sheetNumber(
      combine([
        { of: travelFromArch(height, atDesign), times: 1 },
        { of: hanging, times: -1 },
      ]),
      length,
    ),
    armTurn: null,
    bushes: [],
    cautions: [
      `Final only at ride height, on its wheels or with the axle on stands: ${named}. How far they would be twisted is not computed for a solid axle.`,
      ...cautionsOf({
        cornerLoad: corner.load ?? null,
        hasAdjuster: bushes.some((bush) => bush.adjuster !== null),
        hasBonded: true,
        airSprung: corner.airSprung ?? false,
        mass: units.mass,
      }).map((c) => c.sentence),
    ],
  }
}

const absolute = (m: Measured): Measured => (m.value < 0 ? combine([{ of: m, times: -1 }]) : m)

const isSpring = (corner: Corner, part: string): boolean => corner.parts[part]?.kind === 'spring'

/** The same springs stand on both sides, but each rate errs on its own. */
function wheelRateOf({ wheelRate, id }: Corner, side: Side): Measured | null {
  return wheelRate
    ? normal(wheelRate.spread * wheelRate.rate, `wheel rate of ${id}, ${side}`, wheelRate.rate)
    : null
}
