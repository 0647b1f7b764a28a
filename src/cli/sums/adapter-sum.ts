import { torqueThrough, wrenchSetting } from '../../fasten/index.ts'
import { propagate, rectangular } from '../../measure/index.ts'
import { metre, Nm, parseAngle, parseLength, parsePercent, parseTorque, rad } from '../../quantity/index.ts'
import { BadInput } from '../files/outcome.ts'
import { shown, torqueUnitOf } from './shown.ts'
import type { SumTopic } from './sum-answer.ts'
import { withinOf } from './within.ts'

/** A setting known to no better than a tenth is no setting: the wrench itself is good for a twenty-fifth. @source own choice */
const doubtful = 10

/** The value to set on the wrench through an adapter, and what the fastener then receives. */
export const adapterSum: SumTopic = {
  name: 'adapter',
  about: 'wrench setting through an adapter at any angle',
  needs: ['torque', 'reach', 'offset'],
  may: ['angle', 'accuracy', 'within'],
  example: 'adapter torque="95 lbf·ft" reach="500 mm" offset="40 mm" angle="0°" accuracy="4 %"',
  work: (words) => {
    const torque = parseTorque(words.get('torque')!, { at: 'torque' })
    const reach = parseLength(words.get('reach')!, { at: 'reach' })
    const offset = parseLength(words.get('offset')!, { at: 'offset' })
    const angle = parseAngle(words.get('angle') ?? '0°', { at: 'angle' })
    const accuracy = words.get('accuracy')
    const { of, told } = withinOf(words.get('within'), {
      hand: { of: 'the hand from the middle of the grip', usual: '20 mm', read: parseLength },
      offset: { of: 'the offset', usual: '1 mm', read: parseLength },
      angle: { of: 'the angle of the adapter', usual: '5°', read: parseAngle },
    })
    const share = parsePercent(accuracy ?? '4 %', { at: 'accuracy' })
    if (share < 0)
      throw new BadInput([`accuracy is “${accuracy}”: how far a wrench may be off is not below nothing.`])
    const setting = wrenchSetting({ torque, reach, offset, angle })
    const lever = [
      rectangular(of.hand, 'hand', reach),
      rectangular(of.offset, 'offset', offset),
      rectangular(of.angle, 'angle', angle),
    ]
    // a spread may reach below nothing where there is hardly an offset: that is the other way round
    const at = (l: number, a: number, turn: number) => ({
      reach: metre(l),
      offset: metre(Math.abs(a)),
      angle: rad(a < 0 ? turn + Math.PI : turn),
    })
    const needed = propagate(([l, a, turn]) => wrenchSetting({ torque, ...at(l!, a!, turn!) }), lever)
    const received = propagate(
      ([s, l, a, turn]) => torqueThrough({ setting: Nm(s!), ...at(l!, a!, turn!) }),
      [rectangular(share * setting, 'wrench', setting), ...lever],
    )
    const typed = torqueUnitOf(words.get('torque')!)
    const units = [
      { kind: 'torque', unit: 'N·m' } as const,
      ...(typed ? [{ kind: 'torque', unit: typed } as const] : []),
    ]
    const settings = units.map((unit) => shown('setting', needed, { digits: 1, ...unit }))
    const torques = units.map((unit) => shown('torque received', received, { digits: 1, ...unit }))
    return {
      answer: [
        `set the wrench to ${settings.map(({ text }) => text).join(', ')}`,
        `the fastener then receives ${torques.map(({ text }) => text).join(', ')} (95 % interval)`,
      ],
      numbers: [...settings, ...torques],
      formula: 'setting = torque · reach / (reach + offset · cos angle)',
      source: 'US Army TM 9-254, fig. 4-6; docs/methods/wrench-adapter.md',
      spread: [
        `the wrench within ± ${accuracy ?? '4 %'} (${accuracy === undefined ? 'ISO 6789-1:2017 above 10 N·m, from memory' : 'as given'})`,
        ...told,
      ],
      notes: [
        ...(needed.value < doubtful * settings[0]!.within
          ? [
              'So little lever is left that nobody can set this well: turn the adapter, or take a longer wrench.',
            ]
          : []),
        'Set it to the nearest mark of its scale; never above a stated maximum.',
        'Angle: 0° straight ahead of the wrench, 90° square to it (no correction), 180° back towards the hand. Reach: from the wrench’s drive to the middle of the grip.',
        'The torque itself comes from the maker’s service information.',
      ],
    }
  },
}
