import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  deg,
  deservedPlaces,
  exactText,
  formatAngle,
  formatDistance,
  formatForce,
  formatLength,
  formatMass,
  formatMeasured,
  formatPercent,
  formatPressure,
  formatStiffness,
  formatTorque,
  formatTurns,
  inch,
  kilogram,
  metre,
  metricUnits,
  mm,
  Nm,
  NmPerRad,
  newton,
  parseAngle,
  parseDistance,
  parseForce,
  parseLength,
  parseMass,
  parsePercent,
  parsePressure,
  parseStiffness,
  parseTorque,
  parseTurns,
  pascal,
  rad,
  turn,
  usUnits,
} from '../../../src/quantity/index.ts'
import { law, near } from '../../support/law.ts'

const text = (got: string, want: string) => test(`prints ${want}`, () => expect(got).toBe(want))

// QU7: the place comes from the spread.
text(formatAngle(deg(-0.9234), { unit: '°', spread: deg(0.12) }), '−0.92°')
text(formatAngle(deg(-0.9234), { unit: '°', spread: deg(0.3) }), '−0.9°')
text(formatAngle(deg(-0.9234), { unit: '°', spread: deg(0.29) }), '−0.92°')
text(formatAngle(deg(2.5), { unit: '°′', spread: deg(0.12) }), '2°30′')
text(formatAngle(deg(2.5), { unit: '°′', spread: deg(0.004) }), '2°30.00′')
text(formatTorque(Nm(187.4), { unit: 'N·m', spread: 7.5 }), '187 N·m')
text(formatTorque(Nm(187.4), { unit: 'N·m', spread: 35 }), '190 N·m')
text(formatMass(kilogram(1523), { unit: 'kg', spread: 120 }), '1520 kg')
// QU9: zero has no sign.
text(formatAngle(deg(-0.004), { unit: '°', digits: 2 }), '0.00°')
text(formatAngle(deg(0.004), { unit: '°', digits: 2, sign: true }), '0.00°')
text(formatAngle(rad(-0), { unit: '°′', digits: 0, sign: true }), '0°00′')
text(formatAngle(deg(-0.006), { unit: '°', digits: 2 }), '−0.01°')
text(formatAngle(deg(0.92), { unit: '°', digits: 2, sign: true }), '+0.92°')
text(formatTurns(turn(-0.01), { unit: 'turn fraction' }), '0 turns')
text(formatMass(kilogram(4), { unit: 'kg', spread: 120 }), '0 kg')
// QU11: minutes and fractions.
text(formatAngle(deg(-0.25), { unit: '°′', digits: 0 }), '−0°15′')
text(formatAngle(deg(0.9999), { unit: '°′', digits: 0 }), '1°00′')
text(formatAngle(deg(-1.08), { unit: '°′', digits: 1 }), '−1°04.8′')
text(formatAngle(deg(-0.25), { unit: '′', digits: 0 }), '−15′')
text(formatTurns(turn(5 / 12), { unit: 'turn fraction' }), '5/12 turn')
text(formatTurns(turn(0.5), { unit: 'turn fraction' }), '1/2 turn')
text(formatTurns(turn(1), { unit: 'turn fraction' }), '1 turn')
text(formatTurns(turn(-1.5), { unit: 'turn fraction' }), '−1 1/2 turns')
text(formatTurns(turn(1 / 3), { unit: 'turn fraction', denominators: [4, 6] }), '1/3 turn')
text(formatTurns(turn(1 / 16), { unit: 'turn fraction', denominators: [8, 4] }), '0 turns')
text(formatTurns(turn(0.4), { unit: 'turn', spread: 0.04 }), '0.40 turn')
text(formatLength(inch(3 / 32), { unit: 'in fraction' }), '3/32 in')
text(formatLength(inch(-1.25), { unit: 'in fraction', denominators: [16] }), '−1 1/4 in')
text(formatDistance(metre(125e6), { unit: 'km', digits: 0 }), '125\u00a0000 km')
text(formatStiffness(NmPerRad(1.9 / deg(1)), { unit: 'N·m/°', spread: 0.5 / deg(1) }), '1.9 N·m/°')
text(formatPercent(0.923, { digits: 0 }), '92 %')

test('QU7 value and spread stop at the same place', () => {
  const shown = (value: number, halfWidth: number) =>
    formatMeasured({ value: deg(value), halfWidth: deg(halfWidth), kind: 'angle', unit: '°' })
  expect(shown(-0.9234, 0.12)).toEqual({ text: '−0.92°', spread: '± 0.12°' })
  expect(shown(3.14, 0.34)).toEqual({ text: '3.1°', spread: '± 0.3°' })
  expect(shown(3.14, 0.096)).toEqual({ text: '3.14°', spread: '± 0.10°' })
  expect(shown(3.14, 0.94)).toEqual({ text: '3.1°', spread: '± 0.9°' })
  expect(shown(3.14, 0.0299)).toEqual({ text: '3.140°', spread: '± 0.030°' })
})
test('QU7 an exact value has no spread', () => {
  const exact = formatMeasured({ value: mm(12), halfWidth: 0, kind: 'length', unit: 'mm', digits: 1 })
  expect(exact).toEqual({ text: '12.0 mm', spread: '' })
})

