import type { Action, Goal, Verb } from '../../../src/plan/index.ts'
import type { BrokenOrder } from './broken-orders.ts'
import { checkedCorners } from './checked-corners.ts'
import { facts, typed, lowerArmOfTheBus as whole } from './hand-typed.ts'

const L = 'front left'
const lowerArm: Goal = { replace: [`${L} lower-arm`] }
const at = (verb: Verb, on = '') => {
  const found = whole.findIndex((one) => one.id === `${verb} ${on}`.trim())
  if (found < 0) throw new Error(`no ${verb} ${on}`)
  return found
}
const without = (...places: readonly number[]) => whole.filter((_, place) => !places.includes(place))
function moved(from: number, before: number): readonly Action[] {
  const one = whole[from]!
  const order = without(from)
  return order.toSpliced(before > from ? before - 1 : before, 0, one)
}
const altered = (place: number, more: Partial<Action>) => whole.with(place, { ...whole[place]!, ...more })
const added = (before: number, ...actions: readonly Action[]) => whole.toSpliced(before, 0, ...actions)

const onBus = (rule: string, name: string, order: readonly Action[]): BrokenOrder => ({
  rule,
  name,
  corner: checkedCorners.bus,
  aim: lowerArm,
  order,
})
const { jack, torque, looked, under, newPin } = facts
const heat = { how: { aid: 'heat' } }

