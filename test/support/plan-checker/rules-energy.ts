import {
  firm,
  grounded,
  holds,
  locates,
  onVehicle,
  pieceOf,
  secured,
  storeOf,
  tieOf,
  whereOf,
} from './look.ts'
import type { Moment, State } from './state.ts'
import type { Store, Vehicle } from './vehicle.ts'

type Found = readonly string[]

/** A complete retaining path: one whole list, or the stand-in with what it needs. */
function pathOf(state: State, store: Store): boolean {
  switch (state.energy[store.id]) {
    case 'set':
      return store.lists.some((list) => list.every((id) => holds(state, id)))
    case 'jack':
      return state.arms[whereOf(store)] === 'jack' && store.pivots.every((id) => holds(state, id))
    default:
      return true
  }
}

/**
 * I3: A joint of the retaining set of stored energy opens only with a stand-in in place or the energy let down; while
 * any is open, one complete retaining path remains. The droop stop belongs to the set. A jack as stand-in: saddle
 * located, coil tethered to the frame, nobody in line, body on stands.
 */
export function energyIsHeld({ vehicle, before, after, action }: Moment): Found {
  const found: string[] = []
  const tie = tieOf(vehicle, action)
  const loosens = action.verb === 'open' || action.verb === 'free'
  for (const store of vehicle.stores) {
    if (tie && loosens && store.all.includes(tie.id)) {
      if (before.energy[store.id] === 'set')
        found.push(`${tie.id} ${action.verb} while it keeps ${store.id} in`)
      if (before.energy[store.id] === 'jack' && store.pivots.includes(tie.id))
        found.push(`${tie.id} is the pivot of the arm that the jack carries`)
    }
    if (pathOf(before, store) && !pathOf(after, store))
      found.push(`nothing holds ${store.id} after ${action.verb}`)
  }
  if (action.verb === 'jack under arm' || action.verb === 'raise the arm') {
    const store = storeOf(vehicle, action)
    if (action.how['saddle'] !== 'located') found.push('the saddle is not located')
    if (action.how['coil'] !== 'tethered') found.push('the coil is not tethered to the frame')
    if (!/nobody/.test(action.how['hands'] ?? '')) found.push('somebody stands in line')
    if (store && !secured(before, store.axle)) found.push('the body is not on stands')
    if (store) for (const id of store.pivots) if (!firm(before, id)) found.push(`the arm has no pivot: ${id}`)
  }
  if (action.verb === 'compress') {
    const store = storeOf(vehicle, action)
    if (store && onVehicle(before, store.id) && !secured(before, store.axle))
      found.push('a compressor on a vehicle that nothing carries')
  }
  if (action.verb === 'axle on stands') {
    const { axle } = action
    if (!axle || !secured(before, axle) || action.how['body'] !== 'on its own stands')
      found.push('the axle is set on stands while the body is not on its own')
  }
  if ((action.verb === 'take off' || action.verb === 'fit') && action.part)
    for (const store of vehicle.stores)
      if (store.id === action.part && before.energy[store.id] !== 'down')
        if (before.energy[store.id] !== 'compressor' && !isCaptured(vehicle, before, store))
          found.push(`${store.id}: ${action.verb} with energy left in it`)
  return found
}

/** A spring that comes off inside its strut is held by the strut. */
function isCaptured(vehicle: Vehicle, state: State, store: Store): boolean {
  const { file } = vehicle.parts.get(store.id)!
  if (file.kind !== 'spring') return true
  const isStruts = file.between.length === store.arm.length
  return isStruts && vehicle.tiesOf(store.id).every(({ id }) => state.ties[id]!.is !== 'open')
}

/**
 * I4: Energy goes back in (compressor released, torsion bar wound, air let in) and a stand-in leaves only when the
 * retaining set is at least run up with full engagement, its tapers seated and their nuts on.
 */
export function setBeforeEnergy({ vehicle, before, after, action }: Moment): Found {
  const returned = vehicle.stores.filter(
    ({ id }) => before.energy[id] !== 'set' && after.energy[id] === 'set',
  )
  const found = returned.flatMap((store) => [
    ...store.all.filter((id) => !firm(before, id)).map((id) => `${store.id} loads ${id}, not run up`),
    ...(onVehicle(before, store.id) || isCaptured(vehicle, before, store)
      ? []
      : [`${store.id} is not in its seats`]),
  ])
  const loads =
    action.verb === 'lower' || action.verb === 'road test' || action.verb === 'roll and settle'
      ? vehicle.stores.filter(({ axle }) => action.axle === null || axle === action.axle)
      : []
  return [
    ...found,
    ...loads
      .filter(({ id }) => before.energy[id] !== 'set')
      .map(({ id }) => `${action.verb}: ${id} is ${before.energy[id]}`),
    ...loads.flatMap((store) =>
      store.all.filter((id) => !firm(before, id)).map((id) => `${action.verb} loads ${id}, not run up`),
    ),
  ]
}

