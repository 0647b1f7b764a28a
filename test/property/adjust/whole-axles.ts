// Invented whole axles and their adjusters, for tests only.
import type {
  Adjuster,
  AdjusterSet,
  KingpinSleeve,
  Slide,
  SubFrameShift,
  TieRodThread,
  TopPlate,
  Wedge,
  WholeAxleSetup,
} from '../../../src/adjust/index.ts'
import type { SemiTrailingArm, SolidAxlePoints, TwistBeam } from '../../../src/linkage/index.ts'
import { deg, metre, mm, rad, turn } from '../../../src/quantity/index.ts'
import { tieRod } from './invented-corners.ts'

export const straight = { heave: metre(0), roll: rad(0), drop: rad(0) }

const hub = (y: 1 | -1) => ({
  wheelCentre: [0, y * 0.8, 0.38] as const,
  camber: deg(0.9),
  toe: deg(0.08),
  tyreRadius: metre(0.38),
  kingpin: { lower: [0.006, y * 0.7, 0.28] as const, upper: [-0.01, y * 0.672, 0.49] as const },
})

/** A small tipper's steered front axle on leaf springs. */
export const tipperFront: SolidAxlePoints = {
  location: {
    kind: 'leaf',
    rollAxis: [
      [-0.6, 0, 0.41],
      [0.6, 0, 0.43],
    ],
  },
  left: hub(1),
  right: hub(-1),
  steering: {
    dropAxis: [
      [0.72, 0.41, 0.74],
      [0.72, 0.53, 0.74],
    ],
    dragInner: [0.71, 0.51, 0.51],
    dragOuter: [0.02, 0.51, 0.49],
    drags: 'left',
    tieLeft: [-0.18, 0.64, 0.29],
    tieRight: [-0.18, -0.64, 0.29],
  },
}

/** A rear axle on three links and a track bar, not steered. */
export const linkedRear: SolidAxlePoints = {
  location: {
    kind: 'links',
    links: [
      { inner: [0.6, 0.42, 0.34], outer: [0.02, 0.45, 0.28] },
      { inner: [0.6, -0.42, 0.34], outer: [0.02, -0.45, 0.28] },
      { inner: [0.45, 0.1, 0.52], outer: [0.02, 0.1, 0.48] },
      { inner: [-0.12, 0.5, 0.4], outer: [-0.12, -0.5, 0.34] },
    ],
  },
  left: { ...hub(1), camber: deg(-0.2), kingpin: null },
  right: { ...hub(-1), camber: deg(-0.2), kingpin: null },
  steering: null,
}

const beamSide = (y: 1 | -1) => ({
  pivot: [0.4, y * 0.56, 0.31] as const,
  wheelCentre: [0, y * 0.73, 0.3] as const,
  camber: deg(-1.3),
  toe: deg(0.15),
  tyreRadius: metre(0.3),
})
/** A small van's twist beam. */
export const vanBeam: TwistBeam = {
  left: beamSide(1),
  right: beamSide(-1),
  shearCentre: [0.27, 0, 0.35],
  shape: 0.8,
}

/** A bus's semi-trailing rear arm. */
export const busArm: SemiTrailingArm = {
  layout: 'semi-trailing arm',
  innerFront: [0.36, 0.16, 0.32],
  innerRear: [0.28, 0.52, 0.31],
  wheelCentre: [0, 0.72, 0.3],
  camber: deg(-1.2),
  toe: deg(0.1),
  tyreRadius: metre(0.31),
}

const common = { play: 0, seenFrom: 'front' } as const

export const sleeve = (more: Partial<KingpinSleeve> = {}): KingpinSleeve => ({
  ...common,
  kind: 'offset sleeve',
  id: 'sleeve',
  name: 'kingpin sleeve',
  tilt: deg(0.75),
  range: [deg(-180), deg(180)],
  step: deg(15),
  play: rad(0),
  seenFrom: 'above',
  positiveLooks: 'clockwise',
  markAt: deg(270),
  ...more,
})

export const wedge = (tilts: Wedge['tilts'], more: Partial<Wedge> = {}): Wedge => ({
  kind: 'wedge',
  id: `${tilts} wedge`,
  name: `${tilts} wedge`,
  tilts,
  sizes: [deg(0.25), deg(0.5), deg(0.75), deg(1)],
  range: [deg(-1), deg(1)],
  step: deg(0.25),
  play: rad(0),
  seenFrom: 'rear',
  ...more,
})

export const tieRodOfAxle = (more: Partial<TieRodThread> = {}): TieRodThread =>
  tieRod({ length: 'tie-rod', sleeve: true, step: turn(1 / 12), seenFrom: 'outside', ...more })

export const dragLink = (more: Partial<TieRodThread> = {}): TieRodThread =>
  tieRod({ id: 'drag link', name: 'drag link', length: 'drag-link', sleeve: true, ...more })

export const slide = (more: Partial<Slide> = {}): Slide => ({
  kind: 'slide',
  id: 'slide',
  name: 'lower arm',
  moves: ['lowerFrontInner', 'lowerRearInner'],
  along: [0, 1, 0],
  range: [mm(-8), mm(8)],
  step: mm(0.5),
  play: mm(0),
  seenFrom: 'front',
  ...more,
})

export const topPlate = (more: Partial<TopPlate> = {}): TopPlate => ({
  kind: 'top plate',
  id: 'top plate',
  name: 'top plate',
  moves: 'topMount',
  along: [0, 1, 0],
  range: [mm(-12), mm(12)],
  step: mm(3),
  play: mm(0),
  seenFrom: 'above',
  ...more,
})

export const subFrame = (more: Partial<SubFrameShift> = {}): SubFrameShift => ({
  kind: 'sub-frame shift',
  id: 'sub-frame',
  name: 'sub-frame',
  along: 'y',
  moves: ['lowerFrontInner', 'lowerRearInner', 'tieInner'],
  range: [mm(-6), mm(6)],
  step: mm(0.5),
  play: mm(0),
  seenFrom: 'front',
  ...more,
})

export const set = (...pairs: readonly (readonly [Adjuster, number | null])[]): AdjusterSet => ({
  adjusters: pairs.map(([one]) => one),
  settings: Object.fromEntries(pairs.map(([one, at]) => [one.id, at])),
})

/** The tipper's front axle with a sleeve at each wheel, tie rod and drag link. */
export const tipper = (left: number | null = 0, right: number | null = 0): WholeAxleSetup => ({
  end: 'front',
  axle: tipperFront,
  drive: straight,
  left: set([sleeve(), left]),
  right: set([sleeve(), right]),
  both: set([tieRodOfAxle(), 0], [dragLink(), 0]),
})
