import type { Corner } from '../../../src/corner/index.ts'
import type { Action, Goal } from '../../../src/plan/index.ts'
import { goalReached } from './goal-reached.ts'
import {
  airLetOut,
  barUnwoundFirst,
  energyIsHeld,
  jackAtRideHeight,
  linkBeforeArm,
  setBeforeEnergy,
  topNutAndHeat,
} from './rules-energy.ts'
import { flexibleBeforeKnuckle } from './rules-flexible.ts'
import {
  comparedTwice,
  fromWhereItIs,
  markedBefore,
  newBeforeFinal,
  secondLook,
  shaftParted,
  slotThenPin,
  taperUnderItsNut,
} from './rules-joints.ts'
import {
  bearingBeforeWeight,
  carriedBeforeHands,
  pedalBeforeRolling,
  wheelNutsOnTheGround,
  wholeUnderWeight,
} from './rules-lifting.ts'
import {
  anglesInTurn,
  beforeTheRoad,
  cardForTheDriver,
  finalAtRideHeight,
  fitBeforeDriven,
  lampSeen,
} from './rules-ride.ts'
import { freeBeforeOff, heldBeforeMore, supportInTurn, withinReach } from './rules-way.ts'
import { type Moment, soundVehicle } from './state.ts'
import { step } from './step.ts'
import { vehicleOf } from './vehicle.ts'

/** What an order breaks, where. */
export interface Broken {
  readonly rule: string
  /** Place of the action in the order, from 0; its length for what is wrong at the end. */
  readonly at: number
  readonly sentence: string
}

const rules: readonly (readonly [string, (moment: Moment) => readonly string[]])[] = [
  ['I1', carriedBeforeHands],
  ['I2', wheelNutsOnTheGround],
  ['I3', energyIsHeld],
  ['I4', setBeforeEnergy],
  ['I5', taperUnderItsNut],
  ['I6', flexibleBeforeKnuckle],
  ['I7', finalAtRideHeight],
  ['I7b', jackAtRideHeight],
  ['I8', newBeforeFinal],
  ['I9', slotThenPin],
  ['I10', linkBeforeArm],
  ['I11', barUnwoundFirst],
  ['I12', airLetOut],
  ['I13', topNutAndHeat],
  ['I14', bearingBeforeWeight],
  ['I15', markedBefore],
  ['I16', comparedTwice],
  ['I17', anglesInTurn],
  ['I18', pedalBeforeRolling],
  ['I19', lampSeen],
  ['I20', beforeTheRoad],
  ['I21', secondLook],
  ['I22', cardForTheDriver],
  ['I23', shaftParted],
  ['I24', fitBeforeDriven],
  ['state', fromWhereItIs],
  ['state', withinReach],
  ['state', freeBeforeOff],
  ['state', heldBeforeMore],
  ['state', supportInTurn],
  ['state', wholeUnderWeight],
]

const known = new WeakMap<readonly Corner[], ReturnType<typeof vehicleOf>>()

/**
 * Does an order in the head by a state machine of its own, made from the corner models alone, and tells every rule of
 * the interlocks that it breaks. It shares no code with the planner.
 */
export function checkPlan(
  corners: readonly Corner[],
  goal: Goal,
  actions: readonly Action[],
): readonly Broken[] {
  const vehicle = known.get(corners) ?? vehicleOf(corners)
  known.set(corners, vehicle)
  const found: Broken[] = []
  const opened = new Set<string>()
  let state = soundVehicle(vehicle)
  actions.forEach((action, at) => {
    const after = step(vehicle, goal, state, action)
    const moment: Moment = { vehicle, goal, before: state, after, action }
    for (const [rule, holds] of rules)
      for (const sentence of holds(moment)) found.push({ rule, at, sentence })
    for (const [id, { is }] of Object.entries(after.ties)) if (is === 'open') opened.add(id)
    state = after
  })
  for (const sentence of goalReached(vehicle, goal, state, opened))
    found.push({ rule: 'goal', at: actions.length, sentence })
  return found
}
