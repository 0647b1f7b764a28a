import type { Assembly, JointNode } from './assembly.ts'
import { closingActions } from './closing-actions.ts'
import { factOf } from './fact-of.ts'
import { undoingActions } from './joint-actions.ts'
import { jointHabits } from './joint-habits.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import type { RecordedFact } from './recorded-fact.ts'
import type { State } from './state.ts'
import { supports } from './supports.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'
import { workOf } from './work-of.ts'

const nothing = {
  open: new Set<string>(),
  bench: new Set<string>(),
  off: new Set<string>(),
  standIns: {},
  letDown: new Set<string>(),
  raised: new Set<string>(),
  why: {},
}

/**
 * The state that a record tells, in its order: each fact with what it brings with it. What follows from a fact of
 * necessity is taken to be so: a part that is off or new had its joints open, a wheel that is off is not what carries
 * its axle; that somebody saw it carried is never taken to be so.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function recordedState(assembly: Assembly, facts: readonly RecordedFact[]): State {
  const work = workOf(assembly, { replace: [] }, nothing)
  const renewed = new Set(facts.flatMap((fact) => (fact.is === 'part' && fact.to === 'new' ? [fact.id] : [])))
  const state: Record<string, string> = {}
  for (const fact of facts) Object.assign(state, broughtBy(work, renewed, state, fact))
  for (const axle of assembly.axles) {
    const wheels = Object.values(assembly.parts).filter((part) => part.kind === 'wheel' && part.axle === axle)
    const isOff = wheels.some(({ id }) => ['off', 'freed', 'broken'].includes(factOf(state, keys.part(id))))
    if (isOff && (supports.onWheels as readonly string[]).includes(factOf(state, keys.support(axle))))
      state[keys.support(axle)] = 'on stands'
  }
  return state
}

function broughtBy(
  work: Work,
  renewed: ReadonlySet<string>,
  state: State,
  fact: RecordedFact,
): Readonly<Record<string, string>> {
  const { assembly } = work
  switch (fact.is) {
    case 'joint':
      return jointTo(work, state, assembly.joints[fact.id]!, fact.to, fact.fastener)
    case 'pin':
      return { [keys.pin(fact.id)]: 'new, legs bent' }
    case 'mark':
      return { [keys.mark(fact.id)]: fact.bodySideToo ? 'recorded, body side too' : 'recorded' }
    case 'compared':
      return { [keys.compared(fact.id)]: fact.when }
    case 'part':
      return partTo(work, renewed, state, fact)
    case 'support': {
      const stands = (supports.onWheels as readonly string[]).includes(fact.by)
      return {
        [keys.support(fact.axle)]: fact.by,
        ...(stands ? {} : { [keys.settled(fact.axle)]: 'no', [keys.clearance]: 'not seen' }),
        ...(fact.by === 'on stands, seen loaded' ? { [keys.chocks]: 'set' } : {}),
      }
    }
    case 'energy': {
      const hold = assembly.holds[fact.id]!
      const arm = keys.arm(whereOf(hold))
      const is = { 'held by the jack': 'jack under', 'let down': 'let down', raised: 'raised to ride height' }
      const byJack = hold.standIns.includes('jack under the arm')
      return {
        [keys.energy(fact.id)]: fact.to === 'raised' ? 'held by its set' : fact.to,
        ...(byJack ? { [arm]: is[fact.to as keyof typeof is] ?? 'free' } : {}),
      }
    }
    case 'line':
      return fact.to === 'capped'
        ? { [keys.cap(fact.id)]: 'on' }
        : { [keys.line(fact.id)]: 'bled, no leak', [keys.pedal]: 'firm' }
    case 'set': {
      const { axle, sets } = assembly.adjusters[fact.adjuster]!
      return {
        [keys.adjuster(fact.adjuster)]: 'set',
        [sets === 'toe' ? keys.toe(axle) : keys.camberAndCaster(axle)]: 'set',
      }
    }
    case 'read':
      return Object.fromEntries(
        assembly.axles.flatMap((axle) => [
          ...(fact.settled ? [[keys.settled(axle), 'yes']] : []),
          ...(fact.kind === 'as found' ? [] : [[keys.reading(axle), fact.kind]]),
        ]),
      )
    case 'plain':
      return { [fact.key]: fact.value }
  }
}

function jointTo(
  work: Work,
  state: State,
  joint: JointNode,
  to: string,
  fastener?: 'new',
): Readonly<Record<string, string>> {
  const undo = undoingActions(work, joint)
  const close = closingActions(work, joint)
  const { taper } = jointHabits[joint.kind]
  const isNew = fastener ? { [keys.fastener(joint.id)]: 'new' } : {}
  const was = jointStageOf(factOf(state, keys.joint(joint.id)))
  const [pin] = [keys.pin(joint.id)].filter(() => state[keys.pin(joint.id)] === 'new, legs bent' && was > 4)
  switch (to) {
    case 'cracked':
    case 'retained':
      return { ...undo.crack().effects, [keys.joint(joint.id)]: to }
    case 'open':
      return { ...undo.open().effects, ...(taper ? { [keys.taper(joint.id)]: 'parted' } : {}) }
    case 'started':
      return { ...close.start().effects, ...isNew }
    default: {
      // Whoever writes down only the last of it has done what comes before.
      const up = was > 4 ? {} : close.close().effects
      return { ...up, ...isNew, [keys.joint(joint.id)]: to, ...(pin ? { [pin]: 'new, legs bent' } : {}) }
    }
  }
}

function partTo(
  work: Work,
  renewed: ReadonlySet<string>,
  state: State,
  { id, to }: Extract<RecordedFact, { is: 'part' }>,
): Readonly<Record<string, string>> {
  const part = work.assembly.parts[id]!
  const wheelOff = part.kind === 'wheel' ? { [keys.wheelOff(part.axle!)]: 'off once' } : {}
  if (to === 'tied up') return { [keys.tied(id)]: 'yes' }
  if (to === 'in place') return { [keys.part(id)]: renewed.has(id) && wasOff(state, id) ? 'new' : 'fitted' }
  const open = jointsOf(work.assembly, id)
    .filter(
      (joint) => to !== 'freed' && to !== 'hung' && jointStageOf(factOf(state, keys.joint(joint.id))) < 3,
    )
    .filter(({ joins }) => joins.every((one) => one === id || !wasOff(state, one)))
  const spring =
    work.assembly.holds[id]?.loose && to !== 'new' ? { [keys.energy(id)]: energyOut(state, id) } : {}
  return {
    ...Object.assign({}, ...open.map((joint) => jointTo(work, state, joint, 'open'))),
    ...spring,
    ...wheelOff,
    ...(part.kind === 'caliper' ? { [keys.pedal]: 'to pump', [keys.pads(whereOf(part))]: 'moved' } : {}),
    [keys.part(id)]: to,
    ...(to === 'new' ? { [keys.compared(id)]: 'beside the old' } : {}),
  }
}

const wasOff = (state: State, id: string) =>
  ['off', 'freed', 'hung', 'broken', 'new'].includes(factOf(state, keys.part(id)))

/** A spring that is out is in a compressor, if that was said, or slack. */
const energyOut = (state: State, id: string) =>
  factOf(state, keys.energy(id)) === 'in the compressor' ? 'in the compressor' : 'let down'
