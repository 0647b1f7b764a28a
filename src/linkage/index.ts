export type { AxlePose, AxleWheelPose } from './axle-pose.ts'
export { axlePoseAt } from './axle-pose-at.ts'
export { axleRange } from './axle-range.ts'
export { type AxleDirection, type AxleWheelRates, axleRates } from './axle-rates.ts'
export { batchPoints, type PointDraws } from './batch-points.ts'
export { batchPoses } from './batch-poses.ts'
export { batchFlag, batchStride } from './batch-row.ts'
export { bushTwist } from './bush-twist.ts'
export { centringChange } from './centring-change.ts'
export { checkFinite } from './check-points.ts'
export { type ClosedKernel, closedAngle, closedKernel } from './closed-kernel.ts'
export { closedPose } from './closed-pose.ts'
export { idlerAngle } from './idler-angle.ts'
export { type CentreMethod, type InstantCentre, instantCentre } from './instant-centre.ts'
export type { LinkageRefusal } from './linkage-refusal.ts'
export { displaceable, displaced, type Mechanism, mechanism } from './mechanism.ts'
export { mirrorPoint } from './mirror-point.ts'
export { motionCurve } from './motion-curve.ts'
export { type NewtonKernel, newtonKernel, newtonSettle, rackInner } from './newton-kernel.ts'
export { newtonPose } from './newton-pose.ts'
export { type AckermannTurn, outerWheelAngle } from './outer-wheel-angle.ts'
export type {
  AnyCornerPoints,
  CornerPoints,
  Displacement,
  DoubleWishbone,
  Drive,
  FiveLink,
  FiveLinkLink,
  Point,
  SemiTrailingArm,
  Strut,
  WheelAtDesign,
} from './points.ts'
export type { Pose } from './pose.ts'
export { poseAt } from './pose-at.ts'
export { rackForSide } from './rack-for-side.ts'
export { rackRange } from './rack-range.ts'
export { rateOf } from './rate-of.ts'
export { type Direction, ratesAt, type WheelRates } from './rates-at.ts'
export { type Placement, rigidBodyFromDistances, type SixDistances } from './rigid-body-from-distances.ts'
export { rodsForToes } from './rods-for-toes.ts'
export { type RollCentre, rollCentre } from './roll-centre.ts'
export { parameters, sensitivities } from './sensitivities.ts'
export { type Setting, type Settled, settingsFor } from './settings-for.ts'
export { type OffsetSleeve, sleeveTilt } from './sleeve-tilt.ts'
export { type SolidAxle, solidAxle } from './solid-axle.ts'
export type {
  AxleDrive,
  AxleLink,
  AxleLocation,
  AxleSettings,
  AxleSteering,
  AxleWheel,
  KingpinTilt,
  SolidAxlePoints,
} from './solid-axle-points.ts'
export { steerCurve } from './steer-curve.ts'
export { type SteeredDrive, steeredPoses } from './steered-poses.ts'
export type { BoxSteering, RackSteering, SteeredAxle } from './steering-points.ts'
export { steeringRatio } from './steering-ratio.ts'
export { type SteeringScrew, steeringScrew } from './steering-screw.ts'
export { type SteeringShift, steeringShift } from './steering-shift.ts'
export { type HeldStraight, steeringWheelOff } from './steering-wheel-off.ts'
export { straightAhead } from './straight-ahead.ts'
export { strutClosed } from './strut-closed.ts'
export { sumOfDisplacements } from './sum-of-displacements.ts'
export { travelRange } from './travel-range.ts'
export { turnRadius } from './turn-radius.ts'
export { twistBeamArm } from './twist-beam-arm.ts'
export type { TwistBeam, TwistBeamSide } from './twist-beam-points.ts'
export { type TwistBeamWheel, twistBeamReadings } from './twist-beam-readings.ts'
export {
  type AxleEnd,
  type AxleReading,
  axleReadings,
  type ReadingName,
  type Side,
  type WheelAngle,
  type WheelReading,
} from './wheel-angles.ts'
export { type WheelShift, wheelShift } from './wheel-shift.ts'
export { wishboneClosed } from './wishbone-closed.ts'
