import { expect, test } from 'vitest'
import { readCorner } from '../../../src/corner/index.ts'
import { demo, spoil } from './demo.ts'

type Spoilt = readonly [
  what: string,
  file: string,
  path: readonly (string | number)[],
  value: unknown,
  told: Readonly<Record<string, string>>,
]
const slide = {
  kind: 'slide',
  name: 'slide',
  moves: ['kingpin-upper'],
  along: [0, 1, 0],
  range: ['-1 mm', '1 mm'],
  step: '1 mm',
  seenFrom: 'above',
}
const plate = { ...slide, kind: 'top plate', moves: 'lower-front-pivot' }
const sleeve = demo('port-unit-03/front.corner.json').adjusters as Record<string, unknown>

const broken: readonly Spoilt[] = [
  [
    'a part that nothing holds',
    '12/rear',
    ['parts', 'spare'],
    { kind: 'shield' },
    { 'parts.spare': 'Nothing holds this part.' },
  ],
  [
    'parts that hang on each other only',
    '12/rear',
    ['joints', 'hub-bolts'],
    { kind: 'bolt', joins: ['hub', 'wheel'], adjuster: 'toe-wedge' },
    {
      'parts.hub': 'It hangs on "wheel" only, and nothing joins that to the body.',
      'parts.wheel': 'It hangs on "hub" only, and nothing joins that to the body.',
    },
  ],
  ['no body', '12/rear', ['parts', 'body', 'kind'], 'sub-frame', { parts: 'No part of it is the body.' }],
  [
    'a joint to a missing part',
    '03/front',
    ['joints', 'wheel-nuts', 'joins', 1],
    'hubb',
    { 'joints.wheel-nuts.joins[1]': 'There is no part "hubb".' },
  ],
  [
    'a part clipped to itself',
    '12/rear',
    ['parts', 'sensor-lead', 'clippedTo', 0],
    'sensor-lead',
    { 'parts.sensor-lead.clippedTo[0]': '"sensor-lead" cannot stand on itself.' },
  ],
  [
    'a knuckle for both sides',
    '03/front',
    ['parts', 'knuckle', 'span'],
    'axle',
    { 'parts.knuckle.span': 'Each side has its own knuckle.' },
  ],
  [
    'a spring that nothing holds',
    '12/rear',
    ['holds'],
    {},
    { 'holds.coil': 'Nothing is said to hold "coil", which stores energy.' },
  ],
  [
    'an unknown droop stop',
    '03/front',
    ['holds', 'leaf-spring', 'droopStop', 0],
    'damper-top-bold',
    { 'holds.leaf-spring.droopStop[0]': 'There is no joint "damper-top-bold".' },
  ],
  [
    'a joint twice in a set',
    '12/rear',
    ['holds', 'coil', 'heldBy', 0, 0],
    'damper-bottom-bolt',
    { 'holds.coil.heldBy[0][1]': '"damper-bottom-bolt" stands in this set twice.' },
  ],
  [
    'a seat that is said to hold its spring',
    '12/rear',
    ['holds', 'coil', 'heldBy', 0, 0],
    'coil-seats',
    {
      'holds.coil.heldBy[0][0]':
        '"coil-seats" is a seat: the spring itself holds it, so it cannot hold the spring.',
    },
  ],
  [
    'a coil let down by an anchor bolt',
    '12/rear',
    ['holds', 'coil', 'letDown'],
    'by its anchor bolt',
    {
      'holds.coil.letDown':
        '“by its anchor bolt” is for a spring that stores by torsion bar; "coil" stores by coil.',
    },
  ],
  [
    'a coil held by unwinding a torsion bar',
    '12/rear',
    ['holds', 'coil', 'standInKinds', 0],
    'torsion bar unwound',
    {
      'holds.coil.standInKinds[0]':
        '“torsion bar unwound” can stand in for torsion bar; "coil" stores by coil.',
    },
  ],
  [
    'an axle on stands where none is',
    '07/front',
    ['holds', 'coil', 'standInKinds'],
    ['axle on stands'],
    {
      'holds.coil.standInKinds[0]':
        'The layout "double-wishbone, coil on lower arm" has no axle to stand on stands.',
    },
  ],
  [
    'a taper-roller hub’s rule on a ball joint',
    '03/front',
    ['joints', 'tie-rod-end', 'kind'],
    'adjustable taper-roller hub',
    {
      'joints.tie-rod-end.kind':
        'A joint of the kind “adjustable taper-roller hub” joins a hub; this one joins "tie-rod-socket" and "knuckle".',
    },
  ],
  [
    'a taper-roller hub in a bush',
    '03/front',
    ['joints', 'hub-nut', 'bush'],
    { bonded: false },
    { 'joints.hub-nut.bush': 'A taper-roller hub turns on bearings, not in a bush.' },
  ],
  [
    'a bush without a point',
    '12/rear',
    ['joints', 'wheel-nuts', 'bush'],
    { bonded: true },
    { 'joints.wheel-nuts.at': 'A bush turns about a point, and none is named.' },
  ],
  [
    'the drag link on the wrong side',
    '03/front',
    ['joints', 'drag-link-rear-end', 'side'],
    'right',
    { 'joints.drag-link-rear-end.side': 'It is said to be on the right, but "drag-outer" lies on the left.' },
  ],
  [
    'the drag link on no side',
    '03/front',
    ['joints', 'drag-link-rear-end', 'side'],
    undefined,
    {
      'joints.drag-link-rear-end.side':
        'It is missing: "drag-outer" stands once, so only one side has this joint.',
    },
  ],
  [
    'access that waits for itself in a circle',
    '03/front',
    ['joints', 'wheel-nuts', 'access'],
    [{ jointOpen: 'caliper-bolts' }],
    {
      'joints.wheel-nuts.access[0]':
        'Nobody can ever reach it: "wheel-nuts" waits for "caliper-bolts" waits for "wheel-nuts".',
    },
  ],
  [
    'a joint that waits for itself',
    '03/front',
    ['joints', 'tie-rod-end', 'access'],
    [{ jointOpen: 'tie-rod-end' }],
    { 'joints.tie-rod-end.access[0].jointOpen': 'The joint waits for itself.' },
  ],
  [
    'a part off that the joint itself holds',
    '12/rear',
    ['joints', 'hub-bolts', 'access', 0],
    { partOff: 'hub' },
    {
      'joints.hub-bolts.access[0].partOff':
        'This joint itself holds "hub" on, so that cannot be off before it is reached.',
    },
  ],
  [
    'access over a joint that is not there',
    '12/rear',
    ['joints', 'hub-bolts', 'access', 0],
    { jointOpen: 'wheel-nut' },
    { 'joints.hub-bolts.access[0].jointOpen': 'There is no joint "wheel-nut".' },
  ],
  [
    'two conditions in one entry',
    '12/rear',
    ['joints', 'hub-bolts', 'access', 0],
    { partOff: 'wheel', arm: 'raised' },
    { 'joints.hub-bolts.access[0]': 'It names 2 conditions: "partOff", "arm".' },
  ],
  [
    'an entry without a condition',
    '12/rear',
    ['joints', 'hub-bolts', 'access', 0],
    { why: 'it is tight there' },
    { 'joints.hub-bolts.access[0]': 'It names no condition.' },
  ],
  [
    'steering a rear axle',
    '12/rear',
    ['joints', 'hub-bolts', 'access', 0],
    { steering: 'left lock' },
    { 'joints.hub-bolts.access[0].steering': 'This rear axle is not steered.' },
  ],
  [
    'a twist beam in front',
    '12/rear',
    ['axle'],
    'front',
    { axle: 'A front axle is steered, and a twist beam is not.' },
  ],
  ['a twist beam without its shape', '12/rear', ['beamShape'], undefined, { beamShape: 'It is missing.' }],
  [
    'the shape of a twist beam elsewhere',
    '07/front',
    ['beamShape'],
    1,
    { beamShape: 'Only a twist beam has a shape.' },
  ],
  [
    'a slide on a solid axle',
    '03/front',
    ['adjusters', 'kingpin-sleeve'],
    slide,
    {
      'adjusters.kingpin-sleeve.kind':
        'The layout "solid axle, leaf springs" has no point that an adjuster of the kind “slide” could move by itself.',
    },
  ],
  [
    'a kingpin sleeve without a kingpin',
    '12/rear',
    ['adjusters', 'toe-wedge'],
    sleeve['kingpin-sleeve'],
    { 'adjusters.toe-wedge.kind': 'An offset sleeve leans the kingpin, and this axle has none.' },
  ],
  [
    'a kingpin sleeve on wishbones',
    '07/front',
    ['adjusters', 'tie-rod'],
    sleeve['kingpin-sleeve'],
    {
      'adjusters.tie-rod.kind':
        'An offset sleeve leans the kingpin of a solid axle; this layout is "double-wishbone, coil on lower arm".',
    },
  ],
  [
    'a top plate on wishbones',
    '07/front',
    ['adjusters', 'tie-rod'],
    plate,
    {
      'adjusters.tie-rod.kind':
        'A top plate carries a strut; this layout is "double-wishbone, coil on lower arm".',
    },
  ],
  [
    'a top plate that moves an arm',
    '12/front',
    ['adjusters', 'tie-rod'],
    plate,
    { 'adjusters.tie-rod.moves': `A top plate moves the strut's top, not "lower-front-pivot".` },
  ],
  [
    'an axle’s tie rod drawn as one of each side',
    '03/front',
    ['adjusters', 'tie-rod', 'span'],
    undefined,
    { 'adjusters.tie-rod.span': 'It is missing: the axle has this rod once.' },
  ],
  [
    'a side’s tie rod drawn as one of the axle',
    '07/front',
    ['adjusters', 'tie-rod', 'span'],
    'axle',
    { 'adjusters.tie-rod.span': 'Each side has this link of its own.' },
  ],
  [
    'a thread on no link',
    '03/front',
    ['adjusters', 'tie-rod', 'between', 1],
    'drag-outer',
    { 'adjusters.tie-rod.between': 'No link runs between "tie-outer" and "drag-outer".' },
  ],
  [
    'a seat of no spring',
    '12/rear',
    ['joints', 'coil-seats', 'joins'],
    ['damper', 'beam'],
    {
      'joints.coil-seats.kind':
        'A joint of the kind “seat” joins a spring, whose load alone holds it; this one joins "damper" and "beam".',
    },
  ],
  [
    'a hose bracket without a hose',
    '07/rear',
    ['joints', 'brake-hose-bracket', 'joins'],
    ['damper', 'axle-beam'],
    {
      'joints.brake-hose-bracket.kind':
        'A joint of the kind “hose bracket” joins a hose or a lead; this one joins "damper" and "axle-beam".',
    },
  ],
  [
    'brake fluid out of an air hose',
    '03/front',
    ['parts', 'brake-hose', 'carries'],
    'air',
    {
      'joints.brake-hose-union.kind':
        'A joint of the kind “hydraulic union” joins a hose that carries brake or steering fluid; this one joins "brake-hose" and "caliper".',
    },
  ],
  [
    'a strut clamp without a strut',
    '12/rear',
    ['joints', 'wheel-nuts', 'kind'],
    'strut clamp',
    {
      'joints.wheel-nuts.kind':
        'A joint of the kind “strut clamp” joins a strut; this one joins "wheel" and "hub".',
    },
  ],
  [
    'where a plain bolt is cracked',
    '12/rear',
    ['joints', 'hub-bolts', 'cracked'],
    'on the ground',
    {
      'joints.hub-bolts.cracked':
        'Where it is cracked is said of an axle nut; this is a joint of the kind “bolt”.',
    },
  ],
  [
    'a new pin in a plain bolt',
    '12/rear',
    ['joints', 'hub-bolts', 'reuse'],
    'new pin',
    { 'joints.hub-bolts.reuse': 'A joint of the kind “bolt” has no pin, and none is given.' },
  ],
  [
    'slots of a plain bolt',
    '12/rear',
    ['joints', 'hub-bolts', 'slots'],
    6,
    { 'joints.hub-bolts.slots': 'Slots are for a pin; a joint of the kind “bolt” has none.' },
  ],
  [
    'times that fall',
    '03/front',
    ['joints', 'kingpin-cotter', 'minutes'],
    [9, 4, 1],
    { 'joints.kingpin-cotter.minutes': 'The times 9, 4, 1 do not rise.' },
  ],
  [
    'a joint of a part with itself',
    '12/rear',
    ['joints', 'coil-seats', 'joins'],
    ['coil', 'coil'],
    { 'joints.coil-seats.joins': 'It joins "coil" to itself.' },
  ],
  [
    'a kingpin upside down',
    '03/front',
    ['points', 'kingpin-upper', 'at', 2],
    '250 mm',
    { 'points.kingpin-upper': 'The upper end of the left kingpin does not lie above the lower one.' },
  ],
  [
    'a roll axis without direction',
    '07/rear',
    ['points', 'roll-axis-front', 'at'],
    ['-3690 mm', '0 mm', '420 mm'],
    { 'points.roll-axis-front': 'The roll axis has no direction: its two points are one.' },
  ],
  [
    'a tie rod without length',
    '03/front',
    ['points', 'tie-outer', 'at', 1],
    '0 mm',
    { 'points.tie-outer': 'The tie rod has no length.' },
  ],
  [
    'a wheel that lies flat, of an axle',
    '03/front',
    ['wheel', 'camber'],
    '95°',
    { 'wheel.camber': 'The left camber is a right angle or more.' },
  ],
  [
    'a wheel that lies flat, of a corner',
    '07/front',
    ['wheel', 'toe'],
    '95°',
    { 'wheel.toe': 'Toe is a right angle or more.' },
  ],
  [
    'an axle with one kingpin end',
    '07/rear',
    ['points', 'kingpin-lower'],
    { at: ['0 mm', '735 mm', '250 mm'] },
    Object.fromEntries(
      ['kingpin-upper', 'drop-axis-from', 'drop-axis-to', 'drag-inner', 'drag-outer', 'tie-outer'].map(
        (name) => [`points.${name}`, 'It is missing.'],
      ),
    ),
  ],
  [
    'a beam whose right side lies on the left',
    '12/rear',
    ['points', 'beam-pivot', 'at', 1],
    '0 mm',
    { 'points.beam-pivot': 'The right side of the beam does not lie to the right of the left one.' },
  ],
]

