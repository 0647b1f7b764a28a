import {
  formatAngle,
  formatLength,
  parseAngle,
  parseLength,
  toeAsLength,
  toeFromLength,
} from '../../quantity/index.ts'
import { BadInput } from '../files/outcome.ts'
import type { SumTopic } from './sum-answer.ts'

/** Toe as an angle or as a length at a diameter, either way. */
export const toeSum: SumTopic = {
  name: 'toe',
  about: 'toe as an angle, or as a length at a diameter',
  needs: ['diameter'],
  may: ['angle', 'length'],
  example: 'toe length="1.5 mm" diameter="402 mm"',
  work: (words) => {
    const diameter = parseLength(words.get('diameter')!, { at: 'diameter' })
    const [angle, length] = [words.get('angle'), words.get('length')]
    if ((angle === undefined) === (length === undefined))
      throw new BadInput(['Give the toe once: as angle="0.2°" or as length="1.5 mm".'])
    const answer =
      length === undefined
        ? `${formatLength(toeAsLength({ toe: parseAngle(angle!, { at: 'angle' }), diameter }), { unit: 'mm', digits: 2 })} across ${formatLength(diameter, { unit: 'mm', digits: 0 })}`
        : formatAngle(toeFromLength({ length: parseLength(length, { at: 'length' }), diameter }), {
            unit: '°',
            digits: 3,
          })
    return {
      answer: [answer],
      formula: 'length = diameter · sin toe (one wheel)',
      source: 'geometry; toe-in is rear minus front (US Army TM 5-3810-293)',
      notes: ['Toe-in is plus. The total of an axle is the sum of its two wheels.'],
    }
  },
}
