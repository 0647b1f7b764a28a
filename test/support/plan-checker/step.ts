import type { Action, Goal } from '../../../src/plan/index.ts'
import { hasPin, hasTaper, isSteering, locates, tieOf } from './look.ts'
import type { Carried, State, TieIs } from './state.ts'
import { energies } from './step-energy.ts'
import { fitted, takenOff } from './step-parts.ts'
import type { Vehicle } from './vehicle.ts'

/** The state after an action, whether it was allowed or not. */
export function step(vehicle: Vehicle, goal: Goal, state: State, action: Action): State {
  return takenOut(vehicle, goal, effect(vehicle, state, action))
}

/** An old part is out once it is off and open to all that is not renewed with it. */
function takenOut(vehicle: Vehicle, goal: Goal, state: State): State {
  let parts = state.parts
  for (const id of goal.replace) {
    const now = parts[id]
    if (!now || now.out || now.is !== 'off') continue
    const free = vehicle
      .tiesOf(id)
      .every(
        (tie) => state.ties[tie.id]!.is === 'open' || tie.ends.every((end) => goal.replace.includes(end)),
      )
    if (free) parts = { ...parts, [id]: { ...now, out: true } }
  }
  return parts === state.parts ? state : { ...state, parts }
}

function effect(vehicle: Vehicle, state: State, action: Action): State {
  const { verb } = action
  const tie = (change: Partial<TieIs>): State => {
    const id = action.joint ?? ''
    const now = state.ties[id]
    if (!now) return state
    const earlier = now.earlier && (change.is === undefined || change.is === 'checked')
    const changed = { ...now, touched: true, earlier, ...change }
    return { ...state, ties: { ...state.ties, [id]: changed } }
  }
  const isNew = action.effects[`fastener ${action.joint}`] === 'new'
  const axles = action.axle ? [action.axle] : vehicle.axles
  const carried = (value: Carried, more: Partial<State> = {}, on = axles): State => ({
    ...state,
    ...more,
    carried: { ...state.carried, ...Object.fromEntries(on.map((axle) => [axle, value])) },
  })
  const unsettled = (on = axles) => ({
    settled: { ...state.settled, ...Object.fromEntries(on.map((axle) => [axle, false])) },
  })
  switch (verb) {
    case 'mark':
      return tie({
        mark: action.how['on'] === 'body side too' ? 'body side too' : 'joint',
        touched: state.ties[action.joint ?? '']?.touched ?? false,
      })
    case 'crack': {
      const one = tieOf(vehicle, action)
      if (!one) return state
      return tie({
        is: hasTaper(one) ? 'retained' : 'cracked',
        ...(hasPin(one) ? { pin: 'out' as const } : {}),
      })
    }
    case 'free':
      return tie({ parted: true })
    case 'open':
      return opened(vehicle, tie({ is: 'open', fresh: false }), action)
    case 'start':
      return joined(vehicle, tie({ is: 'started', ...(isNew ? { fresh: true } : {}) }), action)
    case 'run up':
    case 'connect':
      return closed(
        vehicle,
        tie({
          is: verb === 'connect' ? 'final' : 'run up',
          parted: false,
          ...(isNew ? { fresh: true } : {}),
        }),
        action,
      )
    case 'final':
      return { ...tie({ is: 'final' }), angles: reopened(vehicle, state, action) }
    case 'pin':
      return tie({ pin: 'new' })
    case 'second check':
      return tie({ is: 'checked' })
    case 'take off':
    case 'hang':
      return takenOff(vehicle, state, action)
    case 'fit':
      return fitted(vehicle, state, action)
    case 'compare': {
      const now = state.parts[action.part ?? '']
      if (!now) return state
      const compared = action.how['when'] === 'before lifting' ? 'before' : 'beside'
      return { ...state, parts: { ...state.parts, [action.part!]: { ...now, compared } } }
    }
    case 'chock':
      return { ...state, chocked: true }
    case 'jack up':
      return carried('jack', { ...unsettled(), everLifted: true, clearance: false })
    case 'stands':
      return carried('stands')
    case 'see loaded':
      return carried('seen loaded')
    case 'lift':
      return carried('lift', { ...unsettled(), everLifted: true, clearance: false }, vehicle.axles)
    case 'lock arms':
      return carried('locked', {}, vehicle.axles)
    case 'tail support':
      return { ...state, tail: true }
    case 'lower':
      return carried('wheels', { ...unsettled(), tail: false, clearance: false })
    case 'drive onto ramps':
      return carried('ramps', { chocked: true, level: action.how['wheels'] === 'level' }, vehicle.axles)
    case 'drive off ramps':
      return carried('wheels', { chocked: false }, vehicle.axles)
    case 'roll and settle':
      return {
        ...state,
        chocked: false,
        settled: Object.fromEntries(vehicle.axles.map((axle) => [axle, true])),
      }
    case 'steer': {
      const to = /left lock|right lock|straight/.exec(action.words)?.[0] ?? 'straight'
      return { ...state, steering: to as State['steering'], wheelHeld: false }
    }
    case 'hold steering wheel':
      return { ...state, wheelHeld: true }
    case 'make airbag safe':
      return { ...state, airbagSafe: action.how['method'] === 'the maker’s' }
    case 'levelling off':
      return { ...state, levelling: false }
    case 'levelling on':
      return { ...state, levelling: true }
    case 'bleed': {
      const lines = Object.entries(state.lines).map(([id, line]) => [id, line === 'open' ? line : 'bled'])
      return { ...state, lines: Object.fromEntries(lines), pedal: 'firm' }
    }
    case 'pump pedal':
      return { ...state, pedal: 'firm' }
    case 'look at lamp': {
      const lamps = Object.keys(state.lamps).map((lead) => {
        const isBack = vehicle.tiesOf(lead).every(({ id }) => state.ties[id]!.is !== 'open')
        return [lead, isBack ? 'seen' : state.lamps[lead]!]
      })
      return { ...state, lamps: Object.fromEntries(lamps) }
    }
    case 'check level sensor':
      return { ...state, rod: 'fine' }
    case 'set pressures':
      return { ...state, pressures: true }
    case 'record heights':
      return { ...state, heights: 'recorded' }
    case 'read angles': {
      const to = action.how['kind'] === 'proving' ? 'proven' : 'provisional'
      return { ...state, angles: { ...state.angles, [action.axle ?? '']: to } }
    }
    case 'set camber and caster':
    case 'set toe':
      return setBy(vehicle, state, action)
    case 'see clearance':
      return { ...state, clearance: true, wheelHeld: false }
    case 'appoint re-tightening':
      return { ...state, card: true }
    case 'look whether it may be driven':
      return { ...state, fitToDrive: true }
    case 'road test':
      return { ...state, driven: true }
    case 'hand over':
      return { ...state, handedOver: true }
    default:
      return energies(vehicle, state, action)
  }
}

