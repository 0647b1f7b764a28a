import {
  type BoxSteering,
  type DoubleWishbone,
  mechanism,
  poseAt,
  type SolidAxlePoints,
  type SteeredAxle,
  type TwistBeam,
  type TwistBeamSide,
} from '../../src/linkage/index.ts'
import { deg, metre, rad } from '../../src/quantity/index.ts'

/** An invented left front corner. */
export const points: DoubleWishbone = {
  layout: 'double wishbone',
  upperFrontInner: [0.14, 0.42, 0.52],
  upperRearInner: [-0.15, 0.43, 0.51],
  upperOuter: [-0.012, 0.64, 0.545],
  lowerFrontInner: [0.17, 0.36, 0.21],
  lowerRearInner: [-0.19, 0.37, 0.215],
  lowerOuter: [0.008, 0.7, 0.195],
  tieInner: [-0.13, 0.33, 0.26],
  tieOuter: [-0.14, 0.69, 0.265],
  wheelCentre: [0, 0.76, 0.31],
  camber: deg(-0.5),
  toe: deg(0.1),
  tyreRadius: metre(0.31),
}
/** The same, ready. */
export const m = mechanism(points)
/** Ride height, wheels straight. */
export const ride = { travel: metre(0), rack: metre(0) }
/** Its pose there. */
export const from = poseAt(m, ride)
/** Room for two answers of a batch. */
export const out = new Float64Array(16)
/** An invented steered front axle on leaf springs: drop arm ahead, drag link to the left knuckle, tie rod behind. */
export const axlePoints: SolidAxlePoints = {
  location: {
    kind: 'leaf',
    rollAxis: [
      [-0.55, 0, 0.4],
      [0.55, 0, 0.42],
    ],
  },
  left: {
    wheelCentre: [0, 0.78, 0.36],
    camber: deg(1),
    toe: deg(0.1),
    tyreRadius: metre(0.36),
    kingpin: { lower: [0.008, 0.685, 0.27], upper: [-0.005, 0.66, 0.47] },
  },
  right: {
    wheelCentre: [0, -0.78, 0.36],
    camber: deg(0.75),
    toe: deg(0.1),
    tyreRadius: metre(0.36),
    kingpin: { lower: [0.008, -0.685, 0.27], upper: [-0.005, -0.66, 0.47] },
  },
  steering: {
    dropAxis: [
      [0.7, 0.4, 0.72],
      [0.7, 0.52, 0.72],
    ],
    dragInner: [0.69, 0.5, 0.5],
    dragOuter: [0.02, 0.5, 0.48],
    drags: 'left',
    tieLeft: [-0.17, 0.63, 0.28],
    tieRight: [-0.17, -0.63, 0.28],
  },
}
/** Axle at its design height, level, wheels straight. */
export const straight = { heave: metre(0), roll: rad(0), drop: rad(0) }
/** An invented parallelogram: box, drop arm, idler and centre link behind the axle. */
export const box: BoxSteering = {
  kind: 'box',
  dropAxis: [
    [0.02, 0.36, 0.3],
    [0.02, 0.36, 0.4],
  ],
  dropJoint: [-0.13, 0.36, 0.26],
  idlerAxis: [
    [0.02, -0.36, 0.3],
    [0.02, -0.36, 0.4],
  ],
  idlerJoint: [-0.13, -0.36, 0.26],
  ratio: 16,
}
/** Both corners alike, the right one computed as a left one, steered by the box. */
export const axle: SteeredAxle = { steering: box, left: m, right: m }
/** Both wheels at their design height. */
export const level = { left: metre(0), right: metre(0) }
/** Inner tie-rod points of both sides. */
export const inner = { left: [-0.13, 0.33, 0.26], right: [-0.13, -0.33, 0.26] } as const
const beamSide = (y: 1 | -1): TwistBeamSide => ({
  pivot: [0.42, y * 0.55, 0.3],
  wheelCentre: [0, y * 0.74, 0.3],
  camber: deg(-1.5),
  toe: deg(0.2),
  tyreRadius: metre(0.3),
})
/** An invented twist beam: its cross beam a third of the way from pivots to wheels. */
export const beam: TwistBeam = {
  left: beamSide(1),
  right: beamSide(-1),
  shearCentre: [0.28, 0, 0.34],
  shape: 1,
}
