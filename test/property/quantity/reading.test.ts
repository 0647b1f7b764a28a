import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  deg,
  inch,
  inDegrees,
  lbfFt,
  lbfIn,
  mm,
  parseAngle,
  parseDistance,
  parseForce,
  parseLength,
  parseMass,
  parsePercent,
  parsePressure,
  parseStiffness,
  parseToe,
  parseTorque,
  parseTurns,
  Refusal,
  toeAsLength,
  toeFromLength,
} from '../../../src/quantity/index.ts'
import { law, near } from '../../support/law.ts'

/** Each text gives the value, to a few doubles. */
function alike(name: string, parse: (text: string) => number, rows: readonly (readonly [string, number])[]) {
  for (const [text, want] of rows)
    test(`${name}: ${text}`, () => {
      expect(near(parse(text), want, { rel: 1e-14, abs: 1e-18 })).toBe(true)
    })
}

const spelled = (value: number, ...texts: string[]) => texts.map((text) => [text, value] as const)

alike('QU3 torque', parseTorque, [
  ...spelled(
    190,
    '190 N·m',
    '190 Nm',
    '190 N m',
    '190Nm',
    '190 n.m.',
    '190 N-m',
    '190 N*m',
    '190 N⋅m',
    '190 NM',
  ),
  ...spelled(190, '190 newton metres', '190 newton-meters', '190\u00a0N·m', '190\u202fNm', ' 190  N m '),
  ...spelled(
    lbfFt(95),
    '95 lbf·ft',
    '95 ft-lb',
    '95 ft·lbf',
    '95 lb-ft',
    '95 ft lbs',
    '95 lbf ft',
    '95 ft.lb.',
  ),
  ...spelled(lbfFt(95), '95 foot-pounds', '95 pound-feet', '95 FT-LB', '95 ftlb', '95 ft - lb'),
  ...spelled(
    lbfIn(300),
    '300 lbf·in',
    '300 in-lb',
    '300 in-lbs',
    '300 inch-pounds',
    '300 lb in',
    '300 in.lb',
  ),
  ...spelled(lbfIn(1), '16 ozf·in', '16 in-oz', '16 oz·in'),
  ...spelled(
    9.80665,
    '1 kgf·m',
    '1 kgm',
    '1 mkg',
    '1 mkp',
    '1 kpm',
    '1 kg·m',
    '100 kgf·cm',
    '100 kgcm',
    '100 cmkg',
  ),
])
alike('QU3 length', parseLength, [
  ...spelled(
    mm(1.5),
    '1.5 mm',
    '1.5mm',
    '1.5 MM',
    '1.5 millimetres',
    '0.15 cm',
    '0.0015 m',
    '1500 µm',
    '1500 μm',
  ),
  ...spelled(
    inch(1.25),
    '1 1/4"',
    '1¼"',
    '1 ¼ in',
    '1-1/4 in.',
    '5/4 in',
    '1.25 inches',
    '1 1⁄4″',
    '1250 thou',
  ),
  ...spelled(inch(0.5), '½ in', '1/2"', '.5 in', '0,5 in', '0\' ½"'),
  ...spelled(inch(63), `5' 3"`, `5'3"`, `5'-3"`, '5 ft 3 in', '5 ft. 3 in.', '5′ 3″', '5’ 3”', `5' 3''`),
  ...spelled(inch(63.5), `5'-3 1/2"`, '5 ft 3½ in'),
])
alike('QU2 angle', (text) => inDegrees(parseAngle(text)), [
  ...spelled(
    0.25,
    `0°15'`,
    '0°15′',
    '0° 15 ′',
    "15'",
    '15′',
    '0.25°',
    '0,25 °',
    '+0.25 deg',
    '1/4°',
    '15 min',
    '0º15’',
  ),
  ...spelled(-0.25, `-0°15'`, '−0°15′', '–0° 15′', '-15′', '−0.25°', '- 15 minutes', '-900″', `-15'00"`),
  ...spelled(12.11, `12°06'36"`, '12°6′36″', `12°06'36''`, '12 deg 6 min 36 sec', '12°396"'),
])
alike('QU3 pressure', parsePressure, [
  ...spelled(
    240000,
    '240 kPa',
    '240 KPA',
    '2.4 bar',
    '2,4 bar',
    '0.24 MPa',
    '240000 Pa',
    '240 000 Pa',
    '0.24 N/mm²',
  ),
  ...spelled(98066.5, '1 kgf/cm²', '1 kg/cm2'),
  ...spelled(parsePressure('32 psi'), '32 lbf/in²', '32 lb/in2', '32 PSI'),
])
alike('QU3 mass', parseMass, [
  ...spelled(0.45359237, '1 lb', '1 lbs', '1 pound', '16 oz', '453.59237 g', '0.45359237 kg'),
  ...spelled(1500, '1500 kg', '1 500 kg', '1500,0 kilos'),
])
alike('QU3 force', parseForce, [...spelled(9.80665, '1 kgf', '1 kp', '9.80665 N', '0.00980665 kN')])
alike('QU3 distance', parseDistance, [
  ...spelled(80000, '80 km', '80 kilometres', '80000 m'),
  ...spelled(125e6, '125 000 km', '125000 km', '125\u202f000 km', '125.000,0 km', '125,000.0 km'),
  ...spelled(1234567e3, '1.234.567 km', '1,234,567 km', '1 234 567 km'),
])
alike('QU3 turns', (text) => parseTurns(text, { flatsPerTurn: 6 }), [
  ...spelled(5 / 12, '5/12 turn', '2.5 flats', '2½ flats'),
  ...spelled(1.5, '1 1/2 turns', '1½ turns', '1.5 turn', '1 turn 3 flats', '1.5 revolutions', '1.5 rev'),
])
alike('QU3 stiffness', parseStiffness, [
  ...spelled(1.9 / deg(1), '1.9 N·m/°', '1.9 Nm/deg', '1,9 N·m per degree', '1.9Nm/°', '1.9 N m / degree'),
  ...spelled(109, '109 N·m/rad'),
  ...spelled(lbfIn(17) / deg(1), '17 lbf·in/°', '17 in-lb per degree'),
])
alike('QU3 percent', parsePercent, spelled(0.4, '40 %', '40%', '40 percent', '40,0 per cent'))
alike('QU6 toe', parseToe, [
  ...spelled(deg(0.2), '0.2°', "12'", '12′', "0°12'", '12 min', '720 sec'),
  ...spelled(Math.asin(1.5 / 400), '1.5 mm @ 400 mm', '1.5 mm at 400 mm', '1,5mm@40cm', '0.15 cm @ 0.4 m'),
  ...spelled(Math.asin(1 / 240), '1/16" @ 15"', '1/16 in at 15 in', '1/16 in. @ 15 in.'),
  ...spelled(-Math.asin(1.5 / 400), '-1.5 mm @ 400 mm', '−1.5 mm @ 400 mm'),
])
test('QU6 the diameter of the text goes before the one of the caller', () => {
  expect(parseToe('1.5 mm', { diameter: mm(400) })).toBe(Math.asin(1.5 / 400))
  expect(parseToe('1.5 mm @ 400 mm', { diameter: mm(650) })).toBe(Math.asin(1.5 / 400))
})

