export { deservedPlaces } from './deserved-places.ts'
export { exactText } from './exact-text.ts'
export { formatAngle } from './format-angle.ts'
export { formatChance } from './format-chance.ts'
export { formatDistance } from './format-distance.ts'
export { formatForce } from './format-force.ts'
export { formatLength } from './format-length.ts'
export { formatMass } from './format-mass.ts'
export { formatMeasured, type KindInUnit } from './format-measured.ts'
export { formatPercent } from './format-percent.ts'
export { formatPressure } from './format-pressure.ts'
export { formatStiffness } from './format-stiffness.ts'
export { formatTorque } from './format-torque.ts'
export { formatTurns } from './format-turns.ts'
export { parseAngle } from './parse-angle.ts'
export { parseDistance } from './parse-distance.ts'
export { parseForce } from './parse-force.ts'
export { parseLength } from './parse-length.ts'
export { parseMass } from './parse-mass.ts'
export { parsePercent } from './parse-percent.ts'
export { parsePressure } from './parse-pressure.ts'
export { parseStiffness } from './parse-stiffness.ts'
export { parseToe, type ToeOptions } from './parse-toe.ts'
export { parseTorque } from './parse-torque.ts'
export { parseTurns, type TurnOptions } from './parse-turns.ts'
export type {
  AngleUnit,
  DecimalStyle,
  DistanceUnit,
  ForceUnit,
  FractionStyle,
  LengthUnit,
  MassUnit,
  PressureUnit,
  StiffnessUnit,
  TorqueUnit,
} from './print-style.ts'
export type { QuantityRefusal } from './quantity-refusal.ts'
export type { ReadOptions } from './read-quantity.ts'
export { Refusal, type RefusalFacts } from './refusal.ts'
export * from './tags.ts'
export { toeAsLength, toeFromLength } from './toe-as-length.ts'
export { metricUnits, type UnitChoice, usUnits } from './unit-choice.ts'