function opened(vehicle: Vehicle, state: State, action: Action): State {
  const tie = tieOf(vehicle, action)
  if (!tie) return state
  const kinds = tie.ends.map((end) => vehicle.parts.get(end)!.kind)
  const lead = tie.ends.find((end) => vehicle.parts.get(end)!.kind === 'lead')
  const isUnplugged = lead !== undefined && (tie.kind === 'plug' || tie.kind === 'bolt')
  const moved = vehicle.setters.filter(({ ties }) => ties.includes(tie.id))
  const isSteer = tie.ends.some((end) => isSteering(vehicle, vehicle.parts.get(end)!))
  const isAside =
    kinds.some((kind) => ['boot', 'lead', 'hose', 'shield'].includes(kind)) || tie.kind === 'plug'
  const isAngle = moved.length > 0 || locates(vehicle, tie) || (isSteer && !isAside)
  return {
    ...state,
    clearance: false,
    ...(tie.kind === 'hydraulic union'
      ? { lines: { ...state.lines, [tie.id]: 'open' as const }, pedal: 'soft' as const }
      : {}),
    ...(isUnplugged ? { lamps: { ...state.lamps, [lead]: 'due' as const } } : {}),
    ...(kinds.includes('height-sensor rod') ? { rod: 'due' as const } : {}),
    setters: {
      ...state.setters,
      ...Object.fromEntries(moved.map(({ id }) => [id, 'disturbed' as const])),
    },
    // What was set before is set anew, in its order.
    ...(isAngle ? { toeSet: { ...state.toeSet, [tie.axle]: false } } : {}),
    angles: isAngle ? { ...state.angles, [tie.axle]: 'due' as const } : state.angles,
    ties: isAngle ? doneBy(vehicle, state, tie.axle) : state.ties,
  }
}

