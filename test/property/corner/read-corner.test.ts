import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Corner,
  cornerPoints,
  parseClock,
  parseRate,
  readCorner,
  writeCorner,
} from '../../../src/corner/index.ts'
import { inDegrees } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { demo, demoCorner, spoil } from './demo.ts'

const file = (unit = '07') => demo(`port-unit-${unit}/front.corner.json`)
const problems = (json: unknown) => {
  const read = readCorner(json)
  return read.ok ? [] : read.problems
}
const fields = (json: unknown) => problems(json).map((p) => p.field)

test('CO1 both demo corners are read without a fault', () => {
  expect(problems(file('07'))).toEqual([])
  expect(problems(file('12'))).toEqual([])
})

test('CO2 a file with many faults of every kind tells them all at once', () => {
  const json = file()
  spoil(json, ['axel'], 'front')
  spoil(json, ['source'], undefined)
  spoil(json, ['wheel', 'studs'], '5')
  spoil(json, ['wheel', 'toe'], 0.08)
  spoil(json, ['points', 'upper-outer', 'at', 1], '668')
  spoil(json, ['points', 'tie-outer', 'at'], ['-138 mm', '694 mm'])
  spoil(json, ['points', 'Upper Outer'], { at: ['1 mm', '2 mm', '3 mm'] })
  spoil(json, ['parts', 'frame', 'kind'], 'chassis')
  spoil(json, ['joints', 'lower-ball-joint', 'joins', 0], 'lower-arn')
  spoil(json, ['joints', 'lower-front-bolt', 'at'], 'lower-front-pivt')
  spoil(json, ['joints', 'lower-rear-bolt', 'adjuster'], 'nothing-like-it')
  spoil(json, ['adjusters', 'lower-front-eccentric', 'moves'], 'lower-outer')
  spoil(json, ['adjusters', 'lower-front-eccentric', 'throw'], '-5 mm')
  spoil(json, ['adjusters', 'tie-rod', 'between', 1], 'upper-outer')
  spoil(json, ['holds', 'coil', 'heldBy', 0, 2], 'lower-balljoint')
  expect(fields(json).sort()).toEqual(
    [
      'axel',
      'source',
      'wheel.studs',
      'wheel.toe',
      'points.upper-outer.at[1]',
      'points.tie-outer.at',
      'points.Upper Outer',
      'parts.frame.kind',
      'joints.lower-ball-joint.joins[0]',
      'joints.lower-front-bolt.at',
      'joints.lower-rear-bolt.adjuster',
      'adjusters.lower-front-eccentric.moves',
      'adjusters.lower-front-eccentric.throw',
      'adjusters.tie-rod.between',
      'holds.coil.heldBy[0][2]',
    ].sort(),
  )
  for (const problem of problems(json)) {
    expect(problem.wrong.length, problem.field).toBeGreaterThan(8)
    expect(problem.right.length, problem.field).toBeGreaterThan(0)
  }
})

test('CO2 a mistyped name is told with the one that is meant', () => {
  const json = spoil(file(), ['joints', 'lower-ball-joint', 'at'], 'lower-outr')
  expect(problems(json)).toEqual([
    {
      field: 'joints.lower-ball-joint.at',
      wrong: 'There is no point "lower-outr".',
      right: '"lower-outer", if that is meant',
    },
  ])
})

test.each<[string, readonly (string | number)[], unknown, string]>([
  ['a newer format', ['format'], 2, 'format'],
  ['no format', ['format'], undefined, 'format'],
  ['a format that is no number', ['format'], '1', 'format'],
  ['another kind of file', ['kind'], 'kit', 'kind'],
  ['a missing point of the layout', ['points', 'wheel-centre'], undefined, 'points.wheel-centre'],
  ['a part that nothing holds', ['parts', 'spare'], { kind: 'shield' }, 'parts.spare'],
  ['a spring that nothing holds', ['holds'], {}, 'holds.coil'],
  ['a hold of what stores nothing', ['holds', 'upper-arm'], { heldBy: [['wheel-nuts']] }, 'holds.upper-arm'],
  ['a point that nothing uses', ['points', 'spare'], { at: ['0 mm', '0 mm', '0 mm'] }, 'points.spare'],
  [
    'a joint of a part with itself',
    ['joints', 'wheel-nuts', 'joins'],
    ['wheel', 'wheel'],
    'joints.wheel-nuts.joins',
  ],
  [
    'two conditions in one access',
    ['joints', 'wheel-nuts', 'access'],
    [{ partOff: 'wheel', steering: 'straight' }],
    'joints.wheel-nuts.access[0]',
  ],
  [
    'a direction without length',
    ['adjusters', 'lower-rear-eccentric', 'along'],
    [0, 0, 0],
    'adjusters.lower-rear-eccentric.along',
  ],
  [
    'an empty range',
    ['adjusters', 'lower-rear-eccentric', 'range'],
    ['90°', '-90°'],
    'adjusters.lower-rear-eccentric.range',
  ],
  [
    'a range beyond a quarter turn',
    ['adjusters', 'lower-rear-eccentric', 'range'],
    ['-90°', '120°'],
    'adjusters.lower-rear-eccentric.range',
  ],
  ['a step of nothing', ['adjusters', 'tie-rod', 'step'], '0 turns', 'adjusters.tie-rod.step'],
  [
    'an adjuster at another point',
    ['joints', 'lower-front-bolt', 'adjuster'],
    'lower-rear-eccentric',
    'joints.lower-front-bolt.adjuster',
  ],
  ['a layout the spring denies', ['layout'], 'double-wishbone, coil on upper arm', 'parts.coil.between'],
  ['a right corner drawn', ['drawn'], 'right', 'drawn'],
  ['a steered link where none is', ['steeredLink'], 5, 'steeredLink'],
  [
    'a clock position of 13',
    ['adjusters', 'lower-rear-eccentric', 'markAt'],
    "13 o'clock",
    'adjusters.lower-rear-eccentric.markAt',
  ],
  [
    'two pivots in one place',
    ['points', 'upper-rear-pivot', 'at'],
    ['112 mm', '440 mm', '541 mm'],
    'points.upper-front-pivot',
  ],
  [
    'a tie rod without lever',
    ['points', 'tie-outer', 'at'],
    ['-12 mm', '668 mm', '550 mm'],
    'points.tie-outer',
  ],
])('CO2 %s is told at its field', (_, path, value, field) => {
  const found = fields(spoil(file(), path, value))
  expect(found.length).toBeGreaterThan(0)
  // The fault itself comes first; what follows from it may come behind.
  expect(found).toContain(field)
})

