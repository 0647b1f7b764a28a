import {
  carriesSetter,
  cornersOf,
  firm,
  grounded,
  isSteering,
  locates,
  onVehicle,
  pieceOf,
  secured,
  tieOf,
  tight,
  whereOf,
} from './look.ts'
import type { Moment } from './state.ts'

type Found = readonly string[]
const rolls = ['roll and settle', 'drive onto ramps', 'drive off ramps', 'test drive', 'road test']

const wheelsOff = ({ vehicle, after }: Moment, axle: string) =>
  [...vehicle.parts.values()].filter(
    (part) => part.kind === 'wheel' && part.axle === axle && after.parts[part.id]!.is === 'off',
  )

/**
 * I1: Hands under the vehicle or wheel off: stands (seen loaded), locked lift arms, ramps, pit or blocks carry it;
 * never a jack alone; wheels that stay down are chocked; a heavy unit off a two-post lift shifts the balance: tail
 * support first.
 */
export function carriedBeforeHands(moment: Moment): Found {
  const { vehicle, before, after, action } = moment
  const found: string[] = []
  const axles = action.axle ? [action.axle] : vehicle.axles
  if (action.place === 'under')
    for (const axle of axles)
      if (!secured(before, axle) && before.carried[axle] !== 'ramps')
        found.push(`hands under while the ${axle} axle is on ${before.carried[axle]}`)
  for (const axle of vehicle.axles)
    if (wheelsOff(moment, axle).length > 0 && !secured(after, axle))
      found.push(`a ${axle} wheel is off while the axle is on ${after.carried[axle]}`)
  if (action.verb === 'jack up' && !before.chocked) found.push('jacked up without chocks')
  if (action.verb === 'take off' && action.part) {
    const piece = [...pieceOf(vehicle, before, action.part)].map((id) => vehicle.parts.get(id)!)
    const heavy = piece.find((part) => part.file.heavy && part.kind !== 'body')
    if (heavy && Object.values(before.carried).includes('locked') && !before.tail)
      found.push(`the heavy ${heavy.id} comes off the lift without tail support`)
  }
  return found
}

/** I2: Wheel nuts cracked, and finally tightened, with the wheel on the ground (or held); opposite-first, in stages. */
export function wheelNutsOnTheGround({ vehicle, before, action }: Moment): Found {
  if (rolls.includes(action.verb))
    return [...vehicle.ties.values()]
      .filter(({ kind, id }) => kind === 'wheel nuts' && !tight(before, id))
      .map(({ id }) => `it rolls on ${id}, not final`)
  const tie = tieOf(vehicle, action)
  if (tie?.kind !== 'wheel nuts') return []
  const isHeld = grounded(before, tie.axle) || action.how['wheel'] === 'held'
  if (action.verb === 'crack' && !isHeld) return [`${tie.id} cracked with the wheel in the air`]
  if (action.verb === 'open' && before.ties[tie.id]!.is !== 'cracked')
    return [`${tie.id} taken off without having been cracked on the ground`]
  if (action.verb !== 'final') return []
  return [
    ...(isHeld ? [] : [`${tie.id} final with the wheel in the air`]),
    ...(/opposite/.test(action.how['method'] ?? '') && /stage|pass/.test(action.how['method'] ?? '')
      ? []
      : [`${tie.id} not opposite-first in stages`]),
  ]
}

/**
 * I14: No weight on the hub bearing before its axle nut is final (the brake may hold it); whether that nut is cracked
 * and finished on the ground or lifted with the brake held is a field of the joint; a drive shaft is not drawn beyond
 * its joint.
 */
