import { expect, test } from 'vitest'
import {
  deg,
  deservedPlaces,
  exactText,
  formatAngle,
  formatLength,
  formatMeasured,
  formatTurns,
  inch,
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
  type Refusal,
  rad,
  toeAsLength,
  toeFromLength,
  turn,
} from '../../../src/quantity/index.ts'
import { refuses } from '../../support/law.ts'

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
for (const parse of parsers) {
  refuses('empty', () => parse(''), 'text')
  refuses('empty', () => parse(' \u00a0 '), 'text')
  refuses('no-unit', () => parse('12', { at: 'limits.camber' }), 'limits.camber')
  refuses('no-unit', () => parse('0'), 'text')
  refuses('not-a-number', () => parse('NaN °'), 'text')
}

refuses('ambiguous-number', () => parseLength('1,234 mm'))
refuses('ambiguous-number', () => parseTorque('-1,234 lbf·in'))
refuses('ambiguous-number', () => parseDistance('125.000 km'))
refuses('ambiguous-number', () => parseDistance('1,250 mi'))
refuses('ambiguous-number', () => parseToe('1,234 mm @ 400 mm'))
test('QU5 both readings stand in the sentence', () => {
  for (const [text, readings] of [
    ['1,234 mm', ['1.234 mm', '1234 mm']],
    ['−1,234 mm', ['-1.234 mm', '-1234 mm']],
  ] as const)
    try {
      parseLength(text)
      expect.unreachable()
    } catch (error) {
      for (const reading of readings) expect((error as Refusal).sentence).toContain(reading)
    }
})
test('QU5 beside an ambiguous number stands one that is not', () => {
  expect(parseLength('1,2345 mm')).toBe(mm(1.2345))
  expect(parseLength('0,123 mm')).toBe(mm(0.123))
  expect(parseLength('1234,567 mm')).toBe(mm(1234.567))
  expect(parseLength('1,23 mm')).toBe(mm(1.23))
  expect(parseLength('1.234 mm')).toBe(mm(1.234))
  expect(parseDistance('125.00 km')).toBe(125000)
})
test('QU5 no unit: the sentence says what would be understood', () => {
  for (const [parse, words] of [
    [parseLength, ['12 mm', '12 in']],
    [parseAngle, ['12°', '12′']],
    [parseTorque, ['12 N·m', '12 lbf·ft', '12 lbf·in']],
    [parseToe, ['12°', '12 mm @']],
    [parseTurns, ['12 turn']],
    [parsePercent, ['12 %']],
    [parseStiffness, ['N·m/°']],
  ] as const)
    try {
      parse('12')
      expect.unreachable()
    } catch (error) {
      for (const word of words) expect((error as Refusal).remedy).toContain(word)
    }
})

for (const text of [
  '5-7 mm',
  '5 ± 1 mm',
  '--5 mm',
  '1..5 mm',
  '1.5 1/2 in',
  '3/0 in',
  '1 5/4 in',
  '5, mm',
  '12.34.5 mm',
])
  refuses('not-a-number', () => parseLength(text))
for (const text of [
  '1.5 ft 3 in',
  '1 in 2 ft',
  '5 mm 3 in',
  '5 in 3 in',
  '1 ft .5 in',
  'mm',
  '+ mm',
  '12,34,567 mm',
])
  refuses('not-a-number', () => parseLength(text))
for (const text of ["0°-15'", "0.5°15'", `15"3'`, '1°1°', '∞°', '1/2°15′'])
  refuses('not-a-number', () => parseAngle(text))
for (const text of ['1 4/4 in', '12,34.5 mm', '5:7 mm', '5 / 7 / 9 mm', '5~7 mm', '5 × 7 mm'])
  refuses('not-a-number', () => parseLength(text))
refuses('not-a-number', () => parseAngle(`5'-3"`))
refuses('no-unit', () => parseAngle('1° 15'))
refuses('no-unit', () => parseLength(`5' 3`))
refuses('no-unit', () => parseToe('1.5 mm @ 400'))
refuses('no-unit', () => parseTorque('190 N·m 5'))

for (const text of ['5 furlongs', '5 mmm', '5 m m', '5 mm long'])
  refuses('unknown-unit', () => parseLength(text))
for (const text of ['95 ft/lb', '95 Nfoo', '95 x']) refuses('unknown-unit', () => parseTorque(text))
refuses('unknown-unit', () => parsePressure('5 mPa'))
refuses('unknown-unit', () => parseStiffness('5 N·m/furlong'))

refuses('wrong-kind', () => parseLength('5 N·m'))
refuses('wrong-kind', () => parseTorque('95 lb'))
refuses('wrong-kind', () => parseForce('95 lb'))
refuses('wrong-kind', () => parseMass('95 lbf'))
refuses('wrong-kind', () => parseAngle('5 mm'))
refuses('wrong-kind', () => parseAngle('1/4 turn'))
refuses('wrong-kind', () => parseTurns('90°'))
refuses('wrong-kind', () => parseDistance('5 mm'))
refuses('wrong-kind', () => parsePressure('5 N·m'))
refuses('wrong-kind', () => parsePercent('5°'))
refuses('wrong-kind', () => parseToe('5 N·m'))
refuses('wrong-kind', () => parseStiffness('5 N·m'))
refuses('wrong-kind', () => parseStiffness('5 N·m/mm'))

