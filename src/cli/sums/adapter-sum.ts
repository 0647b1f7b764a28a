import { torqueThrough, wrenchSetting } from '../../fasten/index.ts'
import { interval, type Measured, propagate, rectangular } from '../../measure/index.ts'
import {
  deg,
  formatMeasured,
  metre,
  mm,
  Nm,
  parseAngle,
  parseLength,
  parsePercent,
  parseTorque,
  rad,
} from '../../quantity/index.ts'
import type { SumTopic } from './sum-answer.ts'

/** How far the hand, the adapter and its angle are off when nobody says, half-widths. @source own choice */
const assumed = { hand: mm(20), offset: mm(1), angle: deg(5), accuracy: 0.04 } as const

/** The value to set on the wrench through an adapter, and what the fastener then receives. */
export const adapterSum: SumTopic = {
  name: 'adapter',
  about: 'wrench setting through an adapter at any angle',
  needs: ['torque', 'reach', 'offset'],
  may: ['angle', 'accuracy'],
  example: 'adapter torque="95 lbf·ft" reach="500 mm" offset="40 mm" angle="0°" accuracy="4 %"',
  work: (words) => {
    const torque = parseTorque(words.get('torque')!, { at: 'torque' })
    const reach = parseLength(words.get('reach')!, { at: 'reach' })
    const offset = parseLength(words.get('offset')!, { at: 'offset' })
    const angle = parseAngle(words.get('angle') ?? '0°', { at: 'angle' })
    const given = words.get('accuracy')
    const accuracy = given === undefined ? assumed.accuracy : parsePercent(given, { at: 'accuracy' })
    const setting = wrenchSetting({ torque, reach, offset, angle })
    const received = propagate(
      ([s, l, a, at]) =>
        torqueThrough({ setting: Nm(s!), reach: metre(l!), offset: metre(a!), angle: rad(at!) }),
      [
        rectangular(accuracy * setting, 'wrench', setting),
        rectangular(assumed.hand, 'hand', reach),
        rectangular(assumed.offset, 'offset', offset),
        rectangular(assumed.angle, 'angle', angle),
      ],
    )
    const shown = (value: Measured) => {
      const { low, high } = interval(value)
      const { text, spread } = formatMeasured({
        value: value.value,
        halfWidth: (high - low) / 2,
        kind: 'torque',
        unit: 'N·m',
      })
      return `${text} ${spread}`
    }
    const plain = formatMeasured({ value: setting, halfWidth: 0, digits: 1, kind: 'torque', unit: 'N·m' })
    return {
      answer: [
        `set the wrench to ${plain.text}`,
        `the fastener then receives ${shown(received)} (95 % interval)`,
      ],
      formula: 'setting = torque · reach / (reach + offset · cos angle)',
      source: 'US Army TM 9-254, fig. 4-6; docs/methods/wrench-adapter.md',
      notes: [
        'Angle: 0° straight ahead of the wrench, 90° square to it (no correction), 180° back towards the hand.',
        `${given === undefined ? 'Accuracy of the wrench taken as ±4 %. ' : ''}The hand within ±20 mm of the middle of the grip, the offset within ±1 mm, the angle within ±5°.`,
        'The torque itself comes from the maker’s service information.',
      ],
    }
  },
}
