import type { Action } from './action.ts'
import { aftercareActions } from './aftercare-actions.ts'
import { axleOnStands } from './axle-on-stands.ts'
import { energyActions } from './energy-actions.ts'
import { factOf } from './fact-of.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'
import { supportActions } from './support-actions.ts'
import { supports } from './supports.ts'
import type { Work } from './work.ts'

/**
 * An order from the sound vehicle with what only the state asks for besides: a spring that something holds though
 * nothing of this work needs it is given back to its own joints, a vehicle that is only lifted is lowered.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function wholeFrom(work: Work, order: readonly Action[], state: State): readonly Action[] {
  const { axles } = work.assembly
  const isUp = axles.some((axle) => /ramps|slip plates/.test(factOf(state, keys.support(axle))))
  const isLifted = order.some(({ verb }) => verb === 'jack up' || verb === 'lift')
  const off = supportActions(axles).offRamps()
  const first = isUp && isLifted ? [{ ...off, id: `${off.id}, first` }] : []
  return [...first, ...withOwed(work, loweredToo(work, order, state), state)]
}

function loweredToo(work: Work, order: readonly Action[], state: State): readonly Action[] {
  const { axles } = work.assembly
  const hold = supportActions(axles)
  const lifted = axles.filter(
    (axle) => !(supports.onWheels as readonly string[]).includes(factOf(state, keys.support(axle))),
  )
  const benched = Object.values(work.assembly.holds).filter((one) => isStrutSpring(work.assembly, one))
  const back = givenBack(work, order, state)
  // A spring is back in its strut before that goes in; any other before its corner is raised or lowered.
  const inStrut = back.filter(({ hold: id }) => benched.some((one) => one.id === id))
  const held = back.filter((one) => !inStrut.includes(one))
  const at = order.findIndex(({ verb }) => verb === 'raise to ride height' || verb === 'lower')
  if (at >= 0)
    return back.length > 0 ? [...inStrut, ...order.slice(0, at), ...held, ...order.slice(at)] : order
  if (lifted.length === 0) return order
  const isUp = ({ needs }: Action) =>
    needs.some(({ key, is }) => key.startsWith('support ') && !is.includes('on its wheels'))
  const last = order.findLastIndex(isUp) + 1
  return [
    ...axles.flatMap((axle) => [hold.stands(axle), hold.seeLoaded(axle)]),
    hold.lockArms(),
    ...inStrut,
    ...order.slice(0, last),
    ...held,
    hold.lower(lifted, []),
    ...order.slice(last),
  ]
}

const rolls = ['roll and settle', 'drive onto ramps', 'see clearance', 'appoint re-tightening', 'tag']

/** What the state owes and nothing of this work asks for: lines to bleed, a pedal to pump, lamps to look at. */
function withOwed({ assembly }: Work, order: readonly Action[], state: State): readonly Action[] {
  const care = aftercareActions(assembly.axles)
  const has = (verb: Action['verb']) => order.some((action) => action.verb === verb)
  const lines = Object.keys(assembly.joints).filter(
    (id) =>
      ['open', 'to bleed'].includes(factOf(state, keys.line(id))) &&
      !order.some(({ effects }) => effects[keys.line(id)] === 'bled, no leak'),
  )
  const leads = Object.values(assembly.parts).filter(
    ({ id }) =>
      factOf(state, keys.lamp(id)) === 'to look at' &&
      !order.some(({ effects }) => effects[keys.lamp(id)] === 'looked at'),
  )
  const isSoft = factOf(state, keys.pedal) !== 'firm' || lines.length > 0
  const braked = [
    ...(lines.length > 0 ? [care.bleed(lines)] : []),
    ...(isSoft && !has('pump pedal') ? [care.pump([])] : []),
  ]
  const seen = [
    ...(leads.length > 0 ? [care.lamp(leads, [])] : []),
    ...(factOf(state, keys.levelSensor) === 'to check' && !has('check level sensor')
      ? [care.levelSensor()]
      : []),
  ]
  const found = order.findIndex(({ verb }) => rolls.includes(verb))
  const at = found < 0 ? order.length : found
  const clear = order.findIndex(({ verb }) => verb === 'see clearance')
  const to = clear < 0 ? order.length : clear
  return [
    ...order.slice(0, at),
    ...braked,
    ...order.slice(at, to),
    ...(clear < 0 ? [] : seen),
    ...order.slice(to),
  ]
}

/** What gives each spring back that the order leaves to something else. */
function givenBack(work: Work, order: readonly Action[], state: State): readonly Action[] {
  const { holds, axles } = work.assembly
  const lacks = Object.values(holds).filter(
    ({ id }) =>
      factOf(state, keys.energy(id)) !== 'held by its set' &&
      !order.some(({ effects }) => effects[keys.energy(id)] === 'held by its set'),
  )
  const onStands = axles.flatMap((axle) => {
    const these = lacks.filter((one) => one.axle === axle && work.standIns[one.id] === 'axle on stands')
    return these.length > 0 ? [axleOnStands(work, axle, these).off()] : []
  })
  return lacks
    .flatMap((one) => {
      const acts = energyActions(work, one)
      const energy = factOf(state, keys.energy(one.id))
      switch (work.standIns[one.id]) {
        case 'jack under the arm':
          return energy === 'let down' ? [acts.raise(), acts.jackAway()] : [acts.jackAway()]
        case 'spring compressor':
          return energy === 'let down' ? [acts.compress(2), acts.release(2)] : [acts.release(2)]
        case 'torsion bar unwound':
          return [acts.wind()]
        case 'air let out':
          return [acts.letAirIn()]
        default:
          return []
      }
    })
    .concat(onStands)
}
