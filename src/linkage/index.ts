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
export {
  type AxleEnd,
  type AxleReading,
  axleReadings,
  type ReadingName,
  type Side,
  type WheelAngle,
  type WheelReading,
} from './wheel-angles.ts'
