import {
  formatAngle,
  formatLength,
  formatTorque,
  type NewtonMetre,
  type Radian,
  type TorqueUnit,
} from '../quantity/index.ts'
import { castleOnScale } from './castle-on-scale.ts'
import { largestAdvance } from './castle-slot.ts'
import { checkJoint } from './check-joint.ts'
import { type Joint, positionsOf } from './joint.ts'
import { onScale } from './on-scale.ts'
import type { CastleSlot, SeatAndBackOff, StatedTorque } from './procedure.ts'
import { settingOn } from './setting-on.ts'
import { stagesOf } from './stages-of.ts'
import type { Step, StepFigure } from './step.ts'
import type { Adapter, TorqueWrench } from './torque-wrench.ts'

/** What the steps are worded for. @source definition */
export interface StepOptions {
  /** The wrench in the hand; null prints what the fastener is to receive. */
  readonly hand: { readonly wrench: TorqueWrench; readonly adapter: Adapter | null } | null
  /** Unit where no wrench is in the hand. */
  readonly unit?: TorqueUnit | undefined
  /** Castle nut: how far the slot is, once it has been seen. */
  readonly toSlot?: Radian | undefined
}

/**
 * The steps of a joint in order: what the person does, hears and records, with every torque on the scale of the wrench in
 * the hand.
 *
 * @throws {Refusal} `outside-range`, `no-mark`, `no-lever` when the wrench cannot give it; `wrong-joint`, `bad-stages`, `bad-range`, `bad-count`, `above-proof`, `unknown-strength`, `not-positive`, `not-finite`
 * @source common practice, no source; FAA AC 43.13-1B, par. 7-40 f, for castle nuts; docs/methods/tightening-procedures.md
 * @example stepsOf(lowerBall, { hand: { wrench: longWrench, adapter: openEnd } }).map((step) => step.act) // ['run up', 'pull', 'to slot', 'pin']
 */
export function stepsOf(joint: Joint, options: StepOptions): readonly Step[] {
  checkJoint(joint)
  const { procedure } = joint
  const before = [...(joint.singleUse ? [fit] : []), runUp]
  const body =
    procedure.kind === 'castle slot'
      ? castle(procedure, options)
      : procedure.kind === 'seat and back off'
        ? hub(procedure, options)
        : procedure.kind === 'hand snug'
          ? [snug]
          : stages(joint, options)
  const where = positionsOf(joint)
  const caution = where.length === 0 ? null : `Only ${where.map((one) => places[one]).join(', ')}.`
  const clamping = body.map((step) =>
    step.act === 'pin' || step.act === 'end float'
      ? step
      : { ...step, caution: joined(caution, step.caution) },
  )
  return [...before, ...clamping]
}

const places = {
  'ride height': 'at ride height',
  'wheels straight': 'with wheels straight',
  'on the ground': 'on the ground',
  'after the last move': 'after the last move',
} as const

const joined = (a: string | null, b: string | null) => (a !== null && b !== null ? `${a} ${b}` : (a ?? b))

const plain = { hearing: null, caution: null, figures: [] } as const
const fit: Step = {
  ...plain,
  act: 'fit',
  doing: 'Fit a new fastener; it is for one use.',
  recording: 'New fastener fitted.',
}
const runUp: Step = {
  ...plain,
  act: 'run up',
  doing: 'Run it up by hand, threads clean and in the stated condition, until the parts touch.',
  recording: 'Run up.',
  caution: 'Run up is not final.',
}
const snug: Step = {
  ...plain,
  act: 'snug',
  doing: 'Hand snug: until it sits, no further.',
  recording: 'Snug.',
}
const pin: Step = { ...plain, act: 'pin', doing: 'New pin in, legs bent.', recording: 'New pin in.' }

function stages(joint: Joint, options: StepOptions): readonly Step[] {
  const all = stagesOf(joint)
  return all.map((stage, i): Step => {
    const count = all.length > 1 ? `Stage ${i + 1} of ${all.length}: ` : ''
    if (stage.by === 'turn')
      return {
        ...plain,
        act: 'turn',
        doing: `${count}mark head and part, turn forward by ${degrees(stage.angle)}.`,
        recording: 'The whole turn.',
        caution: 'Not pulled again afterwards: checked by mark and record.',
        figures: [angleFigure('forward', stage.angle)],
      }
    return pull(count, stage, all.length > 1 ? withinReach(stage, options) : options)
  })
}

/** A stage that this wrench does not reach is worded for the fastener: it takes another wrench. */
function withinReach({ torque }: StatedTorque, options: StepOptions): StepOptions {
  if (options.hand === null) return options
  const { wrench, adapter } = options.hand
  const setting = settingOn(wrench, adapter, torque)
  const reached = setting >= wrench.scale.low && setting <= wrench.scale.high
  return reached ? options : { hand: null, unit: wrench.unit }
}

function pull(count: string, stated: StatedTorque, options: StepOptions): Step {
  const figure = torqueFigure('torque', stated, options)
  return {
    ...plain,
    act: 'pull',
    doing: `${count}pull slowly at the middle of the grip to ${shown(figure, options)}.`,
    hearing: options.hand === null ? null : heard(options.hand.wrench),
    recording: 'Torque, wrench and adapter.',
    figures: [figure],
  }
}

