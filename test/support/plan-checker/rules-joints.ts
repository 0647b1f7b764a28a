import { hasPin, hasTaper, isRed, onVehicle, tieOf, tight } from './look.ts'
import type { Moment } from './state.ts'

type Found = readonly string[]

/** I5: A taper is parted with its nut on a few threads. */
export function taperUnderItsNut({ vehicle, before, action }: Moment): Found {
  const tie = tieOf(vehicle, action)
  if (!tie || !hasTaper(tie)) return []
  const now = before.ties[tie.id]!
  if (action.verb === 'free' && now.is !== 'retained')
    return [`${tie.id} is parted with its nut ${now.is}, not on a few threads`]
  if (action.verb === 'open' && !now.parted)
    return [`the nut of ${tie.id} comes off before its taper has let go`]
  return []
}

/** I8: Single-use fasteners and pins are new before final. */
export function newBeforeFinal({ vehicle, before, after, action }: Moment): Found {
  const tie = tieOf(vehicle, action)
  if (!tie) return []
  const isOnce = tie.file.reuse === 'new' && before.ties[tie.id]!.touched
  if ((action.verb === 'final' || action.verb === 'connect') && isOnce && !after.ties[tie.id]!.fresh)
    return [`${tie.id} is made final with its old fastener`]
  if (action.verb === 'pin' && action.how['pin'] !== 'new') return [`${tie.id} gets its old pin`]
  return []
}

/**
 * I9: Tapered stud with castle nut: low figure → forward to a slot, below the maximum → pin → closed. Adjustable
 * taper-roller hub: its own procedure, never this one.
 */
export function slotThenPin({ vehicle, before, action }: Moment): Found {
  const tie = tieOf(vehicle, action)
  if (!tie) return []
  const method = action.how['method'] ?? ''
  if (action.verb === 'final' && tie.kind === 'tapered stud, castle nut' && !/slot/.test(method))
    return [`${tie.id} is not tightened forward to a slot`]
  if (action.verb === 'final' && tie.kind === 'adjustable taper-roller hub' && !/seat.*back/.test(method))
    return [`${tie.id} is not seated and backed off`]
  if (!hasPin(tie)) return []
  const { is, pin } = before.ties[tie.id]!
  if (action.verb === 'pin' && is !== 'final') return [`${tie.id} gets its pin while it is ${is}`]
  if (action.verb === 'second check' && pin !== 'new') return [`${tie.id} is looked at without its pin`]
  return []
}

/**
 * I15: Marks (as-found) are recorded before the thing they describe is disturbed; on the body side too when the part
 * is replaced.
 */
export function markedBefore({ vehicle, goal, before, after, action }: Moment): Found {
  const found: string[] = []
  for (const tie of vehicle.ties.values()) {
    const asks = tie.file.adjuster !== undefined || (tie.file.marks ?? []).length > 0
    if (!asks || before.ties[tie.id]!.touched || !after.ties[tie.id]!.touched) continue
    // Cracked wheel nuts still hold the wheel where it stood.
    if (tie.kind === 'wheel nuts' && action.verb === 'crack') continue
    const { mark } = before.ties[tie.id]!
    const isReplaced = tie.ends.some((end) => goal.replace.includes(end))
    if (mark === 'none') found.push(`${tie.id} is disturbed before its mark is recorded`)
    else if (isReplaced && mark !== 'body side too' && action.verb !== 'set toe')
      found.push(`the mark of ${tie.id} goes with its part`)
  }
  const tie = tieOf(vehicle, action)
  if (tie?.kind === 'wheel nuts' && action.verb === 'open' && (tie.file.marks ?? []).length > 0)
    if (before.ties[tie.id]!.mark === 'none') found.push(`${tie.id}: wheel to stud is not marked`)
  return found
}

/**
 * I16: New part compared by side, length, taper, thread and plug before the vehicle is lifted, and again beside the
 * old one.
 */
export function comparedTwice({ vehicle, goal, before, action }: Moment): Found {
  const found: string[] = []
  if (action.verb === 'jack up' || action.verb === 'lift')
    for (const id of goal.replace)
      if (before.parts[id]!.compared === 'no') found.push(`lifted before the new ${id} was compared`)
  if (action.verb === 'compare' && action.part && goal.replace.includes(action.part)) {
    const part = vehicle.parts.get(action.part)
    const { out, compared } = before.parts[action.part]!
    if (action.how['when'] === 'before lifting') {
      if (part?.axle && !['wheels', 'ramps'].includes(before.carried[part.axle]!))
        found.push(`${action.part} is compared only after lifting`)
    } else {
      if (!out && onVehicle(before, action.part))
        found.push(`${action.part} is laid beside an old one that is not off`)
      if (compared === 'no') found.push(`${action.part} was not compared before lifting`)
    }
  }
  const parts = action.verb === 'fit' ? [action.part ?? ''] : closes(action.verb) ? endsOf() : []
  for (const id of parts)
    if (goal.replace.includes(id) && before.parts[id]!.out && before.parts[id]!.compared !== 'beside')
      found.push(`the new ${id} goes in without having lain beside the old one`)
  return found

  function endsOf(): readonly string[] {
    return tieOf(vehicle, action)?.ends ?? []
  }
}

