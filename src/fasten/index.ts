export { type Act, type ActRecord, type JointState, type Now, openJoint } from './act.ts'
export { afterAct } from './after-act.ts'
export { bearingDiameter } from './bearing-diameter.ts'
export { type CastleNut, castleNut } from './castle-nut.ts'
export { type CastleWindow, castleOnScale } from './castle-on-scale.ts'
export { angleToSlot, axialAdvance, largestAdvance, type Slots, type SlotView } from './castle-slot.ts'
export { checkJoint } from './check-joint.ts'
export { checkWrench, type WrenchCheck } from './check-wrench.ts'
export { conditionWarning } from './condition-warning.ts'
export type { FastenRefusal } from './fasten-refusal.ts'
export { type FrictionJob, forceLever } from './force-lever.ts'
export { type Friction, frictionOf, type ThreadCondition } from './friction.ts'
export {
  type AdjustableHub,
  type BoltedJoint,
  type Joint,
  type JointFacts,
  type Position,
  positionsOf,
  secondCheckOf,
  type TaperedStud,
} from './joint.ts'
export { nextAct } from './next-act.ts'
export { type NutFactor, nutFactors, preloadByNutFactor, torqueByNutFactor } from './nut-factor.ts'
export { onScale, type ScaleJob } from './on-scale.ts'
export { parseThread } from './parse-thread.ts'
export { type Preload, type PreloadJob, preloadOf, torqueFor } from './preload.ts'
export type {
  CastleSlot,
  HandSnug,
  SeatAndBackOff,
  Stage,
  Staged,
  StatedTorque,
  StatedTurn,
  TorqueProcedure,
  TorqueThenAngle,
} from './procedure.ts'
export { type RankedWrench, rankWrenches, type UnfitWrench, type WrenchQuestion } from './rank-wrenches.ts'
export { type ReTightening, reTightening } from './re-tightening.ts'
export type { Step, StepFigure } from './step.ts'
export { type StepOptions, stepsOf } from './steps-of.ts'
export { type Strength, strengthOf, strengths } from './strength.ts'
export type { Thread } from './thread.ts'
export { type ThreadLoads, threadLoads } from './thread-loads.ts'
export { threadTable } from './thread-table.ts'
export {
  type Scatter,
  scattered,
  scatterOf,
  type TighteningMethod,
  tighteningFactor,
} from './tightening-scatter.ts'
export { type Ring, type TighteningSequence, tighteningSequence } from './tightening-sequence.ts'
export { torqueReceived, type WrenchInHand } from './torque-received.ts'
export type { Adapter, TorqueWrench, WrenchScale } from './torque-wrench.ts'
export { type TurnJob, turnForPreload } from './turn-for-preload.ts'
export { checkTypedTorque, type TypedTorque, type TypedTorqueCheck } from './typed-torque.ts'
export { type WrenchClass, wrenchDeviation } from './wrench-class.ts'
export { type AdapterJob, type Lever, torqueThrough, wrenchSetting } from './wrench-setting.ts'
export { type YieldJob, yieldPreload } from './yield-preload.ts'
