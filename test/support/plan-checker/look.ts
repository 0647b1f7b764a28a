import type { Action } from '../../../src/plan/index.ts'
import type { State } from './state.ts'
import type { Part, Store, Tie, Vehicle } from './vehicle.ts'

/** The corner, or the axle, that something stands on. */
export const whereOf = (one: { readonly axle: string | null; readonly side: string | null }): string =>
  [one.axle, one.side].filter(Boolean).join(' ')

/** The joint an action is on. */
export const tieOf = (vehicle: Vehicle, { joint }: Action): Tie | undefined =>
  joint === undefined ? undefined : vehicle.ties.get(joint)

/** The stored energy an action is on. */
export const storeOf = (vehicle: Vehicle, { hold }: Action): Store | undefined =>
  vehicle.stores.find(({ id }) => id === hold)

/** Both parts are on the vehicle. */
export const onVehicle = (state: State, part: string): boolean => state.parts[part]?.is !== 'off'

/** It holds: closed, loosened but still holding, or on its way back at least run up; its taper sits. */
export function holds(state: State, tie: string): boolean {
  const { is, parted } = state.ties[tie]!
  return is !== 'open' && is !== 'started' && !parted
}

/** It is run up with full engagement or tighter, its taper seated. */
export function firm(state: State, tie: string): boolean {
  const { is, parted } = state.ties[tie]!
  return (is === 'closed' || is === 'run up' || is === 'final' || is === 'checked') && !parted
}

/** It is tight for good, or was never touched. */
export const tight = (state: State, tie: string): boolean =>
  ['closed', 'final', 'checked'].includes(state.ties[tie]!.is)

/** The weight is on the wheels. */
export const grounded = (state: State, axle: string): boolean =>
  state.carried[axle] === 'wheels' || state.carried[axle] === 'ramps'

/** Stands seen loaded, or lift arms locked. */
export const secured = (state: State, axle: string): boolean =>
  state.carried[axle] === 'seen loaded' || state.carried[axle] === 'locked'

/** A seat holds nothing once its spring is slack, or captured in a compressor. */
function isLooseSeat(state: State, tie: Tie): boolean {
  if (tie.kind !== 'seat') return false
  return tie.ends.some((end) => ['down', 'compressor'].includes(state.energy[end] ?? 'set'))
}

/** A part with all that hangs on it by joints that are not open. */
export function pieceOf(vehicle: Vehicle, state: State, part: string): ReadonlySet<string> {
  const piece = new Set([part])
  for (const one of piece) {
    if (one === 'body') continue
    for (const tie of vehicle.tiesOf(one))
      if (state.ties[tie.id]!.is !== 'open' && !isLooseSeat(state, tie))
        for (const end of tie.ends) piece.add(end)
  }
  return piece
}

const steers = new Set(['rack', 'steering box', 'drop arm', 'idler arm', 'centre link', 'steering shaft'])

/** Rack, box, links and shaft, and the rods that go to them or from knuckle to knuckle. */
export function isSteering(vehicle: Vehicle, part: Part): boolean {
  if (steers.has(part.kind)) return true
  if (part.kind !== 'rod' && part.kind !== 'ball joint') return false
  const chain = new Set([part.id])
  const reached = new Set<string>()
  for (const one of chain)
    for (const { ends } of vehicle.tiesOf(one))
      for (const end of ends) {
        const { kind } = vehicle.parts.get(end)!
        if (kind === 'rod' || kind === 'ball joint') chain.add(end)
        else reached.add(end)
      }
  const kinds = [...reached].map((id) => vehicle.parts.get(id)!.kind)
  return kinds.some((kind) => steers.has(kind)) || kinds.filter((kind) => kind === 'knuckle').length > 1
}

const bearers = new Set([
  'body',
  'sub-frame',
  'arm',
  'rod',
  'strut',
  'top mount',
  'knuckle',
  'ball joint',
  'kingpin',
  'axle beam',
  'shackle',
])