refuses('out-of-range', () => parseAngle("0°60'"))
refuses('out-of-range', () => parseAngle(`1°30'60"`))
refuses('out-of-range', () => parseLength(`5' 12"`))
refuses('out-of-range', () => parseLength('1e400 mm'))
refuses('out-of-range', () => parseTorque('1e400 N·m'))
refuses('out-of-range', () => parseForce('1e400 N'))
refuses('out-of-range', () => parsePressure('-1e400 kPa'))
refuses('out-of-range', () => parsePercent('1e400 %'))
refuses('out-of-range', () => parseMass('-1 kg'))
refuses('out-of-range', () => parseDistance('-80 km'))
refuses('out-of-range', () => parseTurns('1 turn 6 flats', { flatsPerTurn: 6 }))
refuses('out-of-range', () => parseTurns('2 flats', { flatsPerTurn: 0 }))
refuses('out-of-range', () => parseTurns('2 flats', { flatsPerTurn: 5.5 }))
refuses('out-of-range', () => parseTurns('2 flats', { flatsPerTurn: 1 }))
refuses('out-of-range', () => parseStiffness('0 N·m/°'))
refuses('out-of-range', () => parseStiffness('-2 N·m/°'))
refuses('out-of-range', () => parseToe('401 mm @ 400 mm'))
refuses('out-of-range', () => parseToe('0 mm @ 0 mm'), 'text')
refuses('out-of-range', () => parseToe('1 mm', { diameter: mm(-400) }))
refuses('out-of-range', () => toeAsLength({ toe: deg(91), diameter: mm(400) }))
refuses('out-of-range', () => toeAsLength({ toe: rad(Number.NaN), diameter: mm(400) }))
refuses('out-of-range', () => toeAsLength({ toe: deg(1), diameter: mm(0) }))
refuses('out-of-range', () => toeFromLength({ length: mm(401), diameter: mm(400) }))
refuses('out-of-range', () => toeFromLength({ length: mm(1), diameter: mm(Number.POSITIVE_INFINITY) }))
test('edges that are just inside', () => {
  expect(parseAngle("0°59'")).toBeCloseTo(deg(59 / 60), 15)
  expect(parseLength(`5' 11"`)).toBeCloseTo(inch(71), 15)
  expect(parseToe('400 mm @ 400 mm')).toBe(Math.PI / 2)
  expect(parseMass('0 kg')).toBe(0)
  expect(parseMass('-0 kg')).toBe(0)
  expect(parseTurns('1 turn 5 flats', { flatsPerTurn: 6 })).toBeCloseTo(11 / 6, 15)
})

refuses('needs-diameter', () => parseToe('1.5 mm', { at: 'toe' }), 'toe')
refuses('needs-diameter', () => parseToe('1/16"'))
refuses('needs-flats', () => parseTurns('2 flats', { at: 'tie rod' }), 'tie rod')
refuses('needs-flats', () => parseTurns('1 turn 2 flats'))
refuses('not-a-number', () => parseToe('0.1° @ 400 mm'))
refuses('not-a-number', () => parseToe('1 mm @ 2 mm @ 3 mm'))

refuses('no-digits', () => formatAngle(deg(1), { unit: '°' }))
refuses('no-digits', () => formatTurns(turn(1), { unit: 'turn' }))
for (const spread of [0, -0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
  refuses('bad-spread', () => deservedPlaces(spread))
  refuses('bad-spread', () => formatAngle(deg(1), { unit: '°', spread }))
  refuses('bad-spread', () => formatMeasured({ value: 1, halfWidth: spread, kind: 'length', unit: 'mm' }))
}
refuses('bad-style', () => formatAngle(deg(1), { unit: '°', digits: 1.5 }))
refuses('bad-style', () => formatAngle(deg(1), { unit: '°', digits: 16 }))
refuses('bad-style', () => formatAngle(deg(1), { unit: '°', spread: 1e-30 }))
refuses('bad-style', () => formatAngle(deg(1), { unit: 'grad' as '°', digits: 1 }))
refuses('bad-style', () => formatTurns(turn(1), { unit: 'turn fraction', denominators: [] }))
refuses('bad-style', () => formatLength(mm(1), { unit: 'in fraction', denominators: [0] }))
refuses('bad-style', () => exactText({ value: 1, kind: 'angle', unit: '°′' }))
for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
  refuses('not-finite', () => formatAngle(rad(value), { unit: '°', digits: 1 }))
  refuses('not-finite', () => formatTurns(turn(value), { unit: 'turn fraction' }))
  refuses('not-finite', () => exactText({ value, kind: 'angle', unit: '°' }))
}
refuses('out-of-range', () => exactText({ value: -1, kind: 'mass', unit: 'kg' }))
