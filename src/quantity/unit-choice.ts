import type {
  AngleUnit,
  DistanceUnit,
  LengthUnit,
  MassUnit,
  PressureUnit,
  StiffnessUnit,
  TorqueUnit,
} from './print-style.ts'

/** In which units one person reads. What is stored is SI and does not change with it. @source definition */
export interface UnitChoice {
  readonly length: LengthUnit
  readonly angle: AngleUnit
  readonly torque: TorqueUnit
  readonly pressure: PressureUnit
  readonly mass: MassUnit
  readonly distance: DistanceUnit
  readonly stiffness: StiffnessUnit
}

/** Millimetres, decimal degrees, N·m, kPa, kg, km. @source common practice, no source */
export const metricUnits: UnitChoice = {
  length: 'mm',
  angle: '°',
  torque: 'N·m',
  pressure: 'kPa',
  mass: 'kg',
  distance: 'km',
  stiffness: 'N·m/°',
}

/** Inches, decimal degrees, lbf·ft, psi, lb, miles. @source common practice, no source */
export const usUnits: UnitChoice = {
  length: 'in',
  angle: '°',
  torque: 'lbf·ft',
  pressure: 'psi',
  mass: 'lb',
  distance: 'mi',
  stiffness: 'lbf·in/°',
}
