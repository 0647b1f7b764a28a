export type { GaugeRefusal } from './gauge-refusal.ts'
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