law(
  'QU6 length of toe and back',
  fc.record({
    toe: fc.integer({ min: -20_000_000, max: 20_000_000 }).map((n) => n / 1e6),
    diameter: fc.double({ min: 0.2, max: 1, noNaN: true }),
  }),
  ({ toe, diameter }) => {
    const circle = mm(diameter * 1000)
    const length = toeAsLength({ toe: deg(toe), diameter: circle })
    return (
      Math.sign(length) === Math.sign(toe) &&
      near(inDegrees(toeFromLength({ length, diameter: circle })), toe, { abs: 1e-12 })
    )
  },
)

const minuses = ['-', '−', '–', '\u2010', '\u2011', '－'] as const
law(
  'QU4 every minus, every space, comma and point',
  fc.record({
    tenths: fc.integer({ min: 1, max: 99999 }),
    minus: fc.constantFrom(...minuses),
    space: fc.constantFrom('', ' ', '\u00a0', '\u202f', '  '),
    mark: fc.constantFrom('.', ','),
  }),
  ({ tenths, minus, space, mark }) =>
    parseLength(`${minus}${Math.floor(tenths / 10)}${mark}${tenths % 10}${space}mm`) === mm(-tenths / 10),
)
law(
  'QU4 marks between thousands',
  fc.record({
    whole: fc.integer({ min: 1000, max: 99_999_999 }),
    style: fc.constantFrom(',.', '.,', ' .', ' ,'),
  }),
  ({ whole, style }) => {
    const spaced = String(whole).replace(/\B(?=(\d{3})+$)/g, style[0]!)
    return near(parseLength(`${spaced}${style[1]}5 mm`), mm(whole + 0.5), { rel: 1e-15 })
  },
)
law(
  'QU2 the sign stands for the whole',
  fc.record({ degrees: fc.nat(90), minutes: fc.nat(59), seconds: fc.nat(59) }),
  ({ degrees, minutes, seconds }) => {
    const text = `${degrees}°${minutes}′${seconds}″`
    const up = parseAngle(text)
    return (
      parseAngle(`−${text}`) === (up === 0 ? 0 : -up) &&
      near(inDegrees(up), degrees + minutes / 60 + seconds / 3600, { abs: 1e-12 })
    )
  },
)

const parsers = [
  parseLength,
  parseDistance,
  parseAngle,
  parseTorque,
  parseForce,
  parsePressure,
  parseMass,
  parseTurns,
  parseToe,
  parseStiffness,
  parsePercent,
]
const scraps = [
  '1',
  '12',
  '.',
  ',',
  '-',
  ' ',
  '/',
  '°',
  "'",
  '"',
  '½',
  'mm',
  'in',
  'e9',
  '@',
  'N·m',
  '%',
  'turn',
  'km',
]
law(
  'QU8 any text gives a finite number, never −0, or a refusal',
  fc.oneof(
    fc.array(fc.constantFrom(...scraps), { maxLength: 7 }).map((parts) => parts.join('')),
    fc.string({ unit: 'binary' }),
  ),
  (text) => {
    for (const parse of parsers)
      try {
        const value = parse(text)
        if (!Number.isFinite(value) || Object.is(value, -0)) return false
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
      }
    return true
  },
  { runs: 3000 },
)
