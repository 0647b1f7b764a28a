import {
  type CornerPoints,
  instantCentre,
  mechanism,
  rateOf,
  rollCentre,
} from '../../../src/linkage/index.ts'
import { inDegrees, metre, rad } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

// The drawing-board case as a corner: arm axes straight fore and aft, and a tie rod that repeats the lower arm, so
// that every motion stays in transverse planes. Wheel upright, contact below its centre.
const corner: CornerPoints = {
  layout: 'double wishbone',
  upperFrontInner: [0.15, 0.42, 0.5],
  upperRearInner: [-0.15, 0.42, 0.5],
  upperOuter: [0, 0.64, 0.53],
  lowerFrontInner: [0.15, 0.35, 0.22],
  lowerRearInner: [-0.15, 0.35, 0.22],
  lowerOuter: [0, 0.7, 0.2],
  tieInner: [-0.14, 0.35, 0.22],
  tieOuter: [-0.14, 0.7, 0.2],
  wheelCentre: [0, 0.75, 0.3],
  camber: rad(0),
  toe: rad(0),
  tyreRadius: metre(0.3),
}
const m = mechanism(corner)
const here = { travel: metre(0), rack: metre(0) }
const source = 'planar geometry (line intersection), recomputed'
const basis = 'derived' as const

published(
  'LI10 instant centre and roll centre of planar arms',
  (['drawing board', 'instantaneous'] as const).flatMap((how) => {
    const { centre, swingArm } = instantCentre(m, here, how)
    const mm = 1000
    return [
      { id: `sla.ic y ${how}`, got: centre!.y * mm, want: -1047.651007, within: 5.1e-7, source, basis },
      { id: `sla.ic z ${how}`, got: centre!.z * mm, want: 299.865772, within: 5.1e-7, source, basis },
      {
        id: `sla.ic swing arm ${how}`,
        got: swingArm! * mm,
        want: 1797.651007,
        within: 5.1e-7,
        source,
        basis,
      },
      {
        id: `sla.ic roll centre ${how}`,
        got: rollCentre(m, here, how).height * mm,
        want: 125.107336,
        within: 5.1e-7,
        source,
        basis,
      },
    ]
  }),
)
published('LI7 camber per millimetre of planar arms', [
  {
    id: 'sla.ic camber rate',
    got: Math.abs(inDegrees(rateOf(m, here, { travel: 1 }).camber)) / 1000,
    want: 0.03187258,
    within: 5.1e-9,
    source,
    basis,
  },
])