test('CO3 a file of a newer version is told as that and as nothing else', () => {
  const found = problems(spoil(spoil(file(), ['format'], 2), ['rubber'], true))
  expect(found).toHaveLength(1)
  expect(found[0]!.wrong).toContain('newer version')
})

test.each([null, 5, 'text', [], undefined])('CO2 %j is no corner model', (json) => {
  expect(fields(json)).toEqual(['the file'])
})

// CO4: whatever is written is read back the same.
/** Neighbouring doubles differ by no more than this. */
const ULP = 2 ** -52
const anyLength = fc.double({ min: -2, max: 2, noNaN: true })
const anyAngle = fc.double({ min: -0.2, max: 0.2, noNaN: true })
law(
  'CO4 what is written is read back as the same number or its neighbour',
  fc.record({
    shift: fc.array(anyLength, { minLength: 45, maxLength: 45 }),
    camber: anyAngle,
    toe: anyAngle,
    radius: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
  }),
  ({ shift, camber, toe, radius }) => {
    const corner = demoCorner('07')
    let i = 0
    const points = Object.fromEntries(
      Object.entries(corner.points).map(([name, point]) => [
        name,
        { ...point, at: point.at.map((x) => x + shift[i++]! * 1e-3) },
      ]),
    )
    const changed = {
      ...corner,
      points,
      wheel: { ...corner.wheel, camber, toe, loadedRadius: radius },
    } as unknown as Corner
    const read = readCorner(JSON.parse(JSON.stringify(writeCorner(changed))))
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    expect(Object.keys(read.value)).toEqual(Object.keys(changed))
    for (const [name, point] of Object.entries(changed.points))
      for (const axis of [0, 1, 2] as const)
        near(read.value.points[name]!.at[axis], point.at[axis], { rel: ULP })
    near(read.value.wheel.camber, camber, { rel: ULP })
    near(read.value.wheel.toe, toe, { rel: ULP })
    return near(read.value.wheel.loadedRadius, radius, { rel: ULP })
  },
  { runs: 50 },
)

test.each(['07', '12'] as const)('CO4 the demo corner %s is written as it was read', (unit) => {
  const written = writeCorner(demoCorner(unit))
  const again = readCorner(written)
  expect(again.ok && writeCorner(again.value)).toEqual(written)
})

refuses('not-a-rate', () => parseRate('31 N'), 'rate')
refuses('not-a-rate', () => parseRate('0 N/mm'), 'rate')
refuses('not-a-rate', () => parseRate('-3 N/mm'), 'rate')
refuses('no-unit', () => parseRate('31/mm'))
refuses('wrong-kind', () => parseRate('31 mm/N'))
refuses('not-a-rate', () => parseRate(''), 'rate')
test.each([
  ['31 N/mm', 31_000],
  ['180 lbf/in', (180 * 0.45359237 * 9.80665) / 0.0254],
  ['3.1 kN per cm', 310_000],
])('CO8 %s is a rate', (text, rate) => {
  expect(near(parseRate(text), rate, { rel: 1e-14 })).toBe(true)
})
refuses('not-a-clock', () => parseClock('13 o’clock'), 'clock')
refuses('not-a-clock', () => parseClock('4'), 'clock')
refuses('not-a-clock', () => parseClock('360°'), 'clock')
refuses('not-a-clock', () => parseClock(''), 'clock')
test.each([
  ["12 o'clock", 0],
  ['12:00', 0],
  ["3 o'clock", 90],
  ['10:30', 315],
  ['11:59', 359.5],
  ['45°', 45],
  ['4 oclock', 120],
])('CO8 %s is a clock position', (text, degrees) => {
  expect(inDegrees(parseClock(text))).toBeCloseTo(degrees, 9)
})

refuses(
  'no-such-point',
  () => {
    const { 'lower-outer': _, ...points } = demoCorner('07').points
    cornerPoints({ ...demoCorner('07'), points })
  },
  'points.lower-outer',
)
