import { type AdjusterSet, strokeOf, type WholeAxleSetup } from '../adjust/index.ts'
import {
  type AxleDrive,
  type AxlePose,
  type AxleSettings,
  axlePoseAt,
  type KingpinTilt,
  type Side,
  sleeveTilt,
  solidAxle,
  type TwistBeam,
  type TwistBeamWheel,
  twistBeamReadings,
} from '../linkage/index.ts'
import { type Metre, metre, rad } from '../quantity/index.ts'

const sides = ['left', 'right'] as const

/** What the adjusters of a whole axle do to it as they stand; those of unknown setting do nothing. */
function axleSettingsStanding(setup: WholeAxleSetup): AxleSettings {
  const known = ({ adjusters, settings }: AdjusterSet) =>
    adjusters.flatMap((adjuster) => {
      const setting = settings[adjuster.id]
      return typeof setting === 'number' ? [{ adjuster, by: strokeOf(adjuster, setting) }] : []
    })
  const tilts: Partial<Record<Side, KingpinTilt>> = {}
  const shim = { left: { camber: 0, toe: 0 }, right: { camber: 0, toe: 0 } }
  for (const side of sides) {
    const here = known(setup[side])
    const sleeves = here.flatMap(({ adjuster, by }) =>
      adjuster.kind === 'offset sleeve' ? [{ offset: adjuster.tilt, angle: rad(by) }] : [],
    )
    if (sleeves.length > 0) tilts[side] = sleeveTilt(sleeves)
    for (const { adjuster, by } of here) if (adjuster.kind === 'wedge') shim[side][adjuster.tilts] += by
  }
  const links: [number, number, number, number] = [0, 0, 0, 0]
  let [tieRod, dragLink] = [0, 0]
  for (const { adjuster, by } of setup.both ? known(setup.both) : []) {
    if (adjuster.kind !== 'thread') continue
    if (adjuster.length === 'tie-rod') tieRod += by
    else if (adjuster.length === 'drag-link') dragLink += by
    else links[Number(adjuster.length.slice(-1))]! += by
  }
  const angles = (one: { camber: number; toe: number }) => ({ camber: rad(one.camber), toe: rad(one.toe) })
  return {
    tilt: tilts,
    shim: { left: angles(shim.left), right: angles(shim.right) },
    ...(tieRod === 0 ? {} : { tieRod: metre(tieRod) }),
    ...(dragLink === 0 ? {} : { dragLink: metre(dragLink) }),
    ...(links.every((by) => by === 0)
      ? {}
      : { links: [metre(links[0]), metre(links[1]), metre(links[2]), metre(links[3])] }),
  }
}

/** Either a solid axle's pose or a beam's wheels, as the linkage says them. */
export type AxleStanding =
  | { readonly kind: 'solid axle'; readonly pose: AxlePose }
  | { readonly kind: 'twist beam'; readonly wheels: Readonly<Record<Side, TwistBeamWheel>> }

/**
 * A whole axle at a drive with its adjusters as they stand, or as it was drawn.
 *
 * @param as `standing` or `drawn`: without its adjusters
 */
export function axleStanding(
  setup: WholeAxleSetup,
  drive: AxleDrive,
  as: 'standing' | 'drawn' = 'standing',
): AxleStanding {
  const settings = as === 'standing' ? axleSettingsStanding(setup) : {}
  const { axle } = setup
  if ('location' in axle) return { kind: 'solid axle', pose: axlePoseAt(solidAxle(axle, settings), drive) }
  const { shim } = settings
  const beam: TwistBeam = shim ? { ...axle, shim } : axle
  return { kind: 'twist beam', wheels: twistBeamReadings(beam, travels(axle, drive)) }
}

/** How far each hub of a beam stands above design, from heave and roll. */
function travels({ left, right }: TwistBeam, { heave, roll }: AxleDrive): Readonly<Record<Side, Metre>> {
  const half = (left.wheelCentre[1] - right.wheelCentre[1]) / 2
  return { left: metre(heave + half * Math.sin(roll)), right: metre(heave - half * Math.sin(roll)) }
}
