import {
  formatAngle,
  formatDistance,
  formatLength,
  formatMass,
  formatPressure,
  formatTorque,
  parseAngle,
  parseDistance,
  parseLength,
  parseMass,
  parsePressure,
  parseTorque,
  Refusal,
} from '../../quantity/index.ts'
import { BadInput } from '../files/outcome.ts'
import type { SumTopic } from './sum-answer.ts'

type Kind = (text: string) => readonly string[]

const kinds: readonly Kind[] = [
  (text) => {
    const torque = parseTorque(text)
    return [
      formatTorque(torque, { unit: 'N·m', digits: 2 }),
      formatTorque(torque, { unit: 'lbf·ft', digits: 2 }),
      formatTorque(torque, { unit: 'lbf·in', digits: 1 }),
      formatTorque(torque, { unit: 'kgf·m', digits: 3 }),
    ]
  },
  (text) => {
    const length = parseLength(text)
    return [
      formatLength(length, { unit: 'mm', digits: 2 }),
      formatLength(length, { unit: 'm', digits: 4 }),
      formatLength(length, { unit: 'in', digits: 4 }),
    ]
  },
  (text) => {
    const angle = parseAngle(text)
    return [formatAngle(angle, { unit: '°', digits: 3 }), formatAngle(angle, { unit: '°′', digits: 1 })]
  },
  (text) => {
    const pressure = parsePressure(text)
    return [
      formatPressure(pressure, { unit: 'kPa', digits: 1 }),
      formatPressure(pressure, { unit: 'bar', digits: 3 }),
      formatPressure(pressure, { unit: 'psi', digits: 2 }),
    ]
  },
  (text) => {
    const mass = parseMass(text)
    return [formatMass(mass, { unit: 'kg', digits: 2 }), formatMass(mass, { unit: 'lb', digits: 2 })]
  },
  (text) => {
    const distance = parseDistance(text)
    return [
      formatDistance(distance, { unit: 'km', digits: 3 }),
      formatDistance(distance, { unit: 'mi', digits: 3 }),
    ]
  },
]

/** A quantity in the other units of its kind. */
export const unitsSum: SumTopic = {
  name: 'units',
  about: 'a quantity in the other units of its kind',
  needs: ['value'],
  may: [],
  example: 'units value="95 lbf·ft"',
  work: (words) => {
    const text = words.get('value')!
    const refused: Refusal[] = []
    for (const kind of kinds)
      try {
        return {
          answer: kind(text),
          formula: 'exact factors (1 in = 25.4 mm, 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s²)',
          source: 'NIST SP 811 (2008), Appendix B.8',
          notes: [],
        }
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
        refused.push(error)
      }
    if (refused.some(({ code }) => code === 'no-unit'))
      throw new BadInput([
        `“${text}” has no unit. Write it, such as ${text} N·m, ${text} mm, ${text}°, ${text} bar, ${text} kg or ${text} km.`,
      ])
    // what says more than "another kind" is the reason
    const told = refused.find(({ code }) => code !== 'wrong-kind' && code !== 'unknown-unit') ?? refused[0]!
    throw new BadInput([`${told.sentence} ${told.remedy}`])
  },
}
