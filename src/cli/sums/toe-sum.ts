import { halfWidth, type Measured, propagate, rectangular } from '../../measure/index.ts'
import {
  formatMeasured,
  metre,
  parseAngle,
  parseLength,
  rad,
  toeAsLength,
  toeFromLength,
} from '../../quantity/index.ts'
import { BadInput } from '../files/outcome.ts'
import { lastDigit } from './last-digit.ts'
import { type Shown, shown } from './shown.ts'
import type { SumAnswer, SumTopic } from './sum-answer.ts'
import { withinOf } from './within.ts'

/** Toe as an angle or as a length at a diameter, either way. */
export const toeSum: SumTopic = {
  name: 'toe',
  about: 'toe as an angle, or as a length at a diameter',
  needs: ['diameter'],
  may: ['angle', 'length', 'within'],
  example: 'toe length="1.5 mm" diameter="402 mm"',
  work: (words) => {
    const diameter = parseLength(words.get('diameter')!, { at: 'diameter' })
    const [angle, length] = [words.get('angle'), words.get('length')]
    if ((angle === undefined) === (length === undefined))
      throw new BadInput(['Give the toe once: as angle="0.2°" or as length="1.5 mm".'])
    const across = { of: 'the diameter', usual: '2 mm', read: parseLength }
    const inches = /in|"|″/.test(words.get('diameter')!)
    if (angle !== undefined) {
      const toe = parseAngle(angle, { at: 'angle' })
      const half = lastDigit(angle, parseAngle)
      const { of, told } = withinOf(words.get('within'), {
        diameter: across,
        angle: {
          of: 'the angle',
          usual: `${+((half * 180) / Math.PI).toPrecision(3)}°`,
          by: 'half of the last digit that was typed',
          read: parseAngle,
        },
      })
      return answer(
        told,
        shown(
          'toe',
          propagate(
            ([d, t]) => toeAsLength({ toe: rad(t!), diameter: metre(d!) }),
            [rectangular(of.diameter, 'diameter', diameter), rectangular(of.angle, 'angle', toe)],
          ),
          inches ? { kind: 'length', unit: 'in', digits: 3 } : { kind: 'length', unit: 'mm' },
        ),
      )
    }
    const { of, told } = withinOf(words.get('within'), {
      diameter: across,
      reading: { of: 'each of the two readings, front and rear,', usual: '0.5 mm', read: parseLength },
    })
    const toe: Measured = propagate(
      ([d, front, rear]) =>
        toeFromLength({
          length: metre(parseLength(length!, { at: 'length' }) + rear! - front!),
          diameter: metre(d!),
        }),
      [
        rectangular(of.diameter, 'diameter', diameter),
        rectangular(of.reading, 'front'),
        rectangular(of.reading, 'rear'),
      ],
    )
    const { text, spread } = formatMeasured({
      value: toe.value,
      halfWidth: halfWidth(toe),
      digits: 1,
      kind: 'angle',
      unit: '°′',
    })
    return answer(
      told,
      shown('toe', toe, { kind: 'angle', unit: '°' }),
      `, which is ${text} ${spread}`.trimEnd(),
    )
  },
}

const answer = (told: readonly string[], toe: Shown, also = ''): SumAnswer => ({
  answer: [`toe ${toe.text}${also} (95 % interval)`],
  numbers: [toe],
  formula: 'length = diameter · sin toe (one wheel)',
  source: 'geometry; toe-in is rear minus front (US Army TM 5-3810-293)',
  spread: told,
  notes: [
    'Toe-in is plus. The total of an axle is the sum of its two wheels.',
    'Read at hub height: lower down the chord is shorter than the diameter, and toe reads too small.',
  ],
})