/** I10: Anti-roll links are off (or both sides equally loaded) before one side's arm moves far. */
export function linkBeforeArm({ vehicle, before, action }: Moment): Found {
  if (action.verb !== 'let down with the jack' && action.verb !== 'raise the arm') return []
  const store = storeOf(vehicle, action)
  if (!store || isBarFree(vehicle, before, store)) return []
  return vehicle.axles.includes(store.axle)
    ? linked(vehicle, before, store.arm, whereOf(store)).map((id) => `${id} still ties the arm to the bar`)
    : []
}

/** Off its link on the other side a bar turns freely in its bushes, whatever this arm does. */
const isBarFree = (vehicle: Vehicle, state: State, { axle, side }: { axle: string; side: string | null }) => {
  const across = [...vehicle.parts.values()].filter(
    (part) => part.kind === 'drop link' && part.axle === axle && part.side !== side,
  )
  return (
    side !== null &&
    across.length > 0 &&
    across.every(({ id }) => vehicle.tiesOf(id).some((tie) => state.ties[tie.id]!.is === 'open'))
  )
}

/** The anti-roll links of a corner that tie an arm that moves to the bar. */
function linked(vehicle: Vehicle, state: State, arms: readonly string[], where: string): readonly string[] {
  const moving = new Set(arms)
  for (const one of moving)
    for (const tie of vehicle.tiesOf(one))
      if (state.ties[tie.id]!.is !== 'open' && locates(vehicle, tie))
        for (const end of tie.ends)
          if (!['body', 'sub-frame'].includes(vehicle.parts.get(end)!.kind)) moving.add(end)
  return [...vehicle.parts.values()]
    .filter((part) => part.kind === 'drop link' && whereOf(part) === where)
    .filter((part) => vehicle.tiesOf(part.id).every(({ id }) => state.ties[id]!.is !== 'open'))
    .filter((part) => vehicle.tiesOf(part.id).some(({ ends }) => ends.some((end) => moving.has(end))))
    .map(({ id }) => id)
}

/** I11: Torsion bar unwound with turns and thread recorded before its arm's joints open: its
 * pivots and the bar's own; what is further out opens on a jack too, where the corner model names it. */
export function barUnwoundFirst({ vehicle, before, action }: Moment): Found {
  const found: string[] = []
  const store = storeOf(vehicle, action)
  if (action.verb === 'unwind' && store) {
    if (!/count/.test(action.how['turns'] ?? '')) found.push(`${store.id}: turns not counted`)
    if (!/measur|record/.test(action.how['thread'] ?? '')) found.push(`${store.id}: thread not measured`)
    for (const { id, kind } of vehicle.tiesOf(store.id))
      if (kind === 'anchor bolt' && before.ties[id]!.mark === 'none') found.push(`${id}: nothing recorded`)
  }
  const tie = tieOf(vehicle, action)
  if (tie && action.verb === 'open')
    for (const bar of vehicle.stores) {
      if (bar.stores !== 'torsion bar' || before.energy[bar.id] === 'down') continue
      const isArms = bar.pivots.includes(tie.id)
      if (isArms || tie.ends.includes(bar.id)) found.push(`${tie.id} opens before ${bar.id} is unwound`)
    }
  return found
}

/** I12: Air spring: levelling off, deflated and disconnected. */
export function airLetOut({ vehicle, before, action }: Moment): Found {
  const found: string[] = []
  const tie = tieOf(vehicle, action)
  const air = vehicle.stores.filter(({ stores }) => stores === 'air')
  if (action.verb === 'deflate') {
    if (before.levelling) found.push('deflated with the levelling on')
    if (!action.records.some((one) => /disconnect/.test(one)) && !/disconnect/.test(action.words))
      found.push('deflated, but not disconnected')
  }
  if (vehicle.airSprung && ['jack up', 'lift'].includes(action.verb) && before.levelling)
    found.push('lifted with the levelling on')
  if (tie && (action.verb === 'open' || action.verb === 'free'))
    for (const store of air)
      if (store.all.includes(tie.id) && before.energy[store.id] !== 'down')
        found.push(`${tie.id} opens before ${store.id} is let out`)
  if (action.verb === 'levelling on')
    for (const store of air) if (before.energy[store.id] !== 'set') found.push(`${store.id} is still empty`)
  return found
}

