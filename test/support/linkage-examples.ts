import { type DoubleWishbone, mechanism, poseAt } from '../../src/linkage/index.ts'
import { deg, metre } from '../../src/quantity/index.ts'

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