/** A joint that says where the wheel carrier is: of arms, links, struts, leaf springs, not of steering or damper. */
export function locates(vehicle: Vehicle, tie: Tie): boolean {
  if (['clip', 'plug', 'hose bracket', 'seat'].includes(tie.kind)) return false
  return tie.ends.every((end) => {
    const part = vehicle.parts.get(end)!
    const isLeaf = 'stores' in part.file && part.file.stores === 'leaf'
    return (bearers.has(part.kind) || isLeaf) && !isSteering(vehicle, part)
  })
}

/** The corners whose wheel carrier a joint locates: with one beam, both. */
export function cornersOf(vehicle: Vehicle, tie: Tie): readonly string[] {
  const both = [`${tie.axle} left`, `${tie.axle} right`]
  if (tie.side === null) return both
  const own = [`${tie.axle} ${tie.side}`]
  const hasBeam = [...vehicle.parts.values()].some(
    ({ kind, axle }) => kind === 'axle beam' && axle === tie.axle,
  )
  const kinds = tie.ends.map((end) => vehicle.parts.get(end)!.kind)
  return hasBeam && !kinds.includes('knuckle') && !kinds.includes('kingpin') ? both : own
}

const riders = new Set([
  'hub',
  'bearing',
  'disc',
  'wheel',
  'brake carrier',
  'caliper',
  'brake pads',
  'backing plate',
  'shield',
])

/** The wheel carrier of a corner: knuckle, else what the brake is bolted to, else the beam. */
export function carrierOf(vehicle: Vehicle, corner: string): Part | undefined {
  const here = [...vehicle.parts.values()].filter(
    (part) => whereOf(part) === corner || (part.side === null && part.axle && corner.startsWith(part.axle)),
  )
  const knuckle = here.find(({ kind }) => kind === 'knuckle')
  if (knuckle) return knuckle
  const brake = here.find(({ kind }) => kind === 'brake carrier' || kind === 'backing plate')
  const bolted =
    brake &&
    vehicle
      .tiesOf(brake.id)
      .flatMap(({ ends }) => ends)
      .map((id) => vehicle.parts.get(id)!)
      .find(({ kind }) => kind === 'arm' || kind === 'axle beam')
  return bolted ?? here.find(({ kind }) => kind === 'axle beam')
}

/**
 * The wheel carrier and what rides on it.
 *
 * @param withArms also the arms and links that still hang on it and move with it
 */
export function ridingOn(
  vehicle: Vehicle,
  state: State,
  carrier: string,
  withArms: boolean,
): ReadonlySet<string> {
  const found = new Set([carrier])
  for (const one of found)
    for (const tie of vehicle.tiesOf(one)) {
      if (state.ties[tie.id]!.is === 'open') continue
      for (const end of tie.ends) {
        const { kind } = vehicle.parts.get(end)!
        const isArm = withArms && locates(vehicle, tie) && kind !== 'body' && kind !== 'sub-frame'
        if ((riders.has(kind) || isArm) && state.parts[end]!.is === 'fitted') found.add(end)
      }
    }
  return found
}

/** Whether it has a pin. */
export const hasPin = ({ kind, file }: Tie): boolean =>
  kind === 'tapered stud, castle nut' || file.pin !== undefined || file.reuse === 'new pin'

/** Whether its stud sits in a taper. */
export const hasTaper = ({ kind }: Tie): boolean =>
  kind === 'tapered stud, castle nut' || kind === 'tapered stud, lock nut'

const redKinds = new Set([
  'wheel nuts',
  'tapered stud, castle nut',
  'pinch bolt',
  'axle nut',
  'adjustable taper-roller hub',
  'hydraulic union',
  'U-bolts',
  'ball-joint bolts',
  'ball-joint rivets',
])
/** Loose, it drops a wheel, the steering or the brakes. */
export const isRed = ({ kind, file }: Tie): boolean => file.red ?? redKinds.has(kind)

/** It holds an adjuster that is moved with the bolt nipped up. */
export const carriesSetter = (vehicle: Vehicle, tie: string): boolean =>
  vehicle.setters.some((one) => one.slides && one.ties.includes(tie))

/** It twists rubber when it is tightened away from ride height. */
export const atRideHeight = ({ file }: Tie): boolean =>
  file.final === 'at ride height' || (file.bush?.bonded === true && file.final !== 'wheels straight')