law(
  'QU7 the noise of converting units changes no digit',
  fc.integer({ min: -2000, max: 2000 }),
  (hundredths) => {
    // Halves of the last printed place, where a last bit of noise would tip the rounding.
    const halfway = (2 * hundredths + 1) / 200
    const plain = formatTorque(Nm(halfway), { unit: 'N·m', digits: 2 })
    const shown = formatAngle(deg(halfway), { unit: '°', digits: 2 })
    return shown.slice(0, -1) === plain.slice(0, -' N·m'.length)
  },
)

/** Spreads over eight decades. */
const anySpread = fc.double({ min: -5, max: 3, noNaN: true }).map((power) => 10 ** power)
law('QU7 one or two digits of the spread, never less than half lost', anySpread, (spread) => {
  const place = 10 ** -deservedPlaces(spread)
  const units = spread / place
  return units > 2.9999 && units < 30.0001
})
law('QU7 what is printed of a spread is within a sixth of it', anySpread, (spread) => {
  const { spread: shown } = formatMeasured({ value: 0, halfWidth: spread, kind: 'length', unit: 'm' })
  return near(Number.parseFloat(shown.slice(2).replace(/\u00a0/g, '')), spread, { rel: 1 / 6 })
})

/** SI size of one of the unit, and printing and reading in it. */
interface Way {
  readonly name: string
  readonly one: number
  readonly print: (value: number, digits: number) => string
  readonly read: (text: string) => number
  readonly signed?: boolean
}
const ways: readonly Way[] = [
  ...(['mm', 'cm', 'm', 'in', 'ft', 'thou', 'µm'] as const).map((unit) => ({
    name: unit,
    one: parseLength(`1 ${unit}`),
    print: (value: number, digits: number) => formatLength(metre(value), { unit, digits }),
    read: (t: string) => parseLength(t),
  })),
  ...(['°', '°′', '′', 'rad', 'mrad'] as const).map((unit) => ({
    name: unit,
    one: parseAngle(`1 ${unit === '°′' ? '′' : unit}`),
    print: (value: number, digits: number) => formatAngle(rad(value), { unit, digits }),
    read: (t: string) => parseAngle(t),
  })),
  ...(['N·m', 'lbf·ft', 'lbf·in', 'ozf·in', 'kgf·m', 'kgf·cm'] as const).map((unit) => ({
    name: unit,
    one: parseTorque(`1 ${unit}`),
    print: (value: number, digits: number) => formatTorque(Nm(value), { unit, digits }),
    read: (t: string) => parseTorque(t),
  })),
  ...(['N', 'kN', 'lbf', 'kgf'] as const).map((unit) => ({
    name: unit,
    one: parseForce(`1 ${unit}`),
    print: (value: number, digits: number) => formatForce(newton(value), { unit, digits }),
    read: (t: string) => parseForce(t),
  })),
  ...(['kPa', 'bar', 'psi', 'MPa', 'ksi'] as const).map((unit) => ({
    name: unit,
    one: parsePressure(`1 ${unit}`),
    print: (value: number, digits: number) => formatPressure(pascal(value), { unit, digits }),
    read: (t: string) => parsePressure(t),
  })),
  ...(['kg', 'lb'] as const).map((unit) => ({
    name: unit,
    one: parseMass(`1 ${unit}`),
    print: (value: number, digits: number) => formatMass(kilogram(Math.abs(value)), { unit, digits }),
    read: (t: string) => parseMass(t),
    signed: false,
  })),
  ...(['N·m/°', 'N·m/rad', 'lbf·in/°'] as const).map((unit) => ({
    name: unit,
    one: parseStiffness(`1 ${unit}`),
    // A stiffness is above zero: never printed as nothing.
    print: (value: number, digits: number) =>
      formatStiffness(NmPerRad(Math.abs(value) + parseStiffness(`1 ${unit}`)), { unit, digits }),
    read: (t: string) => parseStiffness(t) - parseStiffness(`1 ${unit}`),
    signed: false,
  })),
  {
    name: 'turn',
    one: 1,
    print: (value, digits) => formatTurns(turn(value), { unit: 'turn', digits }),
    read: (t) => parseTurns(t),
  },
  {
    name: '%',
    one: 0.01,
    print: (value, digits) => formatPercent(value, { digits }),
    read: (t) => parsePercent(t),
  },
]
for (const { name, one, print, read, signed = true } of ways)
  law(
    `QU10 ${name}: what is printed reads back within half a digit`,
    fc.record({
      count: fc.oneof(
        fc.double({ min: -3000, max: 3000, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.constantFrom(0, -0, 0.5, -0.5, 59.99, -59.5, 999.95),
      ),
      digits: fc.integer({ min: 0, max: 5 }),
    }),
    ({ count, digits }) => {
      const value = count * one
      const printed = print(value, digits)
      if (/^[−+]/.test(printed) && !/[1-9]/.test(printed)) throw new Error(`signed zero: ${printed}`)
      const half = (0.5 * one) / 10 ** digits
      return near(read(printed), signed ? value : Math.abs(value), {
        abs: half * (1 + 1e-6) + 1e-12 * one * 3000,
      })
    },
    { runs: 300 },
  )
for (const unit of ['km', 'mi', 'm'] as const)
  law(
    `QU10 ${unit}: what is printed reads back within half a digit`,
    // Three decimals of a distance have two readings and are not printed here.
    fc.record({ count: fc.double({ min: 0, max: 3e5, noNaN: true }), digits: fc.constantFrom(0, 1, 2, 4) }),
    ({ count, digits }) => {
      const one = parseDistance(`1 ${unit}`)
      const printed = formatDistance(metre(count * one), { unit, digits })
      return near(parseDistance(printed), count * one, {
        abs: (0.5 * one * (1 + 1e-6)) / 10 ** digits + 1e-6,
      })
    },
  )

law(
  'QU11 the nearest fraction reads back within half a part, in lowest terms',
  fc.record({
    turns: fc.double({ min: -6, max: 6, noNaN: true }),
    under: fc.constantFrom(4, 6, 8, 12, 16, 32),
  }),
  ({ turns, under }) => {
    const printed = formatTurns(turn(turns), { unit: 'turn fraction', denominators: [under] })
    const parts = /(\d+)\/(\d+)/.exec(printed)
    const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b))
    if (parts && common(Number(parts[1]), Number(parts[2])) !== 1) return false
    return near(parseTurns(printed), turns, { abs: 0.5 / under + 1e-12 })
  },
)
law(
  'QU11 inches and a fraction read back within half a part',
  fc.double({ min: -40, max: 40, noNaN: true }),
  (inches) =>
    near(parseLength(formatLength(inch(inches), { unit: 'in fraction' })), inch(inches), {
      abs: inch(0.5 / 32) + 1e-12,
    }),
)
law('QU11 minutes printed stay below 60', fc.double({ min: -30, max: 30, noNaN: true }), (degrees) => {
  const printed = formatAngle(deg(degrees), { unit: '°′', digits: 0 })
  return Number(/°(\d\d)′$/.exec(printed)?.[1] ?? 99) < 60
})

