export { adjustersOf } from './adjusters-of.ts'
export { axleAdjustersOf } from './axle-adjusters-of.ts'
export { type Bush, bushesOf } from './bushes-of.ts'
export { closestName } from './closest-name.ts'
export { cornerPoints } from './corner-points.ts'
export { type Corner, type CornerFile, cornerSchema } from './corner-schema.ts'
export { fieldPath } from './field-path.ts'
export { newestFormat, readFile } from './file-schema.ts'
export { angleRead, type ReadAt } from './fit/angle-read.ts'
export { type AdjusterMove, changeByMove } from './fit/change-by-move.ts'
export { changeOf } from './fit/change-of.ts'
export { distanceBetween } from './fit/distance-between.ts'
export { type FitOptions, type FitTask, fitCorner } from './fit/fit-corner.ts'
export type { FitResidual, FittedCorner, GrossError, Undetermined } from './fit/fitted-corner.ts'
export { foreseenOf } from './fit/foreseen-of.ts'
export { type NextMeasurement, nextMeasurements } from './fit/next-measurement.ts'
export type { CornerMeasurement, Observable } from './fit/observable.ts'
export { offsetOf } from './fit/offset-of.ts'
export { otherWheelTurned } from './fit/other-wheel-turned.ts'
export { slopeOf } from './fit/slope-of.ts'
export type { Way } from './fit/unknowns.ts'
export { type UsualMeasuring, usualMeasuring } from './fit/usual-measuring.ts'
export { type WorkshopMeasurement, workshopMeasurements } from './fit/workshop-measurements.ts'
export type { Fixed } from './fixed.ts'
export { jointLetters } from './joint-letters.ts'
export { readJsonText } from './json-text.ts'
export { familyOf, isWholeAxle, type Layout, layouts, type WholeAxleLayout } from './layouts.ts'
export { fileHead, moment, nameText, words } from './names-schema.ts'
export { type CornerRefusal, parseClock } from './parse-clock.ts'
export { parseRate } from './parse-rate.ts'
export { readPart } from './part-schema.ts'
export { linkNames, pointNames } from './point-names.ts'
export { pointSpreads } from './point-spreads.ts'
export {
  type Typed,
  typedAngle,
  typedClock,
  typedDistance,
  typedLength,
  typedPositive,
  typedPressure,
  typedShare,
  typedToe,
  typedTorque,
  typedTurns,
} from './quantity-schema.ts'
export { readCorner } from './read-corner.ts'
export { bad, good, type Problem, type Reading } from './reading.ts'
export type { Seen } from './seen.ts'
export { type StartingLayout, startingLayout, startingLayouts } from './starting-layouts.ts'
export { wholeAxlePoints } from './whole-axle-points.ts'
export { writeCorner } from './write-corner.ts'
