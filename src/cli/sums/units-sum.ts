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

/** One unit of one kind: how a value is told in it, with a spread or with enough digits. */
type Told = (value: number, style: { spread: number } | { digits: number }) => string

/** A unit and what one of it is, SI. */
interface UnitTold {
  readonly one: number
  readonly told: Told
}
interface Kind {
  readonly read: (text: string) => number
  readonly units: readonly UnitTold[]
}

const kind = <Value extends number, Unit extends string>(
  read: (text: string) => Value,
  format: (value: Value, style: never) => string,
  units: readonly Unit[],
): Kind => ({
  read,
  units: units.map((unit) => ({
    one: read(unit === '°′' ? '1′' : `1 ${unit}`),
    told: (value, style) => (format as (value: number, style: object) => string)(value, { unit, ...style }),
  })),
})

const kinds: readonly Kind[] = [
  kind(parseTorque, formatTorque, ['N·m', 'lbf·ft', 'lbf·in', 'kgf·m']),
  kind(parseLength, formatLength, ['mm', 'm', 'in']),
  kind(parseAngle, formatAngle, ['°', '°′']),
  kind(parsePressure, formatPressure, ['kPa', 'bar', 'psi']),
  kind(parseMass, formatMass, ['kg', 'lb']),
  kind(parseDistance, formatDistance, ['km', 'mi']),
]

const significant = 5
const mostDigits = 6

/** Five figures, so that what is rounded off is below a ten-thousandth; the factors themselves are exact. */
const digitsFor = (inUnit: number): number =>
  inUnit === 0
    ? 0
    : Math.min(mostDigits, Math.max(0, significant - 1 - Math.floor(Math.log10(Math.abs(inUnit)))))

/** A quantity in the other units of its kind. */
export const unitsSum: SumTopic = {
  name: 'units',
  about: 'a quantity in the other units of its kind',
  needs: ['value'],
  may: ['within'],
  example: 'units value="95 lbf·ft"',
  work: (words) => {
    const text = words.get('value')!
    const within = words.get('within')
    const { value, units, read } = kindOf(text)
    const spread = within === undefined ? 0 : Math.abs(read(within))
    return {
      answer: units.map(({ one, told }) =>
        spread > 0
          ? `${told(value, { spread })} ± ${told(spread, { spread })}`
          : told(value, { digits: digitsFor(value / one) }),
      ),
      numbers: [],
      formula: 'exact factors (1 in = 25.4 mm, 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s²)',
      source: 'NIST SP 811 (2008), Appendix B.8',
      spread: [
        spread > 0
          ? `the value within ± ${within} (as given)`
          : 'none: the value as typed and exact factors, five figures; within="1 lbf·ft" converts a spread too',
      ],
      notes: [],
    }
  },
}

function kindOf(text: string): Kind & { readonly value: number } {
  const refused: Refusal[] = []
  for (const one of kinds)
    try {
      return { ...one, value: one.read(text) }
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
}
