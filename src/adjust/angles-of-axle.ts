import {
  type AxleSettings,
  axlePoseAt,
  type SolidAxlePoints,
  solidAxle,
  type TwistBeam,
  twistBeamReadings,
} from '../linkage/index.ts'
import { type Metre, metre } from '../quantity/index.ts'
import type { WholeAxleSetup } from './problem.ts'

/**
 * The angles of both wheels of a whole axle with its adjusters set, exactly.
 *
 * @returns rad in `angleOrder`, left wheel then right; what the axle does not have (caster of a wheel that is not
 *   steered) stays 0
 * @throws {Refusal} what the linkage says when the axle cannot be assembled there
 * @source definition
 */
export function anglesOfAxle(
  { axle, drive }: Pick<WholeAxleSetup, 'axle' | 'drive'>,
  settings: AxleSettings,
): Float64Array {
  if (isSolid(axle)) {
    const { left, right } = axlePoseAt(solidAxle(axle, settings), drive)
    return Float64Array.from(
      [left, right].flatMap(({ camber, caster, sai, toe }) => [camber, caster ?? 0, sai ?? 0, toe]),
    )
  }
  const { left, right } = twistBeamReadings(
    { ...axle, ...(settings.shim ? { shim: settings.shim } : {}) },
    travelsOf(axle, drive),
  )
  return Float64Array.of(left.camber, 0, 0, left.toe, right.camber, 0, 0, right.toe)
}

const isSolid = (axle: SolidAxlePoints | TwistBeam): axle is SolidAxlePoints => 'location' in axle

/** How far each hub of a beam stands above design, from heave and roll as a solid axle counts them. */
function travelsOf(
  { left, right }: TwistBeam,
  { heave, roll }: WholeAxleSetup['drive'],
): Readonly<Record<'left' | 'right', Metre>> {
  const across = left.wheelCentre.map((x, i) => x - right.wheelCentre[i]!)
  const width = Math.hypot(...across)
  const tilt = Math.asin(across[2]! / width)
  // one hub rises by as much as the other falls, so that their line leans by `roll` more
  const half = (width * (Math.sin(tilt + roll) - Math.sin(tilt))) / 2
  return { left: metre(heave + half), right: metre(heave - half) }
}