const closes = (verb: string) => ['start', 'run up', 'connect'].includes(verb)

/**
 * I21: The red list has a second check: by another person where there is one, else the same person's later second
 * look, recorded as that, never a dead end. Torque-plus-angle joints are checked by mark and record, not pulled again.
 */
export function secondLook({ vehicle, before, action }: Moment): Found {
  const tie = tieOf(vehicle, action)
  if (action.verb === 'second check' && tie) {
    const by = action.how['by'] ?? ''
    return [
      ...(before.ties[tie.id]!.is === 'final'
        ? []
        : [`${tie.id} is looked at while it is ${before.ties[tie.id]!.is}`]),
      ...(/another person|same person.*later/.test(by) ? [] : [`nobody is told to look at ${tie.id}`]),
      ...(/mark.*record/.test(action.how['method'] ?? '') ? [] : [`${tie.id} is pulled again`]),
    ]
  }
  if (action.verb !== 'hand over') return []
  return [...vehicle.ties.values()]
    .filter((one) => isRed(one) && before.ties[one.id]!.touched && before.ties[one.id]!.is !== 'checked')
    .map(({ id }) => `handed over without a second look at ${id}`)
}

/**
 * I23: Steering shaft parted → steering wheel held from turning, rack centred and counted, pinch bolt seated in its
 * groove and on the red list; airbag made safe by the maker's method only.
 */
export function shaftParted({ vehicle, before, action }: Moment): Found {
  const found: string[] = []
  const ofShaft = [...vehicle.ties.values()].filter(({ ends }) =>
    ends.some((end) => vehicle.parts.get(end)!.kind === 'steering shaft'),
  )
  const tie = tieOf(vehicle, action)
  if (tie && ofShaft.includes(tie)) {
    if (action.verb === 'open') {
      if (!before.wheelHeld || before.steering !== 'straight')
        found.push(`${tie.id} opens while the steering wheel can turn`)
      if (!before.airbagSafe) found.push(`${tie.id} opens with the airbag live`)
    }
    if (action.verb === 'final' && tie.kind === 'pinch bolt' && !/groove/.test(action.how['seated'] ?? ''))
      found.push(`${tie.id} is tight, but not seen in its groove`)
  }
  if (action.verb === 'steer' && ofShaft.some(({ id }) => before.ties[id]!.is === 'open'))
    found.push('the steering is turned while its shaft is parted')
  if (action.verb === 'hold steering wheel' && before.steering !== 'straight')
    found.push('the steering wheel is held, but not straight')
  return found
}

/** State: a joint, a part or a stand-in changes only from where it is. */
export function fromWhereItIs({ vehicle, goal, before, action }: Moment): Found {
  const tie = tieOf(vehicle, action)
  const part = action.part === undefined ? undefined : before.parts[action.part]
  const is = tie ? before.ties[tie.id]!.is : undefined
  const cant = `${tie?.id ?? action.part}: ${action.verb}`
  const here = tie?.ends.map((end) => onVehicle(before, end)) ?? []
  switch (action.verb) {
    case 'crack':
      return is === 'closed' || is === 'run up' || is === 'final' || is === 'checked'
        ? []
        : [`${cant}, but it is ${is}`]
    case 'free':
      return tie && hasTaper(tie) && is !== 'open' ? [] : [`${cant}: nothing to part`]
    case 'open':
      return is === 'open' ? [`${cant}, but it is open`] : []
    case 'start':
    case 'run up':
    case 'connect': {
      const apart = here[0] !== here[1] ? [`${cant}, but one of its parts is off the vehicle`] : []
      const isOld = tie?.ends.filter((end) => goal.replace.includes(end) && !before.parts[end]!.out) ?? []
      // What was only cracked, or turned back to a few threads, is run up again as it is.
      const allowed = action.verb === 'start' ? ['open'] : ['open', 'started', 'cracked', 'retained']
      return [
        ...(allowed.includes(is ?? '') ? [] : [`${cant}, but it is ${is}`]),
        ...apart,
        ...(isOld.length > 0 && is === 'open' && here.includes(false)
          ? [`${cant}: the old ${isOld[0]} goes back`]
          : []),
      ]
    }
    case 'final':
      return is === 'run up' ? [] : [`${cant}, but it is ${is}`]
    case 'fit':
      return part && part.is !== 'fitted' ? [] : [`${cant}, but it is fitted`]
    case 'take off':
    case 'hang':
      return part && part.is === 'fitted' ? [] : [`${cant}, but it is ${part?.is}`]
    case 'second check':
      return tie && !tight(before, tie.id) ? [`${cant}, but it is ${is}`] : []
    default:
      return []
  }
}
