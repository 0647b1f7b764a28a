import type { Corner } from '../../../src/corner/index.ts'
import type { Action } from '../../../src/plan/index.ts'
import type { BrokenOrder } from './broken-orders.ts'
import { checkedCorners } from './checked-corners.ts'
import { facts, lifted, lowered, typed } from './hand-typed.ts'

const { bus, air, torsionBar, strut, boxed, trailing } = checkedCorners
const L = 'front left'
const on = (rule: string, corner: Corner, name: string, ...order: readonly Action[]): BrokenOrder => ({
  rule,
  name,
  corner,
  aim: { replace: [] },
  order,
})
const { jack, stages, looked, under } = facts

/** Pieces of orders on other corners, each with one thing done wrong. */
export const brokenElsewhere: readonly BrokenOrder[] = [
  on(
    'I1',
    boxed,
    'a heavy unit off the lift without tail support',
    typed('lift', null),
    typed('lock arms', null),
    typed('take off', 'front cross-member'),
  ),
  on(
    'I6',
    bus,
    'a caliper on its hose',
    ...lifted,
    typed('open', `${L} caliper-bolts`),
    typed('take off', `${L} caliper`),
  ),
  on(
    'I7',
    bus,
    'a rod end of rubber at lock',
    ...lifted,
    typed('steer', 'right lock'),
    typed('final', `${L} tie-rod-end`, facts.slot),
  ),
  on(
    'I7b',
    bus,
    'the link on, the gap not watched',
    ...lifted,
    typed('raise to ride height', L, {
      how: { target: 'height before lifting', load: 'estimated', under: 'nobody' },
    }),
  ),
  on('I9', boxed, 'a hub like a castle nut', typed('final', `${L} hub-nut`, facts.slot)),
  on(
    'I11',
    torsionBar,
    'turns not counted',
    ...lifted,
    typed('unwind', `${L} torsion-bar`, { how: { thread: 'measured' } }),
  ),
  on(
    'I11',
    torsionBar,
    'the arm’s pivot open on a jack',
    ...lifted,
    typed('jack under arm', `${L} torsion-bar`, jack),
    typed('open', `${L} lower-front-bolt`, under),
  ),
  on('I12', air, 'lifted with the levelling on', ...lifted),
  on(
    'I12',
    air,
    'let out, not disconnected',
    typed('levelling off', null),
    ...lifted,
    typed('deflate', `${L} coil`),
  ),
  on(
    'I12',
    air,
    'opened under air',
    typed('levelling off', null),
    ...lifted,
    typed('open', `${L} damper-bottom-bolt`),
  ),
  on('I13', strut, 'the top nut with the spring free', ...lifted, typed('open', `${L} strut-top-nut`)),
  on(
    'I13',
    strut,
    'the top nut with the old spring let go in its strut',
    ...lifted,
    typed('compress', `${L} coil`),
    typed('release compressor', `${L} coil`),
    typed('open', `${L} strut-top-nut`),
  ),
  on('I14', strut, 'the axle nut cracked in the air', ...lifted, typed('crack', `${L} axle-nut`)),
  on(
    'I14',
    strut,
    'it rolls with the axle nut loose',
    typed('crack', `${L} axle-nut`),
    typed('roll and settle', null),
  ),
  on(
    'I14',
    strut,
    'the shaft drawn out of its joint',
    ...lifted,
    typed('open', `${L} lower-ball-joint-pinch-bolt`),
  ),
  on(
    'I23',
    strut,
    'the shaft parted, nothing held',
    ...lifted,
    typed('open', 'front steering-shaft-pinch-bolt'),
  ),
  on(
    'I23',
    strut,
    'held, then turned',
    ...lifted,
    typed('make airbag safe', null, { how: { method: 'the maker’s' } }),
    typed('hold steering wheel', null),
    typed('steer', 'left lock'),
    typed('steer', 'straight'),
    typed('open', 'front steering-shaft-pinch-bolt'),
  ),
  on(
    'state',
    bus,
    'lowered without ever having been lifted',
    ...lowered.slice(2),
    typed('second check', `${L} wheel-nuts`, { ...looked, ...stages }),
  ),
  on(
    'I6',
    trailing,
    'an arm that is the wheel carrier let down on hose and lead',
    typed('jack up', 'rear'),
    typed('let down with the jack', 'rear left coil'),
  ),
  on(
    'state',
    bus,
    'a caliper put back before the disc is off',
    ...lifted,
    typed('open', `${L} caliper-bolts`),
    typed('hang', `${L} caliper`),
    typed('open', `${L} brake-hose-union`),
    typed('fit', `${L} caliper`),
    typed('open', `${L} disc-screw`),
  ),
]
