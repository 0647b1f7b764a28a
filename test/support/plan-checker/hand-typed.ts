import type { Action, Verb } from '../../../src/plan/index.ts'

/** An action typed by hand: only what the rules look at. */
export function typed(verb: Verb, on: string | null, more: Partial<Action> = {}): Action {
  const words = on?.split(' ') ?? []
  const axle = words[0] === 'front' || words[0] === 'rear' ? words[0] : null
  const side = words[1] === 'left' || words[1] === 'right' ? words[1] : null
  const about = ofHold.includes(verb)
    ? { hold: on ?? '' }
    : ofPart.includes(verb)
      ? { part: on ?? '' }
      : ofJoint.includes(verb)
        ? { joint: on ?? '' }
        : {}
  const isOnce = closing.includes(verb) && on !== null
  return {
    id: `${verb} ${on ?? ''}`.trim(),
    verb,
    words: verb === 'steer' ? `Turn the steering to ${on}` : `${verb} ${on ?? ''}`,
    axle,
    side,
    how: {},
    tool: null,
    place: 'at the wheel',
    needs: [],
    effects: isOnce ? { [`fastener ${on}`]: 'new' } : {},
    minutes: [1, 2, 3],
    risk: null,
    cautions: [],
    records: [],
    why: 'typed by hand',
    ...about,
    ...more,
  }
}

const closing: readonly Verb[] = ['start', 'run up', 'connect']
const ofJoint: readonly Verb[] = [
  'mark',
  'crack',
  'free',
  'open',
  'start',
  'run up',
  'connect',
  'final',
  'pin',
  'second check',
]
const ofPart: readonly Verb[] = ['compare', 'take off', 'hang', 'fit']
const ofHold: readonly Verb[] = [
  'jack under arm',
  'let down with the jack',
  'raise the arm',
  'jack away',
  'compress',
  'release compressor',
  'unwind',
  'wind',
  'deflate',
  'let air in',
]
const how = (facts: Readonly<Record<string, string>>): Partial<Action> => ({ how: facts })
export const facts = {
  jack: how({ saddle: 'located', coil: 'tethered', hands: 'nobody in line' }),
  bodyToo: how({ on: 'body side too' }),
  before: how({ when: 'before lifting' }),
  beside: how({ when: 'beside the old' }),
  stages: how({ method: 'opposite first, in stages' }),
  slot: how({ method: 'castle slot' }),
  torque: how({ method: 'torque' }),
  newPin: how({ pin: 'new' }),
  looked: how({ by: 'another person', method: 'mark and record' }),
  under: { place: 'under' } as Partial<Action>,
} as const

const L = 'front left'
const { jack, bodyToo, before, beside, stages, slot, torque, newPin, looked, under } = facts

/** Up on stands, with the wheel off. */
export const lifted: readonly Action[] = [
  typed('set pressures', null),
  typed('record heights', null),
  typed('mark', `${L} wheel-nuts`),
  typed('crack', `${L} wheel-nuts`),
  typed('chock', null),
  typed('jack up', 'front'),
  typed('stands', 'front'),
  typed('see loaded', 'front'),
  typed('open', `${L} wheel-nuts`),
  typed('take off', `${L} wheel`),
]

/** The wheel back on and down on the ground. */
export const lowered: readonly Action[] = [
  typed('fit', `${L} wheel`),
  typed('run up', `${L} wheel-nuts`),
  typed('lower', 'front'),
  typed('final', `${L} wheel-nuts`, stages),
  typed('second check', `${L} wheel-nuts`, looked),
]

/** A new left lower arm for the demo's bus, front: the whole job in an order of the trade. Common practice, no source. */
export const lowerArmOfTheBus: readonly Action[] = [
  typed('look whether it may be driven', null),
  typed('test drive', null),
  typed('compare', `${L} lower-arm`, before),
  ...lifted,
  typed('open', `${L} sensor-clip`),
  typed('mark', `${L} brake-hose-bracket`),
  typed('open', `${L} brake-hose-bracket`),
  typed('crack', `${L} drop-link-bottom-nut`),
  typed('free', `${L} drop-link-bottom-nut`),
  typed('open', `${L} drop-link-bottom-nut`),
  typed('mark', `${L} coil-seats`, bodyToo),
  typed('jack under arm', `${L} coil`, jack),
  typed('open', `${L} damper-bottom-bolt`),
  typed('crack', `${L} lower-ball-joint`),
  typed('free', `${L} lower-ball-joint`),
  typed('open', `${L} lower-ball-joint`),
  typed('let down with the jack', `${L} coil`),
  typed('take off', `${L} coil`),
  typed('mark', `${L} lower-front-bolt`, { ...bodyToo, ...under }),
  typed('mark', `${L} lower-rear-bolt`, { ...bodyToo, ...under }),
  typed('steer', 'left lock'),
  typed('open', `${L} lower-front-bolt`, under),
  typed('open', `${L} lower-rear-bolt`, under),
  typed('take off', `${L} lower-arm`),
  typed('compare', `${L} lower-arm`, beside),
  typed('fit', `${L} lower-arm`),
  typed('start', `${L} lower-front-bolt`, under),
  typed('start', `${L} lower-rear-bolt`, under),
  typed('run up', `${L} lower-front-bolt`, under),
  typed('run up', `${L} lower-rear-bolt`, under),
  typed('steer', 'straight'),
  typed('fit', `${L} coil`),
  typed('raise the arm', `${L} coil`, jack),
  typed('run up', `${L} lower-ball-joint`),
  typed('run up', `${L} damper-bottom-bolt`),
  typed('jack away', `${L} coil`),
  typed('final', `${L} lower-ball-joint`, slot),
  typed('pin', `${L} lower-ball-joint`, newPin),
  typed('second check', `${L} lower-ball-joint`, looked),
  typed('final', `${L} damper-bottom-bolt`, torque),
  typed('run up', `${L} drop-link-bottom-nut`),
  typed('final', `${L} drop-link-bottom-nut`, torque),
  typed('connect', `${L} brake-hose-bracket`),
  typed('connect', `${L} sensor-clip`),
  ...lowered,
  typed('roll and settle', null),
  typed('drive onto ramps', null, how({ wheels: 'level' })),
  typed('read angles', 'front', how({ kind: 'provisional' })),
  typed('set camber and caster', 'front', under),
  typed('mark', 'front left tie-rod-lock-nut'),
  typed('mark', 'front right tie-rod-lock-nut'),
  typed('hold steering wheel', null),
  typed('set toe', 'front'),
  typed('final', 'front left tie-rod-lock-nut', torque),
  typed('final', 'front right tie-rod-lock-nut', torque),
  typed('steer', 'left lock'),
  typed('final', `${L} lower-front-bolt`, { ...torque, ...under }),
  typed('second check', `${L} lower-front-bolt`, { ...looked, ...under }),
  typed('steer', 'straight'),
  typed('final', `${L} lower-rear-bolt`, { ...torque, ...under }),
  typed('second check', `${L} lower-rear-bolt`, { ...looked, ...under }),
  typed('drive off ramps', null),
  typed('roll and settle', null),
  typed('see clearance', null),
  typed('read angles', 'front', how({ kind: 'proving' })),
  typed('appoint re-tightening', null),
  typed('road test', null),
  typed('hand over', null),
]