law(
  'QU12 a file’s text reads back as the same number or its neighbour',
  fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 }),
    fc.constantFrom(0, 1e-300, -1e9),
  ),
  (value) => {
    const back = [
      parseLength(exactText({ value, kind: 'length', unit: 'mm' })),
      parseAngle(exactText({ value, kind: 'angle', unit: '°' })),
      parseTorque(exactText({ value, kind: 'torque', unit: 'lbf·ft' })),
      parseDistance(exactText({ value: Math.abs(value), kind: 'distance', unit: 'km' })),
    ]
    return back.every((read, i) =>
      near(read, i === 3 ? Math.abs(value) : value, { rel: Number.EPSILON, abs: 1e-300 }),
    )
  },
)
law(
  'QU12 what was typed in hundredths is written as it was typed',
  fc.integer({ min: -99999, max: 99999 }),
  (hundredths) =>
    exactText({ value: mm(hundredths / 100), kind: 'length', unit: 'mm' }) === `${hundredths / 100} mm`,
)
test('QU12 a distance in kilometres with three decimals has one reading', () => {
  expect(exactText({ value: 1234, kind: 'distance', unit: 'km' })).toBe('1.2340 km')
})

test('QU13 both unit choices print every kind', () => {
  const all = (u: typeof metricUnits) => [
    formatLength(mm(25.4), { unit: u.length, digits: 1 }),
    formatAngle(deg(1), { unit: u.angle, digits: 1 }),
    formatTorque(Nm(100), { unit: u.torque, digits: 0 }),
    formatPressure(pascal(220632), { unit: u.pressure, digits: 0 }),
    formatMass(kilogram(1000), { unit: u.mass, digits: 0 }),
    formatDistance(metre(80000), { unit: u.distance, digits: 0 }),
  ]
  expect(all(metricUnits)).toEqual(['25.4 mm', '1.0°', '100 N·m', '221 kPa', '1000 kg', '80 km'])
  expect(all(usUnits)).toEqual(['1.0 in', '1.0°', '74 lbf·ft', '32 psi', '2205 lb', '50 mi'])
})
