import { expect, test } from 'vitest'
import { axleReadings, type ReadingName } from '../../../src/linkage/index.ts'
import { deg, mm } from '../../../src/quantity/index.ts'
import {
  limitKeys,
  limitsOf,
  readSpec,
  type Spec,
  specAgainstCorner,
  writeSpec,
} from '../../../src/spec/index.ts'
import { demo, demoCorner, spoil } from '../corner/demo.ts'

const file = (unit = '07') => demo(`port-unit-${unit}/port-unit-${unit}.spec.json`)
const specOf = (json: unknown): Spec => {
  const read = readSpec(json)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const fields = (json: unknown) => {
  const read = readSpec(json)
  return read.ok ? [] : read.problems.map((p) => p.field)
}

test.each(['07', '12'] as const)(
  'SP1 the demo sheet %s is read, fits its corner and is written as typed',
  (unit) => {
    const spec = specOf(file(unit))
    expect(specAgainstCorner(spec, demoCorner(unit))).toEqual([])
    expect(writeSpec(spec)).toEqual(file(unit))
  },
)

test('SP2 a sheet with many faults tells them all at once', () => {
  const json = file()
  spoil(json, ['source'], undefined)
  spoil(json, ['typedAt'], '2026-02-31')
  spoil(json, ['limits', 'front cambr'], { low: '0°', high: '1°' })
  spoil(json, ['limits', 'front camber', 'low'], '-1')
  spoil(json, ['limits', 'front toe', 'low'], '1 mm')
  spoil(json, ['limits', 'rear toe', 'prefered'], '0°')
  spoil(json, ['rideHeight', 'front', 'high'], undefined)
  spoil(json, ['tightening', 'front', 'wheel-nuts', 'procedure'], 'torq')
  spoil(json, ['tightening', 'front', 'tie-rod-end', 'low'], '45 mm')
  spoil(json, ['wear', 0, 'jurisdiction'], undefined)
  spoil(json, ['reTighten', 0, 'after'], '80')
  spoil(json, ['limits', 'thrust', 'low'], '5°')
  expect(fields(json).sort()).toEqual(
    [
      'source',
      'typedAt',
      'limits.front cambr',
      'limits.front camber.low',
      'limits.front toe.low',
      'limits.rear toe.prefered',
      'rideHeight.front.high',
      'tightening.front.wheel-nuts.procedure',
      'tightening.front.tie-rod-end.low',
      'wear[0].jurisdiction',
      'reTighten[0].after',
      'limits.thrust',
    ].sort(),
  )
})

test.each<[string, readonly (string | number)[], unknown, string]>([
  [
    'limits the wrong way round',
    ['limits', 'front camber'],
    { low: '1°', high: '-1°' },
    'limits.front camber',
  ],
  ['a preferred value outside', ['limits', 'thrust', 'preferred'], '1°', 'limits.thrust.preferred'],
  ['heights the wrong way round', ['rideHeight', 'front', 'low'], '460 mm', 'rideHeight.front'],
  [
    'torques the wrong way round',
    ['tightening', 'front', 'tie-rod-end', 'low'],
    '99 N·m',
    'tightening.front.tie-rod-end',
  ],
  ['a height below zero', ['rideHeight', 'front', 'low'], '-430 mm', 'rideHeight.front.low'],
  [
    'one stage only',
    ['tightening', 'front', 'wheel-nuts', 'stages'],
    ['60 N·m'],
    'tightening.front.wheel-nuts.stages',
  ],
])('SP3 %s is told', (_, path, value, field) => {
  expect(fields(spoil(file(), path, value))).toEqual([field])
})

test('SP3 ends that are equal are a limit, and preferred may be an end', () => {
  const json = spoil(file(), ['limits', 'thrust'], { low: '0°', high: '0°', preferred: '0°' })
  expect(fields(json)).toEqual([])
})

test('SP4 every limit bounds readings that exist, and every axle reading can be bounded', () => {
  const names = new Set<string>(Object.keys(axleReadings))
  for (const end of ['front', 'rear'])
    for (const side of ['left', 'right'])
      for (const angle of ['camber', 'caster', 'sai', 'toe']) names.add(`${end} ${side} ${angle}`)
  const bounded = new Set<ReadingName>()
  for (const readings of limitKeys.values())
    for (const reading of readings) {
      expect(names).toContain(reading)
      bounded.add(reading)
    }
  for (const name of Object.keys(axleReadings)) expect(bounded).toContain(name)
})

test('SP4 a limit for both wheels is given to each, one for a side goes before it wherever it stands', () => {
  const json = file()
  const limits = { 'front left camber': { low: '-2°', high: '-1°' }, ...(json.limits as object) }
  const found = limitsOf(specOf(spoil(json, ['limits'], limits)))
  expect(found['front left camber']).toMatchObject({
    low: deg(-2),
    high: deg(-1),
    preferred: null,
    lowText: '-2°',
  })
  expect(found['front right camber']).toMatchObject({
    low: deg(-0.75),
    high: deg(0.25),
    preferred: deg(-0.25),
  })
})

test('SP5 front toe is each wheel’s to the thrust line, rear toe to the centre line', () => {
  const found = limitsOf(specOf(file()))
  expect(found['front left toe to thrust']?.highText).toBe('0.26°')
  expect(found['front right toe to thrust']?.highText).toBe('0.26°')
  expect(found['front left toe']).toBeUndefined()
  expect(found['rear left toe']?.high).toBeCloseTo(deg(0.3), 15)
})

test('SP6 toe may be typed as a length at its diameter', () => {
  const json = spoil(file(), ['limits', 'front toe'], { low: '0 mm @ 402 mm', high: '1/16 in @ 15 in' })
  const found = limitsOf(specOf(json))['front left toe to thrust']!
  expect(found.low).toBe(0)
  expect(found.high).toBeCloseTo(Math.asin(1 / 16 / 15), 12)
  expect(found.highText).toBe('1/16 in @ 15 in')
})

test('SP7 what the corner does not have is told', () => {
  const json = file()
  spoil(json, ['tightening', 'front', 'lower-frnt-bolt'], { procedure: 'hand snug' })
  spoil(json, ['wear', 0, 'joint'], 'king-pin')
  spoil(json, ['rideHeight', 'measured'], 'ground to arch edge')
  const told = specAgainstCorner(specOf(json), demoCorner('07'))
  expect(told.map((p) => p.field)).toEqual([
    'tightening.front.lower-frnt-bolt',
    'wear[0].joint',
    'rideHeight.measured',
  ])
  expect(told[0]!.right).toBe('"lower-front-bolt", if that is meant')
})

test('SP1 values stand as typed with their SI value', () => {
  const spec = specOf(
    spoil(file(), ['tightening', 'front', 'wheel-nuts'], {
      procedure: 'torque',
      low: '95 lbf·ft',
      high: '100 lbf·ft',
    }),
  )
  const nuts = spec.tightening!.front!['wheel-nuts']!
  expect(nuts).toMatchObject({ low: { text: '95 lbf·ft' } })
  expect(spec.rideHeight!.front!.low).toEqual({ text: '430 mm', value: mm(430) })
})

test('SP7 the procedure of a castle nut is told where the joint has none', () => {
  const json = file()
  spoil(json, ['tightening', 'front', 'rack-bolts'], {
    procedure: 'castle slot',
    low: '50 N·m',
    high: '60 N·m',
  })
  expect(specAgainstCorner(specOf(json), demoCorner('07')).map((p) => p.field)).toEqual([
    'tightening.front.rack-bolts.procedure',
  ])
})
