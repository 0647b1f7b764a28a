export { beforeOrdering, type OrderingCosts, type PartAdvice } from './before-ordering.ts'
export type { FindingsRefusal } from './check-problem.ts'
export type { Findings, NextCheck, RankedSuspect, SuspectGroup } from './findings.ts'
export type {
  CheckFound,
  ExaminedAxle,
  ExaminedWheel,
  FindingsProblem,
  PlayFound,
  RoadAnswer,
  TreadFound,
} from './findings-problem.ts'
export type { OwnFrequencies } from './prior-of-suspects.ts'
export { type FindingsOptions, rankSuspects } from './rank-suspects.ts'
export type { Suspect } from './suspect.ts'
export { type SuspectKind, suspectKinds } from './suspect-kind.ts'
export { suspectsOf } from './suspects-of.ts'
export { type WearAnswer, wearAnswers } from './wear-answers.ts'
