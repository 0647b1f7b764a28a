export { checkFinite } from './check-points.ts'
export type { LinkageRefusal } from './linkage-refusal.ts'
export { displaceable, displaced, type Mechanism, mechanism } from './mechanism.ts'
export { mirrorPoint } from './mirror-point.ts'
export { motionCurve } from './motion-curve.ts'
export type {
  CornerPoints,
  Displacement,
  DoubleWishbone,
  Drive,
  FiveLink,
  FiveLinkLink,
  Point,
  Strut,
  WheelAtDesign,
} from './points.ts'
export type { Pose } from './pose.ts'
export { poseAt } from './pose-at.ts'
export { rackForSide } from './rack-for-side.ts'
export { rackRange } from './rack-range.ts'
export { rateOf } from './rate-of.ts'
export { type Direction, ratesAt, type WheelRates } from './rates-at.ts'
export { parameters, sensitivities } from './sensitivities.ts'
export { type Setting, type Settled, settingsFor } from './settings-for.ts'
export { steerCurve } from './steer-curve.ts'
export { sumOfDisplacements } from './sum-of-displacements.ts'
export { travelRange } from './travel-range.ts'
export {
  type AxleEnd,
  type AxleReading,
  axleReadings,
  type ReadingName,
  type Side,
  type WheelAngle,
  type WheelReading,
} from './wheel-angles.ts'
