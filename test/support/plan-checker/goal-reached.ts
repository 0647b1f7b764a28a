import type { Goal } from '../../../src/plan/index.ts'
import { hasPin, isRed } from './look.ts'
import type { State } from './state.ts'
import type { Vehicle } from './vehicle.ts'

/** What was opened at some moment of an order. */
export type EverOpen = ReadonlySet<string>

/**
 * At the end the goal is reached: what is to be replaced really came off, free of all that stays, and came back new;
 * what was to be opened was open; all that was undone is closed with all its facts; nothing holds in place of it.
 */
export function goalReached(vehicle: Vehicle, goal: Goal, end: State, opened: EverOpen): readonly string[] {
  const found: string[] = []
  for (const id of goal.replace) {
    const part = end.parts[id]
    if (!part?.out) found.push(`${id} never came free of what stays`)
    else if (part.is !== 'fitted') found.push(`the new ${id} is not on the vehicle`)
    else if (part.compared !== 'beside') found.push(`the new ${id} was not laid beside the old one`)
  }
  for (const id of goal.open ?? []) if (!opened.has(id)) found.push(`${id} was never open`)
  for (const tie of vehicle.ties.values()) {
    const { is, pin, touched, fresh } = end.ties[tie.id]!
    if (!touched) continue
    if (is !== 'final' && is !== 'checked') found.push(`${tie.id} is ${is} at the end`)
    if (hasPin(tie) && pin !== 'new') found.push(`${tie.id} has no new pin`)
    if (tie.file.reuse === 'new' && opened.has(tie.id) && !fresh) found.push(`${tie.id} has its old fastener`)
    if (isRed(tie) && is !== 'checked') found.push(`${tie.id} has had no second look`)
  }
  for (const [id, part] of Object.entries(end.parts))
    if (part.is !== 'fitted') found.push(`${id} is ${part.is}`)
  for (const [id, energy] of Object.entries(end.energy))
    if (energy !== 'set') found.push(`${id} is ${energy}`)
  for (const [axle, on] of Object.entries(end.carried)) if (on !== 'wheels') found.push(`${axle} is on ${on}`)
  for (const [id, line] of Object.entries(end.lines)) if (line !== 'bled') found.push(`${id} is ${line}`)
  for (const [where, arm] of Object.entries(end.arms))
    if (arm !== 'free') found.push(`the ${where} arm is ${arm}`)
  for (const [id, setter] of Object.entries(end.setters))
    if (setter === 'disturbed') found.push(`${id} was disturbed and never set`)
  if (!end.levelling) found.push('the levelling is off')
  if (end.steering !== 'straight') found.push(`the steering is at ${end.steering}`)
  if (!end.driven) found.push('no road test')
  if (!end.handedOver) found.push('it was not handed over')
  return found
}
