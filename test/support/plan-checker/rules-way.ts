import { atRideHeight, carriesSetter, grounded, onVehicle, pieceOf, secured, tieOf, whereOf } from './look.ts'
import type { Moment, State } from './state.ts'
import type { Tie, Vehicle } from './vehicle.ts'

type Found = readonly string[]
const onTheSame = (vehicle: Vehicle, tie: Tie, name: string, of: 'parts' | 'ties') =>
  [...vehicle[of].values()].find(
    (one) =>
      one.name === name &&
      (one.axle === null || one.axle === tie.axle) &&
      (one.side === null || tie.side === null || one.side === tie.side),
  )

/** What bars the way to a joint. `set`: on its wheels or at ride height, where only the steering can be in the way. */
function barred(vehicle: Vehicle, state: State, tie: Tie, how: 'undo' | 'close' | 'set'): Found {
  const found: string[] = []
  const onBench = tie.ends.every((end) => !onVehicle(state, end))
  for (const access of tie.file.access ?? []) {
    if (access.partOff && how !== 'set') {
      const part = onTheSame(vehicle, tie, access.partOff, 'parts')
      if (part && state.parts[part.id]!.is === 'fitted') found.push(`${part.id} is in the way of ${tie.id}`)
    }
    if (access.jointOpen && how !== 'set') {
      const other = onTheSame(vehicle, tie, access.jointOpen, 'ties')
      const is = other && state.ties[other.id]!.is
      if (other && is !== 'open' && !(how === 'close' && is === 'started'))
        found.push(`${other.id} is in the way of ${tie.id}`)
    }
    if (onBench) continue
    if (access.steering) {
      const isMirrored = tie.side === 'right' && access.steering !== 'straight'
      const mirrored = access.steering === 'left lock' ? 'right lock' : 'left lock'
      const wanted = isMirrored ? mirrored : access.steering
      if (state.steering !== wanted) found.push(`${tie.id} is reached only at ${wanted}`)
    }
    if (how === 'set') continue
    const arm = state.arms[whereOf(tie)] ?? 'free'
    if (access.station === 'hanging' && (!secured(state, tie.axle) || arm === 'jack' || arm === 'ride'))
      found.push(`${tie.id} is reached only with the wheel hanging`)
    if (access.station === 'under the arm' && arm !== 'jack')
      found.push(`${tie.id} needs a jack under the arm`)
    if (access.arm === 'lowered' && (arm === 'jack' || arm === 'ride'))
      found.push(`${tie.id} needs its arm down`)
    if (access.arm === 'raised' && arm !== 'jack' && arm !== 'ride') found.push(`${tie.id} needs its arm up`)
  }
  return found
}

/** State: a joint is undone and closed only where it can be reached, lifted where the corner hangs, or on the bench. */
export function withinReach({ vehicle, before, action }: Moment): Found {
  const tie = tieOf(vehicle, action)
  if (!tie) return []
  const onBench = tie.ends.every((end) => !onVehicle(before, end))
  const inCabin = tie.ends.some((end) => vehicle.parts.get(end)!.kind === 'steering shaft')
  const isSmall = ['clip', 'plug', 'hose bracket'].includes(tie.kind)
  const isLifted = onBench || inCabin || isSmall || secured(before, tie.axle)
  switch (action.verb) {
    case 'free':
    case 'open':
      return [
        ...barred(vehicle, before, tie, 'undo'),
        ...(isLifted ? [] : [`${tie.id} is undone with nothing carrying the axle`]),
      ]
    case 'start':
    case 'run up':
    case 'connect':
      return [
        ...barred(vehicle, before, tie, 'close'),
        ...(isLifted ? [] : [`${tie.id} is closed with nothing carrying the axle`]),
      ]
    case 'final': {
      if (tie.kind === 'wheel nuts' || tie.kind === 'axle nut') return []
      if (!grounded(before, tie.axle)) return barred(vehicle, before, tie, 'close')
      const wheel = tie.file.access?.some(({ partOff }) => partOff === 'wheel')
      const isShut = wheel && !carriesSetter(vehicle, tie.id) && atRideHeight(tie)
      return [
        ...barred(vehicle, before, tie, 'set'),
        ...(isShut ? [`${tie.id} is not reached with the wheel on`] : []),
      ]
    }
    default:
      return []
  }
}

