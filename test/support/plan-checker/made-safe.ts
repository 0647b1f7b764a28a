import type { Corner } from '../../../src/corner/index.ts'
import type { Action, Goal } from '../../../src/plan/index.ts'
import { atRideHeight, grounded, isRed, isSteering, locates, secured } from './look.ts'
import { type State, soundVehicle } from './state.ts'
import { step } from './step.ts'
import { type Tie, type Vehicle, vehicleOf } from './vehicle.ts'

/**
 * What still makes a vehicle unsafe after an order that made it safe, by a list of its own; the order is done in the
 * head by the checker's state machine. What was capped, tied up and tagged is read off the order.
 * Source: common practice, no source.
 */
export function madeSafe(
  corners: readonly Corner[],
  goal: Goal,
  actions: readonly Action[],
  make: 'safe to stand' | 'safe to roll',
): readonly string[] {
  const vehicle = vehicleOf(corners)
  const end = actions.reduce((state, action) => step(vehicle, goal, state, action), soundVehicle(vehicle))
  const last = actions.at(-1)
  return [
    ...(last?.verb === 'tag' ? [] : [`it ends with ${last?.verb}, not with a tag`]),
    ...(make === 'safe to stand' ? standing(vehicle, end, actions) : rolling(vehicle, end)),
  ]
}

const isApart = (state: State, tie: Tie) => ['open', 'started'].includes(state.ties[tie.id]!.is)

function standing(vehicle: Vehicle, end: State, actions: readonly Action[]): readonly string[] {
  const did = (verb: string, id: string) =>
    actions.some((action) => action.verb === verb && (action.joint === id || action.part === id))
  const ties = [...vehicle.ties.values()]
  return [
    ...vehicle.axles
      .filter((axle) => !grounded(end, axle) && !secured(end, axle))
      .map((axle) => `the ${axle} axle is on ${end.carried[axle]}`),
    ...Object.entries(end.arms)
      .filter(([, is]) => is === 'jack' || is === 'ride')
      .map(([where]) => `a jack holds the ${where} arm`),
    ...Object.entries(end.energy)
      .filter(([, is]) => is === 'jack')
      .map(([id]) => `a jack holds the ${id}`),
    ...ties
      .filter((tie) => tie.kind === 'hydraulic union' && isApart(end, tie) && !did('cap line', tie.id))
      .map(({ id }) => `${id} drips`),
    ...[...vehicle.parts.values()]
      .filter(({ id, kind }) => kind === 'knuckle' && end.parts[id]!.is === 'fitted' && !did('tie up', id))
      .filter(({ id }) => vehicle.tiesOf(id).some((tie) => locates(vehicle, tie) && isApart(end, tie)))
      .map(({ id }) => `${id} hangs loose`),
  ]
}

function rolling(vehicle: Vehicle, end: State): readonly string[] {
  const ties = [...vehicle.ties.values()]
  const mustBeFinal = (tie: Tie) =>
    !atRideHeight(tie) &&
    !vehicle.setters.some(({ ties: of }) => of.includes(tie.id)) &&
    (isRed(tie) ||
      tie.ends.some((one) => ['caliper', 'brake carrier'].includes(vehicle.parts.get(one)!.kind)))
  const isSteer = (tie: Tie) => tie.ends.some((one) => isSteering(vehicle, vehicle.parts.get(one)!))
  return [
    ...ties
      .filter(({ id }) => !['closed', 'run up', 'final', 'checked'].includes(end.ties[id]!.is))
      .map(({ id }) => `${id} is ${end.ties[id]!.is}`),
    ...ties
      .filter((tie) => end.ties[tie.id]!.is === 'run up' && mustBeFinal(tie))
      .map((tie) => `${tie.id} is run up, and ${isSteer(tie) ? 'steers' : 'holds a wheel or its brake'}`),
    ...ties.filter(({ id }) => end.ties[id]!.parted).map(({ id }) => `the taper of ${id} is parted`),
    ...Object.entries(end.parts)
      .filter(([, { is }]) => is !== 'fitted')
      .map(([id, { is }]) => `${id} is ${is}`),
    ...Object.entries(end.energy)
      .filter(([, is]) => is !== 'set')
      .map(([id, is]) => `the ${id} is held by ${is}`),
    ...Object.entries(end.lines)
      .filter(([, is]) => is !== 'bled')
      .map(([id, is]) => `the line at ${id} is ${is}`),
    ...(end.pedal === 'firm' ? [] : ['the pedal is soft']),
    ...vehicle.axles
      .filter((axle) => !grounded(end, axle))
      .map((axle) => `${axle} is on ${end.carried[axle]}`),
  ]
}
