import { atRideHeight, carriesSetter, grounded, hasPin, tieOf, tight, whereOf } from './look.ts'
import type { Moment } from './state.ts'

type Found = readonly string[]

/**
 * I7: Bonded-rubber bush: final only at ride height (the height before lifting where the springs stay, the sheet's
 * where springs are renewed or a torsion bar is reset). Rubber tie-rod end: final only with wheels straight. Where the
 * bush bolt is itself an adjuster it stays run up through Refit, is nipped up for provisional readings, and is final,
 * at ride height, only after the last move.
 */
export function finalAtRideHeight(moment: Moment): Found {
  const { vehicle, goal, before, after, action } = moment
  const found: string[] = []
  if (action.verb === 'raise to ride height') {
    const springs = vehicle.stores.filter(({ axle }) => axle === action.axle)
    const isReset = springs.some(({ id, stores }) => goal.replace.includes(id) || stores === 'torsion bar')
    const onlyNew = springs.some(({ id }) => goal.replace.includes(id))
    const wanted = onlyNew
      ? ['the sheet']
      : isReset
        ? ['the sheet', 'height before lifting']
        : ['height before lifting']
    if (!wanted.includes(action.how['target'] ?? ''))
      found.push(`raised to the wrong height: ${action.how['target']}`)
    if (action.how['target'] === 'height before lifting' && before.heights !== 'recorded')
      found.push('the height before lifting was never recorded')
  }
  if (action.verb === 'record heights' && before.everLifted && before.heights === 'unknown')
    found.push('heights are recorded only after lifting')
  const tie = tieOf(vehicle, action)
  if (tie && action.verb === 'final') {
    const arm = before.arms[whereOf(tie)] ?? 'free'
    const down = grounded(before, tie.axle)
    if (atRideHeight(tie)) {
      if (!down && arm !== 'ride') found.push(`${tie.id} is final away from ride height`)
      if (down && !before.settled[tie.axle]) found.push(`${tie.id} is final before the wheels have settled`)
    }
    if (tie.file.final === 'wheels straight' && before.steering !== 'straight')
      found.push(`${tie.id} is final at ${before.steering}`)
    if (carriesSetter(vehicle, tie.id) && atRideHeight(tie)) {
      const own = vehicle.setters.filter(({ ties }) => ties.includes(tie.id))
      if (!down) found.push(`${tie.id} is an adjuster and made final before the wheels are down`)
      for (const { id } of own)
        if (before.setters[id] === 'disturbed')
          found.push(`${tie.id} is final before ${id} has had its last move`)
    }
  }
  if (action.verb === 'set toe' || action.verb === 'set camber and caster')
    for (const one of vehicle.ties.values()) {
      if (one.axle !== action.axle || !atRideHeight(one) || !carriesSetter(vehicle, one.id)) continue
      const now = before.ties[one.id]!
      const stays = after.ties[one.id]!.is === now.is
      if (stays && now.touched && !now.earlier && (now.is === 'final' || now.is === 'checked'))
        found.push(`${one.id} was final before the last move, ${action.verb}`)
    }
  return found
}

/**
 * I17: Camber and caster before toe, rear before front, lock nuts after toe, reading after lock nuts; every reading on
 * settled wheels at set pressures; provisional readings with all joints final except the adjuster in hand and its lock
 * nut (nipped up); the proving reading after every joint is final. The steering wheel is held before front toe; on ramps
 * nothing is read unless all wheels stand level there.
 */