function castle(procedure: CastleSlot, options: StepOptions): readonly Step[] {
  const { floor, ceiling } = procedure
  const marks = options.hand === null ? null : castleOnScale({ floor, ceiling, ...options.hand })
  const low: StepFigure = { label: 'floor', onWrench: marks?.floor ?? null, atFastener: floor, angle: null }
  const high: StepFigure = {
    label: 'ceiling',
    onWrench: marks?.ceiling ?? null,
    atFastener: ceiling,
    angle: null,
  }
  const hearing = options.hand === null ? null : heard(options.hand.wrench)
  const turn = options.toSlot ?? largestAdvance(procedure)
  return [
    {
      act: 'pull',
      doing: `Pull to the floor, ${shown(low, options)}, and stop there.`,
      hearing,
      recording: 'Floor reached.',
      caution: null,
      figures: [low],
    },
    {
      act: 'to slot',
      doing: `Reset to the ceiling, ${shown(high, options)}, and turn forward to the slot, ${options.toSlot === undefined ? 'at most ' : ''}${degrees(turn)}.`,
      hearing: hearing === null ? null : 'Nothing: a click before the slot means stop.',
      recording: 'The turn, and whether it clicked.',
      caution: 'Never back. A click before the slot: stop, other nut or washer.',
      figures: [high, angleFigure('forward', turn)],
    },
    pin,
  ]
}

function hub({ seat, back, bringUpTo, endFloat }: SeatAndBackOff, options: StepOptions): readonly Step[] {
  const first = torqueFigure('torque', { torque: seat }, options)
  const low = bringUpTo === null ? options : withinReach({ torque: bringUpTo }, options)
  const again = bringUpTo === null ? null : torqueFigure('torque', { torque: bringUpTo }, low)
  const hearing = options.hand === null ? null : heard(options.hand.wrench)
  return [
    {
      act: 'seat',
      doing: `Turn the hub by hand and pull to ${shown(first, options)}.`,
      hearing,
      recording: 'Seated, hub turning.',
      caution: 'This nut is backed off afterwards: left at this value the bearings burn.',
      figures: [first],
    },
    {
      ...plain,
      act: 'back off',
      doing: `Back off by ${degrees(back.least)} to ${degrees(back.most)}.`,
      recording: 'The turn back.',
      caution: 'With a spanner, not with the torque wrench.',
      figures: [angleFigure('back', back.least), angleFigure('back', back.most)],
    },
    ...(again === null
      ? []
      : [
          {
            ...plain,
            act: 'bring up' as const,
            doing: `Bring it up to ${shown(again, low)}.`,
            hearing: low.hand === null ? null : hearing,
            recording: 'Brought up.',
            figures: [again],
          },
        ]),
    ...(endFloat === null
      ? []
      : [
          {
            ...plain,
            act: 'end float' as const,
            doing: `Read the end float on a dial: ${millimetres(endFloat.low)} to ${millimetres(endFloat.high)}.`,
            recording: 'The end float.',
          },
        ]),
    pin,
  ]
}

function torqueFigure(
  label: 'torque',
  { torque, floor, ceiling }: StatedTorque,
  { hand }: StepOptions,
): StepFigure {
  if (hand === null) return { label, onWrench: null, atFastener: torque, angle: null }
  const { wrench, adapter } = hand
  const on = (wanted: NewtonMetre | undefined) =>
    wanted === undefined ? undefined : settingOn(wrench, adapter, wanted)
  const mark = onScale({
    setting: settingOn(wrench, adapter, torque),
    scale: wrench.scale,
    unit: wrench.unit,
    floor: on(floor),
    ceiling: on(ceiling),
  })
  return { label, onWrench: mark, atFastener: torque, angle: null }
}

const angleFigure = (label: 'forward' | 'back', angle: Radian): StepFigure => ({
  label,
  onWrench: null,
  atFastener: null,
  angle,
})

/** "75 N·m on wrench 2 with the 40 mm adapter", or the fastener's value where no wrench is in the hand. */
function shown({ onWrench, atFastener }: StepFigure, { hand, unit = 'N·m' }: StepOptions): string {
  if (hand === null || onWrench === null) return formatTorque(atFastener!, { unit, digits: 0 })
  const { wrench, adapter } = hand
  const mark = formatTorque(onWrench, { unit: wrench.unit, digits: whole(onWrench, wrench) ? 0 : 1 })
  return `${mark} on ${wrench.name}${adapter === null ? '' : ` with ${adapter.name}`}`
}

/** A scale of whole units prints without decimals. */
const whole = (mark: NewtonMetre, { unit }: TorqueWrench) =>
  formatTorque(mark, { unit, digits: 1 }).includes('.0')

const heard = ({ kind }: TorqueWrench) => (kind.startsWith('II') ? 'One click.' : 'The pointer at the mark.')
const degrees = (angle: Radian) => formatAngle(angle, { unit: '°', digits: 0 })
const millimetres = (value: Parameters<typeof formatLength>[0]) =>
  formatLength(value, { unit: 'mm', digits: 2 })
