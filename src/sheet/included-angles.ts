import type { AxleSetup, WheelSetup } from '../adjust/index.ts'
import { includedAngle } from '../gauge/index.ts'
import { mechanism, poseAt } from '../linkage/index.ts'
import { combine, interval, type Measured } from '../measure/index.ts'
import { formatMeasured, type UnitChoice } from '../quantity/index.ts'
import type { RoundReadings } from './read-round.ts'
import { displacementStanding } from './wheel-setups.ts'

/** Sides of a sound axle agree better than this, rad (0.5°). @source common practice, no source */
const alike = (0.5 * Math.PI) / 180

/**
 * What the two included angles say, when they differ for certain by more than the settings of their adjusters
 * explain: then the part that joins axle stub and steering axis is not what it should be.
 *
 * @source from memory (classical table of SAI, included angle and camber)
 */
export function includedAngleSays(
  { readings }: RoundReadings,
  setup: AxleSetup,
  units: UnitChoice,
): readonly string[] {
  // On a solid axle the included angle is the knuckle's alone; sleeves and wedges tell of themselves.
  if ('axle' in setup) return []
  const angle = (side: 'left' | 'right') => {
    const [sai, camber] = [readings[`front ${side} sai`], readings[`front ${side} camber`]]
    return sai && camber ? includedAngle(side, { sai: sai.measured, camber: camber.measured }).measured : null
  }
  const [left, right] = [angle('left'), angle('right')]
  const [onLeft, onRight] = [drawn(setup.left), drawn(setup.right)]
  if (!left || !right || onLeft === null || onRight === null) return []
  const unexplained = combine(
    [
      { of: left, times: 1 },
      { of: right, times: -1 },
    ],
    onRight - onLeft,
  )
  const room = alike + unknownSlots(setup.left) + unknownSlots(setup.right)
  const { low, high } = interval(unexplained)
  if (low <= room && high >= -room) return []
  return [
    `The included angles differ by more than the adjusters explain: left ${shown(left, units)}, right ${shown(right, units)}. Look at the part that joins axle stub and steering axis (knuckle, strut tube and their clamp) before anything is turned.`,
  ]
}

/** Included angle of the corner model with its adjusters as they stand, rad; null without a joint axis. */
function drawn(wheel: WheelSetup): number | null {
  const { sai, camber } = poseAt(mechanism(wheel.points, displacementStanding(wheel)), wheel.drive)
  return sai === null ? null : sai + camber
}

/** A slotted bolt whose setting nobody knows may make this much of it, rad. */
const unknownSlots = ({ adjusters, settings }: WheelSetup): number =>
  adjusters.reduce(
    (sum, a) =>
      a.kind === 'slotted bolt' && typeof settings[a.id] !== 'number'
        ? sum + (a.range[1] - a.range[0]) / (2 * a.boltSpacing)
        : sum,
    0,
  )

function shown(measured: Measured, units: UnitChoice): string {
  const { low, high } = interval(measured)
  const { text, spread } = formatMeasured({
    value: measured.value,
    halfWidth: (high - low) / 2,
    kind: 'angle',
    unit: units.angle,
    digits: 2,
  })
  return `${text} ${spread}`
}
