import type { Action, Verb } from '../action.ts'
import type { HoldNode, JointNode, PartNode } from '../assembly.ts'
import { factOf } from '../fact-of.ts'
import { keys } from '../keys.ts'
import type { Moment } from './moment.ts'

const handsOn: readonly Verb[] = [
  'mark',
  'crack',
  'free',
  'open',
  'take off',
  'hang',
  'fit',
  'start',
  'run up',
  'connect',
  'final',
  'pin',
  'mend',
  'look',
  'jack under arm',
  'let down with the jack',
  'raise the arm',
  'raise to ride height',
  'compress',
  'release compressor',
  'unwind',
  'wind',
  'deflate',
  'let air in',
]

const rolls: readonly Verb[] = [
  'roll and settle',
  'drive onto ramps',
  'drive off ramps',
  'test drive',
  'road test',
]

/** What the rules ask of a moment. @source definition */
export const looks = {
  value: ({ state }: Moment, key: string): string => factOf(state, key),
  joint: ({ assembly, action }: Moment): JointNode | null =>
    action.joint === undefined ? null : (assembly.joints[action.joint] ?? null),
  part: ({ assembly, action }: Moment): PartNode | null =>
    action.part === undefined ? null : (assembly.parts[action.part] ?? null),
  hold: ({ assembly, action }: Moment): HoldNode | null =>
    action.hold === undefined ? null : (assembly.holds[action.hold] ?? null),
  /** Hands at a joint, part or spring on the vehicle. */
  isHandsOn: ({ verb, place }: Action): boolean =>
    handsOn.includes(verb) && (place === 'at the wheel' || place === 'under' || place === 'from above'),
  isRolling: ({ verb }: Action): boolean => rolls.includes(verb),
  isUndoing: ({ verb }: Action): boolean => verb === 'open' || verb === 'free',
  /** A joint that holds: tight, or run up. A taper that was parted does not. */
  holds: ({ state }: Moment, joint: string): boolean =>
    ['closed', 'cracked', 'retained', 'run up', 'final', 'checked'].includes(
      factOf(state, keys.joint(joint)),
    ) && factOf(state, keys.taper(joint)) === 'seated',
  /** Run up with full engagement, its taper seated. */
  isRunUp: ({ state }: Moment, joint: string): boolean =>
    ['closed', 'run up', 'final', 'checked'].includes(factOf(state, keys.joint(joint))) &&
    factOf(state, keys.taper(joint)) === 'seated',
  /** Every joint that the state says something of. */
  touched: ({ assembly, state }: Moment): readonly JointNode[] =>
    Object.values(assembly.joints).filter(({ id }) => state[keys.joint(id)] !== undefined),
  /** The axles that an action is about: its own, else all. */
  axles: ({ assembly, action }: Moment) => (action.axle ? [action.axle] : assembly.axles),
} as const