test('CO10 there are more than twenty kinds of broken corner', () => {
  expect(new Set(broken.map(([what]) => what)).size).toBe(broken.length)
  expect(broken.length).toBeGreaterThan(20)
})

test.each(broken)('CO10 %s is told in its own sentence at its own field', (_, file, path, value, told) => {
  const [unit, axle] = file.split('/')
  const read = readCorner(spoil(demo(`port-unit-${unit}/${axle}.corner.json`), path, value))
  const problems = read.ok ? [] : read.problems
  expect(Object.fromEntries(problems.map(({ field, wrong }) => [field, wrong]))).toEqual(told)
  for (const { right } of problems) expect(right).not.toMatch(/^\s*$/)
})

test('CO10 a front solid axle is steered', () => {
  const read = readCorner(spoil(demo('port-unit-07/rear.corner.json'), ['axle'], 'front'))
  expect(read.ok ? [] : read.problems.map(({ field }) => field)).toContain('points.kingpin-lower')
})

test('CO10 a circle over a part on the body and a joint of the sub-frame is one, though the sub-frame comes off', () => {
  const file = demo('port-unit-12/front.corner.json')
  spoil(file, ['joints', 'strut-top-nuts', 'access'], [{ jointOpen: 'rack-bolts' }])
  spoil(file, ['joints', 'rack-bolts', 'access'], [{ partOff: 'top-mount' }])
  const read = readCorner(file)
  expect(read.ok ? [] : read.problems.map(({ field, wrong }) => [field, wrong])).toEqual([
    [
      'joints.strut-top-nuts.access[0]',
      'Nobody can ever reach it: "strut-top-nuts" waits for "rack-bolts" waits for "strut-top-nuts".',
    ],
  ])
})