/** What is final on an axle while another joint of it comes open has had its last move with the work before. */
function doneBy(vehicle: Vehicle, { ties }: State, axle: string): State['ties'] {
  const done = [...vehicle.ties.values()].filter(
    ({ id, axle: its }) => its === axle && (ties[id]!.is === 'final' || ties[id]!.is === 'checked'),
  )
  if (done.length === 0) return ties
  return { ...ties, ...Object.fromEntries(done.map(({ id }) => [id, { ...ties[id]!, earlier: true }])) }
}

/** What is joined lies loose no longer. */
function joined(vehicle: Vehicle, state: State, action: Action): State {
  const held = tieOf(vehicle, action)?.ends.filter((end) => state.parts[end]!.loose) ?? []
  if (held.length === 0) return state
  const parts = Object.fromEntries(held.map((end) => [end, { ...state.parts[end]!, loose: false }]))
  return { ...state, parts: { ...state.parts, ...parts } }
}

function closed(vehicle: Vehicle, state: State, action: Action): State {
  const tie = tieOf(vehicle, action)
  if (!tie) return state
  const now = joined(vehicle, state, action)
  const back = vehicle.setters.filter(({ ties, slides }) => ties.includes(tie.id) && !slides)
  return {
    ...now,
    clearance: false,
    ...(tie.kind === 'hydraulic union' ? { lines: { ...state.lines, [tie.id]: 'to bleed' as const } } : {}),
    setters: { ...state.setters, ...Object.fromEntries(back.map(({ id }) => [id, 'set' as const])) },
  }
}

/** What is tightened for good after the proving reading makes it stale, where it moves an angle. */
function reopened(vehicle: Vehicle, state: State, action: Action): State['angles'] {
  const tie = tieOf(vehicle, action)
  if (!tie || state.angles[tie.axle] !== 'proven') return state.angles
  const moves = locates(vehicle, tie) || vehicle.setters.some(({ ties }) => ties.includes(tie.id))
  return moves ? { ...state.angles, [tie.axle]: 'due' } : state.angles
}

/** Setting moves what is nipped up; a lock nut that was closed is loosened for it. */
function setBy(vehicle: Vehicle, state: State, action: Action): State {
  const isToe = action.verb === 'set toe'
  const axle = action.axle ?? ''
  const own = vehicle.setters.filter(
    (one) =>
      one.axle === axle &&
      one.toe === isToe &&
      one.slides &&
      (isToe || one.ties.every((id) => state.ties[id]!.is === 'run up')),
  )
  const nipped = own
    .flatMap(({ ties }) => ties)
    .filter((id) => state.ties[id]!.is !== 'open' && state.ties[id]!.is !== 'started')
  const set = { ...state.ties }
  for (const id of nipped)
    set[id] = {
      ...set[id]!,
      is: 'run up',
      touched: true,
      fresh: set[id]!.fresh || action.effects[`fastener ${id}`] === 'new',
    }
  return {
    ...state,
    ties: set,
    setters: { ...state.setters, ...Object.fromEntries(own.map(({ id }) => [id, 'set' as const])) },
    angles: { ...state.angles, [axle]: 'provisional' },
    toeSet: { ...state.toeSet, [axle]: isToe },
    leanSet: { ...state.leanSet, ...(isToe ? {} : { [axle]: true }) },
  }
}
