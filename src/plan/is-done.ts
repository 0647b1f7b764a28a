import type { Action } from './action.ts'
import { factOf } from './fact-of.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'
import { supports } from './supports.ts'

const off = ['off', 'freed', 'hung']

/**
 * Whether a state has an action behind it: what it would bring about is so, or was so and has gone further.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function isDone(action: Action, state: State): boolean {
  const is = (key: string) => factOf(state, key)
  const { effects } = action
  const stage = action.joint === undefined ? 0 : jointStageOf(is(keys.joint(action.joint)))
  const arms = Object.keys(effects).filter((key) => key.startsWith('arm '))
  const parts = Object.entries(effects).filter(([key]) => key.startsWith('part '))
  const supported = Object.keys(effects)
    .filter((key) => key.startsWith('support '))
    .map(is)
  const comesBack = stage === 0
  switch (action.verb) {
    case 'mark':
      return stage > 0 || is(keys.mark(action.joint!)) === 'recorded, body side too' || isSo(action, state)
    case 'crack':
      return stage > 0
    case 'free':
      return stage > 2 || is(keys.taper(action.joint!)) === 'parted'
    case 'open':
      return stage > 2
    case 'start':
      return comesBack || stage > 3
    case 'run up':
    case 'connect':
      return comesBack || stage > 4
    case 'final':
      return comesBack || stage > 5
    case 'pin':
      return comesBack || is(keys.pin(action.joint!)) !== 'out'
    case 'second check':
      return comesBack || stage > 6
    case 'take off':
    case 'hang':
      return parts.every(([key]) => off.includes(is(key)) || is(key) === 'new')
    case 'fit':
      return parts.every(([key, value]) => is(key) === value || is(key) === 'new')
    case 'compare':
      return is(keys.compared(action.part!)) !== 'not yet' && action.how['when'] === 'before lifting'
        ? true
        : is(keys.part(action.part!)) === 'new' || isSo(action, state)
    case 'jack under arm':
      return is(keys.energy(action.hold!)) !== 'held by its set'
    case 'let down with the jack':
      return is(keys.energy(action.hold!)) === 'let down'
    case 'raise the arm':
      return arms.every((key) => is(key) !== 'let down')
    case 'jack away':
      return action.hold === undefined
        ? arms.every((key) => is(key) !== 'raised to ride height')
        : is(keys.energy(action.hold)) === 'held by its set'
    case 'see clearance':
      return is(keys.clearance) === 'seen'
    case 'compress':
    case 'release compressor':
      return isSpringDone(action, state)
    case 'wind':
    case 'let air in':
      return is(keys.energy(action.hold!)) !== 'let down'
    case 'axle off stands':
      return is(keys.axleStands(action.axle!)) !== 'on stands'
    case 'axle on stands':
      return is(keys.axleStands(action.axle!)) === 'on stands'
    case 'jack up':
    case 'lift':
      return supported.every((one) => /^on (a jack|stands|the lift)/.test(one))
    case 'stands':
    case 'lock arms':
      return supported.every(
        (one) => /^on stands/.test(one) || (supports.lifted as readonly string[]).includes(one),
      )
    case 'see loaded':
      return supported.every((one) => (supports.lifted as readonly string[]).includes(one))
    case 'lower':
      return supported.every((one) => (supports.onWheels as readonly string[]).includes(one))
    case 'drive off ramps':
      return supported.every((one) => one === 'on its wheels')
    case 'record heights':
      return is(keys.heights) !== 'not recorded' || isApart(state)
    case 'read angles':
      return is(keys.reading(action.axle!)) === 'proven' || isSo(action, state)
    case 'set toe':
    case 'set camber and caster':
      return Object.entries(effects)
        .filter(([key, value]) => value === 'set' && /^(toe|camber|adjuster) /.test(key))
        .every(([key]) => is(key) === 'set')
    case 'check level sensor':
      return is(keys.levelSensor) !== 'to check'
    default:
      return isSo(action, state)
  }
}

/** All that the action would bring about is so. */
const isSo = ({ effects }: Action, state: State): boolean => {
  const told = Object.entries(effects).filter(([key]) => !key.startsWith('stage '))
  return told.length > 0 && told.every(([key, value]) => factOf(state, key) === value)
}

/** In the compressor the first time, out of it with the old one, in it with the new one, and out of it in its seats. */
function isSpringDone({ verb, hold, effects }: Action, state: State): boolean {
  const energy = factOf(state, keys.energy(hold!))
  const part = factOf(state, keys.part(hold!))
  const swaps = effects[keys.swapped(hold!)] !== undefined
  const swapped = factOf(state, keys.swapped(hold!)) !== 'no'
  const to = effects[keys.energy(hold!)]
  if (verb === 'release compressor')
    return to === 'let down'
      ? energy === 'let down' || swapped || part === 'new'
      : energy === 'held by its set'
  if (swaps) return swapped || part === 'new'
  return energy === 'in the compressor'
}

/** A joint was open: how the vehicle stood as found is lost. */
const isApart = (state: State): boolean =>
  Object.entries(state).some(([key, is]) => key.startsWith('joint ') && jointStageOf(is) > 1)