/**
 * I13: Strut top nut only with the spring captured. Heat only on what goes to scrap, never near gas damper, hose,
 * bonded bush, tank or undercoat; no hammer shock on aluminium bosses or on a joint that will be used again.
 */
export function topNutAndHeat({ vehicle, goal, before, action }: Moment): Found {
  const tie = tieOf(vehicle, action)
  if (!tie) return []
  const found: string[] = []
  if (tie.kind === 'strut top nut' && ['open', 'start', 'run up'].includes(action.verb)) {
    const opens = action.verb === 'open'
    const parts = tie.ends.flatMap((end) => vehicle.tiesOf(end).flatMap(({ ends }) => ends))
    for (const store of vehicle.stores)
      if (
        parts.includes(store.id) &&
        ![...(opens ? ['down'] : []), 'compressor'].includes(before.energy[store.id]!)
      )
        found.push(`${tie.id}: ${action.verb} with ${store.id} not captured`)
  }
  const aid = Object.values(action.how).join(' ')
  const isScrap = tie.ends.some((end) => goal.replace.includes(end))
  if (/heat/.test(aid)) {
    if (!isScrap) found.push(`heat on ${tie.id}, which is used again`)
    for (const part of tie.ends.map((end) => vehicle.parts.get(end)!))
      if (part.kind === 'hose' || ('stores' in part.file && part.file.stores === 'gas'))
        found.push(`heat beside ${part.id}`)
    if (tie.file.bush?.bonded) found.push(`heat beside the bonded bush of ${tie.id}`)
  }
  if (/shock|hammer/.test(aid) && !isScrap) found.push(`hammer shock on ${tie.id}, which is used again`)
  return found
}

/**
 * I7b: At ride height with the spring in, a jack under the arm carries nearly the whole corner and can lift the body
 * off its stand: the stand stays fitted and its gap watched, nobody under, jack load estimated; anti-roll link off, or
 * both sides raised.
 */
export function jackAtRideHeight({ vehicle, before, after, action }: Moment): Found {
  const found: string[] = []
  if (action.verb === 'raise to ride height') {
    if (!action.axle || !secured(before, action.axle))
      found.push('raised without stand or lift below the frame')
    if (action.how['gap'] !== 'watched') found.push('nobody watches the gap at the stand')
    if (action.how['load'] !== 'estimated') found.push('the load on the jack is not estimated')
    if (action.how['under'] !== 'nobody') found.push('somebody may be under it')
    for (const store of vehicle.stores)
      if (store.axle === action.axle && (!store.side || store.side === action.side)) {
        if (before.energy[store.id] !== 'set') found.push(`${store.id} is not in`)
        for (const id of store.all) if (!firm(before, id)) found.push(`${id} is not run up`)
      }
  }
  const raised = Object.entries(after.arms).filter(([, arm]) => arm === 'ride')
  if (raised.length === 0) return found
  if (action.place === 'under') found.push('hands under while a jack carries the corner')
  const isNew = (id: string) => !raisedLinks(vehicle, before).includes(id)
  for (const id of raisedLinks(vehicle, after)) if (isNew(id)) found.push(`${id} twists the bar`)
  for (const [where] of raised)
    if (grounded(after, where.split(' ')[0]!)) found.push(`the ${where} arm is raised on the ground`)
  return found
}

/** Links still on at a corner that is raised while the other one hangs. */
function raisedLinks(vehicle: Vehicle, state: State): readonly string[] {
  return Object.entries(state.arms)
    .filter(([, arm]) => arm === 'ride')
    .flatMap(([where]) => {
      const [axle, side] = where.split(' ')
      const other = `${axle} ${side === 'left' ? 'right' : 'left'}`
      if (state.arms[other] === 'ride') return []
      return [...vehicle.parts.values()]
        .filter((part) => part.kind === 'drop link' && whereOf(part) === where && onVehicle(state, part.id))
        .filter((part) => pieceOf(vehicle, state, part.id).size > 1)
        .filter((part) => vehicle.tiesOf(part.id).every(({ id }) => holds(state, id)))
        .map(({ id }) => id)
    })
}