/** State: a part comes off when every joint to parts that stay is open, and goes back only when it is carried. */
export function freeBeforeOff({ vehicle, before, action }: Moment): Found {
  const part = vehicle.parts.get(action.part ?? '')
  if (!part) return []
  if (action.verb === 'take off') {
    const piece = pieceOf(vehicle, before, part.id)
    const isCarried = part.axle === null || secured(before, part.axle)
    const holding = [...piece]
      .flatMap((one) => (one === 'body' ? [] : vehicle.tiesOf(one)))
      .filter(({ id, ends }) => ends.includes('body') && before.ties[id]!.is !== 'open')
      .map(({ id }) => id)
    const seats = vehicle
      .tiesOf(part.id)
      .filter(({ kind, id }) => kind === 'seat' && before.ties[id]!.is !== 'open')
      .filter(({ ends }) => !ends.every((end) => piece.has(end)))
    return [
      ...seats.flatMap((tie) =>
        part.kind === 'spring'
          ? barred(vehicle, before, tie, 'undo')
          : [`${tie.id}: a spring stands on ${part.id}`],
      ),
      ...(piece.has('body') ? [`${part.id} is still held by ${holding[0]}`] : []),
      ...(isCarried ? [] : [`${part.id} comes off with nothing carrying the axle`]),
    ]
  }
  if (action.verb === 'hang') {
    const rigid = vehicle
      .tiesOf(part.id)
      .filter(({ id }) => before.ties[id]!.is !== 'open')
      .filter(({ ends }) => !ends.some((end) => ['hose', 'lead'].includes(vehicle.parts.get(end)!.kind)))
    return rigid.map(({ id }) => `${part.id} is hung while ${id} holds it`)
  }
  if (action.verb === 'fit' && 'stores' in part.file && part.file.stores === 'torsion bar') {
    const arms = vehicle
      .tiesOf(part.id)
      .filter(({ kind }) => kind === 'spline')
      .flatMap(({ ends }) => ends)
      .filter((end) => !onVehicle(before, end) && end !== part.id)
    if (arms.length > 0) return [`${part.id} is fitted before ${arms[0]}, which it goes into`]
  }
  if (action.verb === 'fit' && part.axle && !secured(before, part.axle))
    return [`${part.id} is fitted with nothing carrying the axle`]
  return []
}

/** State: stands after the jack, arms locked after lifting, jack and compressor where there is something to hold. */
export function supportInTurn({ vehicle, before, action }: Moment): Found {
  const axles = action.axle ? [action.axle] : vehicle.axles
  const on = (wanted: readonly string[]) =>
    axles
      .filter((axle) => !wanted.includes(before.carried[axle]!))
      .map((axle) => `${action.verb} with the ${axle} axle on ${before.carried[axle]}`)
  const store = vehicle.stores.find(({ id }) => id === action.hold)
  const arm = before.arms[whereOf(store ?? action)] ?? 'free'
  const armIs = (wanted: readonly string[]) =>
    wanted.includes(arm) ? [] : [`${action.verb} with the arm ${arm}`]
  const energyIs = (wanted: readonly string[]) =>
    store && wanted.includes(before.energy[store.id]!)
      ? []
      : [`${action.verb}: ${action.hold} is ${before.energy[action.hold ?? '']}`]
  switch (action.verb) {
    case 'jack up':
    case 'lift':
    case 'drive onto ramps':
    case 'record heights':
      return on(['wheels', ...(action.verb === 'record heights' ? ['ramps'] : [])])
    case 'stands':
      return on(['jack'])
    case 'see loaded':
      return on(['stands'])
    case 'lock arms':
      return on(['lift'])
    case 'lower':
      return on(['seen loaded', 'locked', 'stands', 'lift', 'jack'])
    case 'drive off ramps':
      return on(['ramps'])
    case 'roll and settle':
      return on(['wheels'])
    case 'road test':
    case 'test drive':
    case 'hand over':
      return on(['wheels'])
    case 'read angles':
    case 'set toe':
    case 'set camber and caster':
    case 'see clearance':
      return on(['wheels', 'ramps'])
    case 'jack under arm':
      return [...armIs(['free']), ...energyIs(['set'])]
    case 'let down with the jack':
      return armIs(['jack'])
    case 'raise the arm':
      return [
        ...armIs(['down']),
        ...energyIs(['down']),
        ...(store && !onVehicle(before, store.id) ? [`${store.id} is not between its seats`] : []),
      ]
    case 'raise to ride height':
      return armIs(['free', 'down'])
    case 'jack away':
      return armIs(['jack', 'ride'])
    case 'compress':
      return energyIs(['set', 'down'])
    case 'release compressor':
      return energyIs(['compressor'])
    case 'wind':
    case 'let air in':
      return energyIs(['down'])
    case 'unwind':
    case 'deflate':
      return [
        ...energyIs(['set']),
        ...(store && secured(before, store.axle) ? [] : ['nothing carries the body']),
      ]
    default:
      return []
  }
}

/** State: what was put back is held before anything else of its corner is undone. */
export function heldBeforeMore({ vehicle, before, action }: Moment): Found {
  if (!['open', 'free', 'take off', 'hang'].includes(action.verb)) return []
  const where = whereOf(action)
  return [...vehicle.parts.values()]
    .filter((part) => part.id !== action.part)
    .filter((part) => before.parts[part.id]!.loose && before.parts[part.id]!.is === 'fitted')
    .filter(
      (part) =>
        whereOf(part) === where ||
        ((part.side === null || action.side === null) && (part.axle === action.axle || part.axle === null)),
    )
    .map(({ id }) => `${id} was put back and lies loose while ${action.joint ?? action.part} is undone`)
}
