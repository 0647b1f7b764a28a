export type { Action, Need, Risk, Verb } from './action.ts'
export { afterAction } from './after-action.ts'
export type {
  AdjusterNode,
  Assembly,
  AxleName,
  HoldNode,
  JointNode,
  PartNode,
  Place,
  Side,
  StandIn,
} from './assembly.ts'
export { assemblyOf } from './assembly-of.ts'
export { type ChangeMinutes, changeMinutes } from './change-minutes.ts'
export type { Choice } from './choice.ts'
export type { Consequence } from './consequence.ts'
export { consequencesOf } from './consequences-of.ts'
export { factOf } from './fact-of.ts'
export type { Failure, FailureKind, Rung } from './failure.ts'
export { branchesOf } from './failure-branches.ts'
export { failureKinds } from './failure-kinds.ts'
export { failureRungs } from './failure-rungs.ts'
export { failuresAt } from './failures-at.ts'
export type { Goal } from './goal.ts'
export type { Broken, Interlock, Moment } from './interlocks/moment.ts'
export { interlocks } from './interlocks-table.ts'
export { type JointHabit, jointHabits } from './joint-habits.ts'
export { type JudgedOrder, judgeOrder, type OrderFault } from './judge-order.ts'
export { keys } from './keys.ts'
export { meanMinutes } from './mean-minutes.ts'
export { minutesVariance } from './minutes-variance.ts'
export { type Alternative, type NeededActions, type NeededThing, neededActions } from './needed-actions.ts'
export { type BestOrder, bestOrder, type OrderEffort, type OrderProgress } from './order/best-order.ts'
export { chanceDoneBy } from './order/chance-done-by.ts'
export { type ActionTimes, type CriticalPath, criticalPath, type TimedAction } from './order/critical-path.ts'
export type { OrderProblem } from './order/order-problem.ts'
export type { OrderRefusal } from './order/order-refusal.ts'
export type { Plan, PlanBand, PlanLine, PlanWait } from './plan.ts'
export { type PlanOptions, planOf } from './plan-of.ts'
export type { PlanRefusal } from './plan-refusal.ts'
export type { RecordedFact } from './recorded-fact.ts'
export { recordedState } from './recorded-state.ts'
export type { RuleId } from './rule-id.ts'
export type { Shopping } from './shopping.ts'
export { shoppingOf } from './shopping-of.ts'
export type { JointIs, PartIs, State, SupportIs } from './state.ts'
export { stationOf } from './station-of.ts'
export type { ThreePoint } from './three-point.ts'
export { type MissingTool, toolsAgainstKit } from './tools-against-kit.ts'
export { type TotalMinutes, totalMinutes } from './total-minutes.ts'
export { usualMinutes } from './usual-minutes.ts'
export type { Work } from './work.ts'