test.each<[string, string, readonly string[], unknown]>([
  ['a plain bolt with a pin of its own', '12/rear', ['joints', 'hub-bolts', 'pin'], '3 mm'],
  ['times that are all alike', '03/front', ['joints', 'kingpin-cotter', 'minutes'], [4, 4, 4]],
  ['an axle joint on no side', '03/front', ['joints', 'drop-arm-nut', 'side'], undefined],
])('CO10 %s is no fault', (_, file, path, value) => {
  const [unit, axle] = file.split('/')
  const json = spoil(demo(`port-unit-${unit}/${axle}.corner.json`), path, value)
  if (path[2] === 'pin') {
    spoil(json, ['joints', 'hub-bolts', 'reuse'], 'new pin')
    spoil(json, ['joints', 'hub-bolts', 'slots'], 6)
  }
  const read = readCorner(json)
  expect(read.ok ? [] : read.problems).toEqual([])
})

test('CO10 a torsion bar let down by its anchor bolt has one', () => {
  const file = demo('port-unit-07/front.corner.json')
  spoil(file, ['layout'], 'double-wishbone, torsion bar')
  spoil(file, ['parts', 'coil', 'stores'], 'torsion bar')
  spoil(file, ['holds', 'coil', 'standInKinds'], ['torsion bar unwound'])
  spoil(file, ['holds', 'coil', 'letDown'], 'by its anchor bolt')
  const problems = (json: unknown) => {
    const read = readCorner(json)
    return read.ok ? [] : read.problems.map(({ field, wrong }) => [field, wrong])
  }
  expect(problems(file)).toEqual([
    ['holds.coil.letDown', 'It is let down by its anchor bolt, and no joint is one.'],
  ])
  spoil(file, ['joints', 'anchor'], { kind: 'anchor bolt', joins: ['coil', 'frame'] })
  expect(problems(file)).toEqual([])
})

test.each(['03/front', '07/front', '07/rear', '12/front', '12/rear'])(
  'CO1 the demo corner %s is read without a fault',
  (file) => {
    const [unit, axle] = file.split('/')
    const read = readCorner(demo(`port-unit-${unit}/${axle}.corner.json`))
    expect(read.ok ? [] : read.problems).toEqual([])
  },
)
