export { atHeight, type HeightResponse } from './at-height.ts'
export { type AxisAngles, axisFromSweep } from './axis-from-sweep.ts'
export {
  type Advice,
  bestImprovement,
  type Improvement,
  type ImprovementOptions,
} from './best-improvement.ts'
export { camberReading } from './camber-reading.ts'
export { floorByTurning, type Standing } from './floor-by-turning.ts'
export { type FloorTarget, floorCorrection } from './floor-correction.ts'
export { type FloorTilt, floorTilt } from './floor-tilt.ts'
export type { GaugeContext, KnownPlay, RunOut } from './gauge-context.ts'
export { type Correction, type GaugeReading, isAngleName, type OtherName } from './gauge-reading.ts'
export type { GaugeRefusal } from './gauge-refusal.ts'
export { includedAngle } from './included-angle.ts'
export type {
  DialIndicator,
  FloorMap,
  Inclinometer,
  Instrument,
  Rule,
  SteerGauge,
  Strings,
  Tape,
  WheelPlace,
} from './instruments.ts'
export type {
  InclinometerObservation,
  Method,
  Observation,
  PlayObservation,
  RideHeightObservation,
  RunOutObservation,
  StringReadings,
  StringsObservation,
  SweepObservation,
  SweepReading,
  TapeObservation,
} from './observation.ts'
export { playReading } from './play-reading.ts'
export { readingOf } from './reading-of.ts'
export { rideHeight } from './ride-height.ts'
export { type RunOutFit, runOutFit, type TurnReading } from './run-out-fit.ts'
export { runOutReading } from './run-out-reading.ts'
export { smallAngleCaster } from './small-angle-caster.ts'
export { kindOfSource, type SourceKind, sourceName } from './source-name.ts'
export { sweepReading } from './sweep-reading.ts'
export { type SweepOffset, sweepThroughLinkage } from './sweep-through-linkage.ts'
export { toeByStrings } from './toe-by-strings.ts'
export { totalToeByTape } from './total-toe-by-tape.ts'
export { widenedByPlay } from './widened-by-play.ts'
export { zeroByReversal } from './zero-by-reversal.ts'
