import { formatTorque, metre, type NewtonMetre, Nm, rad } from '../quantity/index.ts'
import type { Act, ActRecord, JointState, Now } from './act.ts'
import { checkWrench } from './check-wrench.ts'
import { conditionWarning } from './condition-warning.ts'
import { fastenRefusal } from './fasten-refusal.ts'
import { type Joint, type Position, positionsOf, rubberPosition } from './joint.ts'
import { onScale } from './on-scale.ts'
import type { StatedTorque } from './procedure.ts'
import { settingOn } from './setting-on.ts'
import type { WrenchInHand } from './torque-received.ts'
import { torqueThrough } from './wrench-setting.ts'

const why: Readonly<Record<Position, string>> = {
  'ride height':
    'Made final anywhere else, a bonded bush stays twisted, tears early and holds the height off. Bring the suspension to ride height and record the height first.',
  'wheels straight':
    'Made final with the wheels turned, the rubber pulls the steering to that side for life. Put the wheels straight ahead first.',
  'on the ground': 'Lower the vehicle on its wheels first.',
  'after the last move': 'It stays run up until the last move is made and read.',
}

/** Refuses where the joint may not be tightened as it stands; `last` is the pull that makes it final. */
export function inPosition(joint: Joint, { positions }: Now, last: boolean): void {
  const needed = last ? positionsOf(joint) : [rubberPosition[joint.rubber]].filter((one) => one !== null)
  const missing = needed.find((one) => !positions.includes(one))
  if (missing === undefined) return
  throw fastenRefusal({
    code: 'wrong-position',
    at: missing,
    given: positions.join(', ') || 'none recorded',
    sentence: `${joint.name} is made final only ${missing === 'ride height' ? 'at ride height' : missing === 'wheels straight' ? 'with wheels straight' : missing}, and that is not recorded.`,
    remedy: why[missing],
  })
}

/** A single-use fastener is recorded as new before it is pulled. */
export function freshFastener(joint: Joint, { fastener }: JointState): void {
  if (!joint.singleUse || fastener === 'new') return
  throw fastenRefusal({
    code: 'used-before',
    at: joint.name,
    given: fastener,
    sentence:
      fastener === 'used'
        ? `The fastener of ${joint.name} is for one use, and this one has been pulled before.`
        : `The fastener of ${joint.name} is for one use, and nobody recorded a new one.`,
    remedy: 'Fit a new one and record it.',
  })
}

/** A share of a step, or of a torque, that is the machine's rounding. */
const ROUNDING = 1e-9

/** The wrench may be used and stands where this torque asks for; the torque it gives and what to say. */
export function pulled(
  joint: Joint,
  { torque, floor, ceiling }: StatedTorque,
  { wrench, adapter, setting }: WrenchInHand,
  now: Now,
): { readonly torque: NewtonMetre; readonly warnings: readonly string[] } {
  const warnings = [...checkWrench({ wrench, setting, today: now.today, uncalibrated: now.uncalibrated })]
  const given = torqueThrough({
    setting,
    reach: wrench.reach,
    offset: adapter?.offset ?? metre(0),
    angle: adapter?.angle ?? rad(0),
  })
  const exact = settingOn(wrench, adapter, torque)
  const near = Math.abs(setting - exact) <= wrench.scale.step * (1 / 2 + ROUNDING)
  const slack = ROUNDING * torque
  const inside =
    (floor === undefined || given >= floor - slack) && (ceiling === undefined || given <= ceiling + slack)
  if (!inside || (!near && (floor === undefined || ceiling === undefined))) {
    const say = (value: number) => formatTorque(Nm(value), { unit: wrench.unit, digits: 1 })
    const on = (wanted: NewtonMetre | undefined) => wanted && settingOn(wrench, adapter, wanted)
    const mark = onScale({
      setting: exact,
      scale: wrench.scale,
      unit: wrench.unit,
      floor: on(floor),
      ceiling: on(ceiling),
    })
    throw fastenRefusal({
      code: 'wrong-setting',
      at: 'wrench',
      given: say(setting),
      sentence: `Set to ${say(setting)}, ${wrench.name}${adapter ? ` with ${adapter.name}` : ''} gives ${joint.name} ${say(given)}, not ${floor !== undefined && ceiling !== undefined ? `${say(floor)} to ${say(ceiling)}` : say(torque)}.`,
      remedy: `Set it to ${say(mark)}.`,
    })
  }
  const differs = conditionWarning({ stated: joint.condition, found: now.condition })
  return { torque: given, warnings: differs === null ? warnings : [...warnings, differs] }
}

/** The state after an act, with its record. */
export function recorded(
  state: JointState,
  act: Act,
  now: Now,
  next: Pick<JointState, 'stage'> & Partial<JointState>,
  facts: Partial<ActRecord> & { readonly warnings?: readonly string[] } = {},
): JointState {
  const { warnings = [], ...more } = facts
  const hand = 'with' in act ? act.with : null
  const record: ActRecord = {
    act: act.act,
    today: now.today,
    wrench: hand?.wrench.name ?? null,
    adapter: hand?.adapter?.name ?? null,
    setting: hand?.setting ?? null,
    torque: null,
    angle: 'angle' in act ? act.angle : null,
    ...more,
  }
  return {
    ...state,
    ...next,
    records: [...state.records, record],
    warnings: [...new Set([...state.warnings, ...warnings])],
  }
}

/** The act cannot come now. */
export const outOfOrder = (joint: Joint, { stage }: JointState, act: Act, remedy: string) =>
  fastenRefusal({
    code: 'out-of-order',
    at: joint.name,
    given: act.act,
    sentence: `“${act.act}” cannot come while ${joint.name} is ${stage}.`,
    remedy,
  })

/** The act belongs to another kind of joint. */
export const wrongJoint = (joint: Joint, act: Act) =>
  fastenRefusal({
    code: 'wrong-joint',
    at: joint.name,
    given: act.act,
    sentence: `“${act.act}” is no step of ${joint.name}, ${joint.kind === 'bolted' ? 'a bolted joint' : joint.kind === 'tapered stud' ? 'a tapered stud' : 'an adjustable taper-roller hub'} with the procedure “${joint.procedure.kind}”.`,
    remedy:
      act.act === 'back off'
        ? 'To begin again undo it with another tool and record that; backing off belongs to adjustable taper-roller hubs alone.'
        : 'Follow the steps of its own procedure.',
  })
