import { carrierOf, cornersOf, locates, onVehicle, pieceOf, ridingOn, whereOf } from './look.ts'
import type { Moment } from './state.ts'
import type { Tie, Vehicle } from './vehicle.ts'

type Found = readonly string[]

/**
 * I6: Hose bracket and sensor lead are free before the knuckle can move further than they reach; a caliper that is off
 * hangs on a hook, never on its hose.
 */
export function flexibleBeforeKnuckle({ vehicle, before, after, action }: Moment): Found {
  const found: string[] = []
  if (action.verb === 'let down with the jack') {
    const store = vehicle.stores.find(({ id }) => id === action.hold)
    for (const { corner, carrier } of cornersWithCarrier(vehicle)) {
      if (!store || !corner.startsWith(whereOf(store))) continue
      const isLed = store.arm.some((arm) => pieceWithoutBody(vehicle, before, arm).has(carrier))
      if (isLed) found.push(...strained(vehicle, before, corner).map((id) => `${id} is pulled by the arm`))
    }
  }
  for (const { corner } of cornersWithCarrier(vehicle)) {
    const now = isLoose(vehicle, after, corner) ? strained(vehicle, after, corner) : []
    const was = isLoose(vehicle, before, corner) ? strained(vehicle, before, corner) : []
    for (const id of now)
      if (!was.includes(id)) found.push(`the ${corner} wheel carrier is loose and ${id} still ties it`)
  }
  if (action.verb === 'take off' && action.part) {
    const piece = pieceOf(vehicle, before, action.part)
    const calipers = [...piece].filter((id) => vehicle.parts.get(id)!.kind === 'caliper')
    for (const id of calipers) if (piece.has('body')) found.push(`${id} would hang on its hose`)
    const kind = vehicle.parts.get(action.part)?.kind
    if (kind === 'disc' || kind === 'brake carrier' || kind === 'knuckle')
      for (const part of vehicle.parts.values())
        if (part.kind === 'caliper' && whereOf(part) === whereOf(action) && !piece.has(part.id))
          if (before.parts[part.id]!.is === 'fitted') found.push(`${part.id} is not on a hook`)
  }
  return found
}

const memo = new WeakMap<Vehicle, readonly { corner: string; carrier: string }[]>()
function cornersWithCarrier(vehicle: Vehicle) {
  const known = memo.get(vehicle)
  if (known) return known
  const found = vehicle.axles
    .flatMap((axle) => [`${axle} left`, `${axle} right`])
    .flatMap((corner) => {
      const carrier = carrierOf(vehicle, corner)
      return carrier ? [{ corner, carrier: carrier.id }] : []
    })
  memo.set(vehicle, found)
  return found
}

function isLoose(vehicle: Vehicle, state: Moment['after'], corner: string): boolean {
  const loose = locatorsOf(vehicle, corner).filter(
    ({ id, ends }) =>
      (state.ties[id]!.is === 'open' || state.ties[id]!.parted) && ends.some((end) => onVehicle(state, end)),
  )
  const { carrier } = cornersWithCarrier(vehicle).find((one) => one.corner === corner)!
  const own = loose.filter(({ ends }) => ends.some((end) => end === carrier))
  if (!loose.some((tie) => onBeam(vehicle, tie))) return loose.length > 0
  // A beam moves far only once it is loose on both sides.
  const isKnuckles = own.some((tie) => !onBeam(vehicle, tie))
  return isKnuckles || new Set(loose.map(({ side }) => side)).size > 1 || loose.some(({ side }) => !side)
}

/** A joint of an axle beam, its links and its springs. */
function onBeam(vehicle: Vehicle, tie: Tie): boolean {
  const kinds = tie.ends.map((end) => vehicle.parts.get(end)!.kind)
  const hasBeam = [...vehicle.parts.values()].some(
    ({ kind, axle }) => kind === 'axle beam' && axle === tie.axle,
  )
  return hasBeam && !kinds.includes('knuckle') && !kinds.includes('kingpin')
}

const locators = new WeakMap<Vehicle, Map<string, readonly Tie[]>>()
function locatorsOf(vehicle: Vehicle, corner: string): readonly Tie[] {
  const known = locators.get(vehicle) ?? new Map<string, readonly Tie[]>()
  locators.set(vehicle, known)
  const found =
    known.get(corner) ??
    [...vehicle.ties.values()].filter(
      (tie) => locates(vehicle, tie) && cornersOf(vehicle, tie).includes(corner),
    )
  known.set(corner, found)
  return found
}

/** Hoses and leads of a corner that tie its wheel carrier to what stays, with nothing of them undone. */
function strained(vehicle: Vehicle, state: Moment['after'], corner: string): readonly string[] {
  const carrier = cornersWithCarrier(vehicle).find((one) => one.corner === corner)!.carrier
  if (!onVehicle(state, carrier)) return []
  const riding = ridingOn(vehicle, state, carrier, false)
  const moving = ridingOn(vehicle, state, carrier, true)
  return [...vehicle.parts.values()]
    .filter(({ kind }) => kind === 'hose' || kind === 'lead')
    .filter((part) => whereOf(part) === corner && onVehicle(state, part.id))
    .filter((part) => {
      const ties = vehicle.tiesOf(part.id)
      const held = ties.filter(({ id }) => state.ties[id]!.is !== 'open')
      const rides = held.some(({ ends }) => ends.some((end) => riding.has(end)))
      const stays = held.some(({ ends }) => !ends.some((end) => moving.has(end)))
      const slack = ties.some(
        ({ id, kind }) => state.ties[id]!.is === 'open' && (kind === 'hose bracket' || kind === 'clip'),
      )
      return rides && stays && !slack
    })
    .map(({ id }) => id)
}

function pieceWithoutBody(vehicle: Vehicle, state: Moment['after'], part: string): ReadonlySet<string> {
  const piece = new Set([part])
  for (const one of piece)
    for (const tie of vehicle.tiesOf(one)) {
      if (state.ties[tie.id]!.is === 'open' || !locates(vehicle, tie)) continue
      for (const end of tie.ends)
        if (!['body', 'sub-frame'].includes(vehicle.parts.get(end)!.kind)) piece.add(end)
    }
  return piece
}