/** The order for the bus's lower arm, each time with one thing done wrong. */
export const brokenOnTheBus: readonly BrokenOrder[] = [
  onBus('I1', 'stands not seen loaded', without(at('see loaded', 'front'))),
  onBus('I1', 'no chocks', without(at('chock'))),
  onBus(
    'I1',
    'hands under on a jack alone',
    added(at('stands', 'front'), typed('mark', `${L} lower-rear-bolt`, under)),
  ),
  onBus('I1', 'lowered with the wheel off', moved(at('lower', 'front'), at('fit', `${L} wheel`))),
  onBus('I2', 'cracked in the air', moved(at('crack', `${L} wheel-nuts`), at('open', `${L} wheel-nuts`))),
  onBus('I2', 'final in the air', moved(at('final', `${L} wheel-nuts`), at('lower', 'front'))),
  onBus('I2', 'in one go', altered(at('final', `${L} wheel-nuts`), torque)),
  onBus('I3', 'no jack under the arm', without(at('jack under arm', `${L} coil`))),
  onBus(
    'I3',
    'the saddle not located',
    altered(at('jack under arm', `${L} coil`), { how: { ...jack.how, saddle: '' } }),
  ),
  onBus(
    'I3',
    'the pivot of the arm that the jack carries',
    moved(at('open', `${L} lower-rear-bolt`), at('let down with the jack', `${L} coil`)),
  ),
  onBus(
    'I3',
    'the coil out under load',
    moved(at('take off', `${L} coil`), at('let down with the jack', `${L} coil`)),
  ),
  onBus(
    'I4',
    'the jack away with the ball joint open',
    moved(at('jack away', `${L} coil`), at('run up', `${L} lower-ball-joint`)),
  ),
  onBus(
    'I4',
    'the jack away with the droop stop open',
    moved(at('jack away', `${L} coil`), at('run up', `${L} damper-bottom-bolt`)),
  ),
  onBus('I5', 'the nut off before the taper has let go', without(at('free', `${L} lower-ball-joint`))),
  onBus('I5', 'parted with its nut tight', without(at('crack', `${L} lower-ball-joint`))),
  onBus(
    'I6',
    'the hose bracket stays',
    without(at('open', `${L} brake-hose-bracket`), at('connect', `${L} brake-hose-bracket`)),
  ),
  onBus(
    'I6',
    'the sensor lead stays',
    without(at('open', `${L} sensor-clip`), at('connect', `${L} sensor-clip`)),
  ),
  onBus(
    'I6',
    'the bracket on again while the knuckle is loose',
    moved(at('connect', `${L} brake-hose-bracket`), at('run up', `${L} lower-ball-joint`)),
  ),
  onBus(
    'I7',
    'a bonded bush final while it hangs',
    moved(at('final', `${L} lower-rear-bolt`), at('fit', `${L} coil`)),
  ),
  onBus(
    'I7',
    'final before the wheels have settled',
    moved(at('final', `${L} lower-rear-bolt`), at('roll and settle')),
  ),
  onBus(
    'I7',
    'an eccentric final before the last move',
    moved(at('final', `${L} lower-rear-bolt`), at('set toe', 'front')),
  ),
  onBus('I8', 'an old bolt', altered(at('run up', `${L} damper-bottom-bolt`), { effects: {} })),
  onBus('I8', 'an old pin', altered(at('pin', `${L} lower-ball-joint`), { how: { pin: 'old' } })),
  onBus('I9', 'a castle nut by torque', altered(at('final', `${L} lower-ball-joint`), torque)),
  onBus(
    'I9',
    'the pin before the slot',
    moved(at('pin', `${L} lower-ball-joint`), at('final', `${L} lower-ball-joint`)),
  ),
  onBus(
    'I10',
    'the link still on',
    moved(at('let down with the jack', `${L} coil`), at('crack', `${L} drop-link-bottom-nut`)),
  ),
  onBus('I13', 'heat on a bonded bush', altered(at('open', `${L} lower-rear-bolt`), heat)),
  onBus('I15', 'no mark', without(at('mark', `${L} lower-rear-bolt`))),
  onBus(
    'I15',
    'the mark goes with the arm',
    altered(at('mark', `${L} lower-rear-bolt`), { how: { on: 'the joint' } }),
  ),
  onBus('I15', 'toe set before the thread is measured', without(at('mark', 'front right tie-rod-lock-nut'))),
  onBus(
    'I16',
    'compared only in the air',
    moved(
      whole.findIndex(({ verb }) => verb === 'compare'),
      at('open', `${L} wheel-nuts`),
    ),
  ),
  onBus('I16', 'not laid beside the old one', without(whole.findLastIndex(({ verb }) => verb === 'compare'))),
  onBus('I17', 'toe before camber', moved(at('set toe', 'front'), at('set camber and caster', 'front'))),
  onBus('I17', 'pressures not set', without(at('set pressures'))),
  onBus('I17', 'read on wheels that stand scrubbed in', without(at('roll and settle'))),
  onBus(
    'I17',
    'the lock nut before toe',
    moved(at('final', 'front left tie-rod-lock-nut'), at('set toe', 'front')),
  ),
  onBus(
    'I17',
    'proven before the last nut',
    moved(
      whole.findLastIndex(({ verb }) => verb === 'read angles'),
      at('final', `${L} lower-rear-bolt`),
    ),
  ),
  onBus(
    'I18',
    'the caliper moved, the pedal not pumped',
    added(
      at('fit', `${L} wheel`),
      typed('open', `${L} caliper-bolts`),
      typed('hang', `${L} caliper`),
      typed('fit', `${L} caliper`),
      typed('run up', `${L} caliper-bolts`),
      typed('final', `${L} caliper-bolts`, torque),
      typed('second check', `${L} caliper-bolts`, looked),
    ),
  ),
  onBus(
    'I18',
    'a line not bled',
    added(
      at('fit', `${L} wheel`),
      typed('open', `${L} brake-hose-union`),
      typed('run up', `${L} brake-hose-union`),
      typed('final', `${L} brake-hose-union`, torque),
      typed('second check', `${L} brake-hose-union`, looked),
      typed('pump pedal', null),
    ),
  ),
  onBus(
    'I19',
    'the lamp not looked at',
    added(at('fit', `${L} wheel`), typed('open', `${L} sensor-plug`), typed('connect', `${L} sensor-plug`)),
  ),
  onBus(
    'I19',
    'the lamp looked at before the lead is back',
    added(
      at('fit', `${L} wheel`),
      typed('open', `${L} sensor-plug`),
      typed('look at lamp', null),
      typed('connect', `${L} sensor-plug`),
    ),
  ),
  onBus('I20', 'clearance not seen', without(at('see clearance'))),
  onBus('I20', 'no pin', without(at('pin', `${L} lower-ball-joint`))),
  onBus('I21', 'no second look', without(at('second check', `${L} lower-ball-joint`))),
  onBus(
    'I21',
    'nobody said who looked',
    altered(at('second check', `${L} lower-ball-joint`), { how: { method: 'mark and record' } }),
  ),
  onBus('I22', 'no card', without(at('appoint re-tightening'))),
  onBus('I24', 'driven before anybody has looked', without(at('look whether it may be driven'))),
  onBus('goal', 'not handed over', without(at('hand over'))),
  onBus('goal', 'the arm stays', without(at('take off', `${L} lower-arm`), at('fit', `${L} lower-arm`))),
  onBus(
    'goal',
    'one joint stays run up',
    without(at('final', `${L} lower-rear-bolt`), at('second check', `${L} lower-rear-bolt`)),
  ),
  onBus(
    'state',
    'the arm comes off with a pivot in',
    moved(at('take off', `${L} lower-arm`), at('open', `${L} lower-rear-bolt`)),
  ),
  onBus('state', 'a bolt behind the rack boot', without(at('steer', 'left lock'))),
  onBus(
    'state',
    'closed with the arm off',
    moved(at('run up', `${L} lower-ball-joint`), at('fit', `${L} lower-arm`)),
  ),
  onBus(
    'state',
    'the coil is put back before the arm is off',
    added(
      at('take off', `${L} lower-arm`),
      typed('fit', `${L} lower-arm`),
      typed('take off', `${L} lower-arm`),
    ),
  ),
  onBus(
    'state',
    'a second pin into a nut that is not tight',
    added(
      at('run up', `${L} lower-ball-joint`),
      typed('final', `${L} lower-ball-joint`, facts.slot),
      typed('pin', `${L} lower-ball-joint`, newPin),
    ),
  ),
]
