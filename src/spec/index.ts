export { cellOfProblem } from './cell-of-problem.ts'
export { type CsvStyle, csvOfRows } from './csv-of-rows.ts'
export { inspectionLength } from './inspection-length.ts'
export type {
  DiameterRange,
  InspectionLimit,
  InspectionSubject,
  InspectionValue,
  Jurisdiction,
} from './inspection-limit.ts'
export { inspectionLimits } from './inspection-limits.ts'
export {
  type InspectionAnswer,
  type InspectionQuestion,
  inspectionLimitsFor,
} from './inspection-limits-for.ts'
export { limitKeys } from './limit-keys.ts'
export { type Limit, limitsOf } from './limits-of.ts'
export { loadOfIndex } from './load-index.ts'
export { parseTyre, type Tyre } from './parse-tyre.ts'
export { playAsToe } from './play-as-toe.ts'
export { readSpec } from './read-spec.ts'
export { rollingCircumference } from './rolling-circumference.ts'
export { type CsvTable, rowsOfCsv } from './rows-of-csv.ts'
export { specAgainstCorner } from './spec-against-corner.ts'
export { readSpecCsv, specCsv } from './spec-csv.ts'
export type { SpecRefusal } from './spec-refusal.ts'
export { type Spec, type SpecFile, specSchema } from './spec-schema.ts'
export { speedOfSymbol } from './speed-symbol.ts'
export { columnsOf } from './table-columns.ts'
export { tableOf } from './table-of.ts'
export { thresholdFaults } from './threshold-faults.ts'
export { tighteningJoint, turnWithin } from './tightening-joint.ts'
export { type TypedValueDoubt, typedValueDoubts } from './typed-value-doubts.ts'
export { membersOfTable, type TableMember, valueOfMembers } from './value-of-table.ts'
export { type VinCheck, vinCheck, vinCheckOfValues } from './vin-check.ts'
export { type VinHints, vinHints } from './vin-hints.ts'
export { writeSpec } from './write-spec.ts'
