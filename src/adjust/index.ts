export type {
  ActsOn,
  Adjuster,
  AdjustRefusal,
  Eccentric,
  KingpinSleeve,
  Looks,
  ShimPack,
  Slide,
  SlottedBolt,
  SubFrameShift,
  TieRodThread,
  TopPlate,
  View,
  Wedge,
} from './adjuster.ts'
export { checkAdjuster } from './check-adjuster.ts'
export { clockOf } from './clock-of.ts'
export { displacementByStroke } from './displacement-by-stroke.ts'
export { displacementOf } from './displacement-of.ts'
export { type Faced, isFaced } from './faced.ts'
export type { FaultKind } from './fault-kinds.ts'
export type { Hand, Turning } from './hand.ts'
export { handOf } from './hand-of.ts'
export { learnAcrossJobs, type TaughtByJobs } from './learn-across-jobs.ts'
export type { RecordedMove } from './learn-lesson.ts'
export { learnMove } from './learn-move.ts'
export { type PastJob, type PastMove, type PastResponse, type PastTurn, pastResponses } from './learn-past.ts'
export { taughtPrior } from './learn-taught-prior.ts'
export { type LearnedFactor, learnedFactors } from './learned-factors.ts'
export type { LearnedResponse } from './learned-response.ts'
export { moves } from './moves.ts'
export type { Foreseen, Move, Moves, SteeringWheel, ToReadFirst } from './moves-answer.ts'
export type { OutOfReach } from './out-of-reach.ts'
export { priorResponse } from './prior-response.ts'
export type {
  AdjusterSet,
  AxleSetup,
  CornersSetup,
  Limit,
  MovesOptions,
  MovesProblem,
  SteeringHeld,
  WheelSetup,
  WholeAxleSetup,
} from './problem.ts'
export { type CamberCaster, type MapPoint, type ReachMap, type ReachTask, reachMap } from './reach-map.ts'
export { settingAt } from './setting-at.ts'
export { settingFromClock } from './setting-from-clock.ts'
export { settingUnit } from './setting-unit.ts'
export { strokeOf } from './stroke-of.ts'