export function anglesInTurn({ vehicle, before, after, action }: Moment): Found {
  const found: string[] = []
  const axle = action.axle ?? ''
  const sets = action.verb === 'set toe' || action.verb === 'set camber and caster'
  const reads = action.verb === 'read angles'
  if (reads || sets) {
    if (!before.settled[axle]) found.push(`${action.verb} on wheels that have not settled`)
    if (!before.pressures) found.push(`${action.verb} before the pressures are set`)
    if (before.steering !== 'straight') found.push(`${action.verb} with the steering at ${before.steering}`)
    if (axle === 'front' && before.angles['rear'] !== undefined)
      if (before.angles['rear'] === 'due') found.push('front before rear')
  }
  if (action.verb === 'record heights' && !before.pressures)
    found.push('heights are read before the pressures are set')
  if (reads) {
    const isProving = action.how['kind'] === 'proving'
    for (const { id } of vehicle.ties.values()) {
      if (tight(before, id)) continue
      const isNipped = before.ties[id]!.is === 'run up' && carriesSetter(vehicle, id)
      if (isProving || !isNipped)
        found.push(`${isProving ? 'proving ' : ''}reading with ${id} ${before.ties[id]!.is}`)
    }
  }
  if ((reads || sets) && before.carried[axle] === 'ramps' && !before.level)
    found.push(`${action.verb} on ramps, the axles at different heights`)
  if (action.verb === 'set toe' && axle === 'front' && !before.wheelHeld)
    found.push('toe with the steering wheel not held')
  if (sets && before.angles[axle] !== 'provisional') found.push(`${action.verb} without a reading`)
  const leans = vehicle.setters.filter((one) => one.axle === axle && !one.toe && one.slides)
  if (action.verb === 'set toe')
    for (const { id } of leans) if (before.setters[id] === 'disturbed') found.push(`toe before ${id} is set`)
  if (action.verb === 'set camber and caster') {
    if (before.toeSet[axle]) found.push('camber and caster after toe')
    if (leans.every(({ ties }) => ties.some((id) => before.ties[id]!.is !== 'run up')))
      found.push('no adjuster is nipped up')
  }
  const tie = tieOf(vehicle, action)
  if (tie && action.verb === 'final')
    for (const one of vehicle.setters)
      if (one.slides && one.ties.includes(tie.id) && before.setters[one.id] === 'disturbed')
        found.push(`${tie.id} is locked before ${one.id} is set`)
  if (action.verb === 'road test' || action.verb === 'hand over')
    for (const [one, is] of Object.entries(after.angles))
      if (is === 'due' || is === 'provisional') found.push(`${action.verb} with the ${one} angles ${is}`)
  return found
}

/** I19: Lead unplugged or height rod off → back, and the lamp looked at. */
export function lampSeen({ vehicle, before, action }: Moment): Found {
  if (action.verb === 'check level sensor') {
    const rods = [...vehicle.ties.values()].filter(({ ends }) =>
      ends.some((end) => vehicle.parts.get(end)!.kind === 'height-sensor rod'),
    )
    return rods
      .filter(({ id }) => before.ties[id]!.is === 'open')
      .map(({ id }) => `the level sensor is looked at with ${id} open`)
  }
  if (action.verb !== 'hand over') return []
  return [
    ...Object.entries(before.lamps)
      .filter(([, lamp]) => lamp === 'due')
      .map(([lead]) => `the lamp of ${lead} was not looked at since it is back`),
    ...(before.rod === 'due' ? ['the height rod was off, its sensor not looked at'] : []),
  ]
}

/**
 * I20: No road test before: joints final, pins in, wheels final, pedal firm, toe inside the rough band, clearance seen
 * lock to lock.
 */
export function beforeTheRoad({ vehicle, before, action }: Moment): Found {
  if (action.verb === 'see clearance')
    return [...vehicle.ties.values()]
      .filter(({ id }) => ['open', 'started', 'cracked', 'retained'].includes(before.ties[id]!.is))
      .map(({ id }) => `clearance is seen with ${id} ${before.ties[id]!.is}`)
  if (action.verb !== 'road test') return []
  const found: string[] = []
  for (const tie of vehicle.ties.values()) {
    const { is, pin, touched } = before.ties[tie.id]!
    if (!tight(before, tie.id)) found.push(`road test with ${tie.id} ${is}`)
    if (touched && hasPin(tie) && pin === 'out') found.push(`road test without the pin of ${tie.id}`)
  }
  if (before.wheelHeld) found.push('road test with the holder on the steering wheel')
  if (before.pedal !== 'firm') found.push('road test without a firm pedal')
  if (before.everLifted && !before.clearance) found.push('road test before clearance is seen lock to lock')
  if (before.steering !== 'straight') found.push(`road test starts at ${before.steering}`)
  return found
}

/** I22: Wheel off → appointment to tighten again, on a card for whoever drives the vehicle. */
export function cardForTheDriver({ before, action }: Moment): Found {
  return action.verb === 'hand over' && before.wheelWasOff && !before.card
    ? ['a wheel was off, and nobody is told to tighten it again']
    : []
}

/** I24: Before the first test drive: tyres, wheel nuts, loaded joints, brakes, steering free; else it is not driven. */
export function fitBeforeDriven({ before, action }: Moment): Found {
  return action.verb === 'test drive' && !before.fitToDrive
    ? ['it is driven before anybody has looked whether it may be']
    : []
}
