import { centringChange } from '../../linkage/index.ts'
import { propagate, rectangular } from '../../measure/index.ts'
import { parseAngle, parseLength, rad } from '../../quantity/index.ts'
import { BadInput } from '../files/outcome.ts'
import { shown } from './shown.ts'
import { ratioOf, ratioWithin, sidedAngle, sizeOf, toSide } from './steering-words.ts'
import type { SumTopic } from './sum-answer.ts'
import { withinOf } from './within.ts'

const ends = ['behind', 'ahead'] as const

/** How far each tie rod turns so that the steering wheel stands straight; the total toe stays. */
export const steeringWheelSum: SumTopic = {
  name: 'steering-wheel',
  about: 'a steering wheel that stands off centre: how far to turn each tie rod',
  needs: ['off', 'ratio'],
  may: ['pitch', 'arm', 'rods', 'sleeve', 'within'],
  example: 'steering-wheel off="3° left" ratio=16 pitch="1.5 mm" arm="130 mm" rods=behind',
  work: (words) => {
    const off = sidedAngle(words.get('off')!, 'off')
    const ratio = ratioOf(words.get('ratio')!)
    const [pitch, arm] = [words.get('pitch'), words.get('arm')]
    if ((pitch === undefined) !== (arm === undefined))
      throw new BadInput([
        'Turns need both: pitch="1.5 mm" of the thread and arm="130 mm", steering axis to rod.',
      ])
    const rods = oneOf(words, 'rods', ends)
    const double = oneOf(words, 'sleeve', ['double'] as const) === 'double'
    const { of, told } = withinOf(words.get('within'), {
      off: { of: 'the steering wheel, by eye,', usual: '1°', read: parseAngle },
      ratio: ratioWithin,
      arm: { of: 'the arm', usual: '5 mm', read: parseLength },
    })
    const inputs = [rectangular(of.off, 'off', off), rectangular(of.ratio * ratio, 'ratio', ratio)]
    // the wheels as they would be read with the steering wheel held straight: off in opposite senses
    const change = ([o, r]: readonly number[]) => {
      const toe = rad(o! / r!)
      return centringChange({ toes: { left: toe, right: rad(-toe) }, thrust: rad(0) })
    }
    const wheels = shown('each front wheel', sizeOf(propagate((x) => change(x).left, inputs)), {
      kind: 'angle',
      unit: '°',
    })
    const { left } = change([off, ratio])
    const [more, less] = left > 0 ? ['left', 'right'] : ['right', 'left']
    const longer = rods === 'behind' ? more : less
    const turns =
      pitch === undefined || arm === undefined
        ? null
        : shown(
            'each tie rod',
            sizeOf(
              propagate(
                ([o, r, a]) => (change([o!, r!]).left * a!) / (aboveZero(pitch, 'pitch') * (double ? 2 : 1)),
                [...inputs, rectangular(of.arm, 'arm', aboveZero(arm, 'arm'))],
              ),
            ),
            { kind: 'turns', unit: 'turn' },
          )
    return {
      answer: [
        `each front wheel by ${wheels.text} (95 % interval): ${more} wheel towards toe-in, ${less} wheel towards toe-out`,
        ...(turns
          ? [
              `each tie rod by ${turns.text}: ${rods ? `${longer} rod longer, ${longer === 'left' ? 'right' : 'left'} rod shorter` : 'one longer, the other shorter'}`,
            ]
          : []),
      ],
      numbers: [wheels, ...(turns ? [turns] : [])],
      formula: `wheels = off / ratio${turns ? `; turns = wheels · arm / ${double ? '(2 · pitch), left-and-right thread' : 'pitch'}` : ''}`,
      source: 'own derivation: docs/methods/steering.md',
      spread: turns ? told : told.filter((line) => !line.startsWith('the arm')),
      notes: [
        `The vehicle runs straight while the steering wheel stands ${toSide(off)}. The total toe stays as it is: one side gives what the other takes.`,
        ...(turns && !rods
          ? [
              'Rod behind the axle: longer is toe-in; ahead of it: longer is toe-out. Say rods=behind or rods=ahead.',
            ]
          : []),
        'Mark the rods before, turn both alike, lock nuts last; then read toe again, since lock nuts move it. Unset toe means yard pace only.',
        'A rear axle that steers does the same: look at the thrust angle first ("sum thrust").',
      ],
    }
  },
}

function aboveZero(text: string, at: string): number {
  const length = parseLength(text, { at })
  if (length > 0) return length
  throw new BadInput([`${at} is “${text}”; it must be above zero. Measure it, and mind the unit.`])
}

function oneOf<T extends string>(
  words: ReadonlyMap<string, string>,
  name: string,
  known: readonly T[],
): T | undefined {
  const said = words.get(name)
  if (said === undefined) return undefined
  const found = known.find((one) => one === said)
  if (found) return found
  throw new BadInput([`${name} is “${said}”. Write ${known.map((one) => `${name}=${one}`).join(' or ')}.`])
}