export function bearingBeforeWeight({ vehicle, before, action }: Moment): Found {
  const found: string[] = []
  const tie = tieOf(vehicle, action)
  const nuts = [...vehicle.ties.values()].filter(
    ({ kind }) => kind === 'axle nut' || kind === 'adjustable taper-roller hub',
  )
  for (const nut of nuts) {
    if (tight(before, nut.id)) continue
    const finishedDown = nut.file.cracked === 'on the ground' && before.ties[nut.id]!.is === 'run up'
    const isOwn = action.axle === null || action.axle === nut.axle
    if (action.verb === 'lower' && isOwn && !finishedDown)
      found.push(`weight comes on the bearing of ${nut.id}`)
    if (rolls.includes(action.verb)) found.push(`it rolls on the bearing of ${nut.id}, not final`)
  }
  if (tie?.kind === 'axle nut' && ['crack', 'final'].includes(action.verb)) {
    const isDown = grounded(before, tie.axle)
    if (isDown !== (tie.file.cracked === 'on the ground'))
      found.push(`${tie.id}: ${action.verb} ${isDown ? 'on the ground' : 'lifted'}, its field says otherwise`)
  }
  if (tie?.kind === 'axle nut' && action.verb === 'open' && before.ties[tie.id]!.is !== 'cracked')
    found.push(`${tie.id} was not cracked where its field says`)
  const loosens = action.verb === 'free' || (action.verb === 'open' && !before.ties[tie?.id ?? '']?.parted)
  const isOn = tie?.ends.some((end) => onVehicle(before, end))
  if (tie && isOn && loosens && locates(vehicle, tie))
    for (const corner of cornersOf(vehicle, tie))
      for (const shaft of vehicle.parts.values())
        if (shaft.kind === 'drive shaft' && whereOf(shaft) === corner && shaft.file.kind === 'drive shaft') {
          const isTied = vehicle.tiesOf(shaft.id).every(({ id }) => before.ties[id]!.is !== 'open')
          if (shaft.file.reach !== undefined && isTied && !action.how['shaft'])
            found.push(`${shaft.id} would be drawn beyond its joint by ${tie.id}`)
        }
  return found
}

/**
 * I18: Line opened → filled, bled, pedal firm, no leak; caliper or pads moved → pedal pumped firm; both before the
 * vehicle rolls, slip plates included.
 */
export function pedalBeforeRolling({ vehicle, before, action }: Moment): Found {
  const found: string[] = []
  const lines = Object.entries(before.lines)
  if (rolls.includes(action.verb)) {
    if (before.pedal !== 'firm') found.push(`${action.verb} with the pedal not pumped firm`)
    for (const [id, line] of lines) if (line !== 'bled') found.push(`${action.verb} with ${id} ${line}`)
  }
  if (action.verb === 'bleed')
    for (const [id, line] of lines)
      if (line === 'open' || !tight(before, id)) found.push(`bled with ${id} not tight`)
  if (action.verb === 'pump pedal') {
    for (const part of vehicle.parts.values())
      if ((part.kind === 'caliper' || part.kind === 'brake pads') && before.parts[part.id]!.is !== 'fitted')
        found.push(`pedal pumped with ${part.id} ${before.parts[part.id]!.is}`)
    for (const [id, line] of lines) if (line === 'open') found.push(`pedal pumped with ${id} open`)
  }
  return found
}

/**
 * State: the wheels come down, and the vehicle rolls, only on joints that hold: arms, links, struts, steering and
 * wheels are on and at least run up.
 */
export function wholeUnderWeight({ vehicle, before, action }: Moment): Found {
  if (action.verb !== 'lower' && !rolls.includes(action.verb)) return []
  const found: string[] = []
  for (const tie of vehicle.ties.values()) {
    const ends = tie.ends.map((end) => vehicle.parts.get(end)!)
    const isFirmKind = !['plug', 'clip', 'hose bracket'].includes(tie.kind)
    const steers =
      ends.some((end) => isSteering(vehicle, end)) &&
      ends.every((end) => isSteering(vehicle, end) || ['body', 'sub-frame', 'knuckle'].includes(end.kind))
    const carries =
      tie.kind === 'wheel nuts' ||
      locates(vehicle, tie) ||
      (isFirmKind && (steers || carriesSetter(vehicle, tie.id)))
    if (carries && !firm(before, tie.id) && before.ties[tie.id]!.is !== 'cracked')
      if (action.axle === null || action.axle === tie.axle)
        found.push(`${action.verb} with ${tie.id} ${before.ties[tie.id]!.is}`)
  }
  if (action.verb === 'lower')
    for (const [where, arm] of Object.entries(before.arms))
      if (arm !== 'free') found.push(`lowered with the ${where} arm ${arm}`)
  return found
}
