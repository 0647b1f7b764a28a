import { expect, test } from 'vitest'
import { checkAdjuster, displacementOf } from '../../../src/adjust/index.ts'
import {
  adjustersOf,
  axleAdjustersOf,
  bushesOf,
  type Corner,
  cornerPoints,
  isWholeAxle,
  jointLetters,
  layouts,
  pointSpreads,
  readCorner,
  wholeAxlePoints,
  writeCorner,
} from '../../../src/corner/index.ts'
import { mechanism, poseAt, type SolidAxlePoints, solidAxle } from '../../../src/linkage/index.ts'
import { deg, metre, mm, turn } from '../../../src/quantity/index.ts'
import { refuses } from '../../support/law.ts'
import { demo, demoCorner, spoil } from './demo.ts'

const read = (file: unknown): Corner => {
  const corner = readCorner(file)
  if (!corner.ok) throw new Error(JSON.stringify(corner.problems))
  return corner.value
}
const unit = (file: string) => demo(`port-unit-${file}.corner.json`)
const mm3 = (...at: number[]) => at.map((x) => x / 1000)
const at = (...coordinates: number[]) => ({ at: coordinates.map((x) => `${x} mm`) })

/** Unit 07's rear axle on coils: lower links, and what guides it above. */
function onCoils(above: Record<string, unknown>): Record<string, unknown> {
  const file = unit('07/rear')
  const { 'roll-axis-rear': _, 'roll-axis-front': __, ...points } = file.points as Record<string, unknown>
  spoil(file, ['points'], {
    ...points,
    'lower-link-inner': at(-2500, 420, 380),
    'lower-link-outer': at(-3020, 470, 300),
    ...above,
  })
  return spoil(file, ['layout'], 'solid axle, coils')
}
const upperLinks = {
  'upper-link-inner': at(-2600, 420, 520),
  'upper-link-outer': at(-3000, 160, 480),
}
const middleAndBar = {
  'middle-link-inner': at(-2600, 60, 520),
  'middle-link-outer': at(-3000, 40, 480),
  'track-bar-inner': at(-3150, -480, 420),
  'track-bar-outer': at(-3150, 460, 380),
}

/** A rear trailing arm, its hinge at an angle to the vehicle. */
function semiTrailing(): Record<string, unknown> {
  const file = unit('12/rear')
  spoil(file, ['layout'], 'semi-trailing arm')
  spoil(file, ['beamShape'], undefined)
  spoil(file, ['points', 'beam-pivot'], undefined)
  spoil(file, ['points', 'shear-centre'], undefined)
  spoil(file, ['points', 'arm-front-pivot'], at(-2120, 610, 300))
  spoil(file, ['points', 'arm-rear-pivot'], at(-2260, 270, 310))
  spoil(file, ['parts', 'beam'], { kind: 'arm', links: [['arm-front-pivot', 'wheel-centre']] })
  spoil(file, ['joints', 'beam-pivot-bolt', 'at'], 'arm-front-pivot')
  spoil(file, ['joints', 'beam-pivot-bolt', 'adjuster'], 'arm-slide')
  spoil(file, ['joints', 'arm-inner-bolt'], {
    ...(file.joints as Record<string, object>)['beam-pivot-bolt'],
    at: 'arm-rear-pivot',
    adjuster: 'sub-frame',
  })
  spoil(file, ['holds', 'coil', 'standInKinds'], ['spring compressor'])
  const length = { range: ['-4 mm', '4 mm'], step: '0.5 mm', seenFrom: 'below' }
  spoil(file, ['adjusters', 'arm-slide'], {
    kind: 'slide',
    name: 'slide of the outer bracket',
    moves: ['arm-front-pivot'],
    along: [0, 0, 3],
    ...length,
  })
  return spoil(file, ['adjusters', 'sub-frame'], {
    kind: 'sub-frame shift',
    name: 'sub-frame',
    along: 'y',
    moves: ['arm-front-pivot', 'arm-rear-pivot'],
    ...length,
  })
}

test('CO11 the axle of the tipper comes over in vehicle axes: the left half, its mirror, and what stands once', () => {
  expect(wholeAxlePoints(read(unit('03/front')))).toEqual({
    location: { kind: 'leaf', rollAxis: [mm3(-640, 0, 415), mm3(610, 0, 440)] },
    left: {
      wheelCentre: mm3(0, 820, 342),
      camber: deg(0.75),
      toe: deg(0.06),
      tyreRadius: mm(342),
      kingpin: { lower: mm3(5, 735, 250), upper: mm3(-5, 711.5, 440) },
    },
    right: {
      wheelCentre: mm3(0, -820, 342),
      camber: deg(0.75),
      toe: deg(0.06),
      tyreRadius: mm(342),
      kingpin: { lower: mm3(5, -735, 250), upper: mm3(-5, -711.5, 440) },
    },
    steering: {
      dropAxis: [mm3(640, 395, 705), mm3(640, 515, 705)],
      dragInner: mm3(628, 505, 482),
      dragOuter: mm3(26, 556, 458),
      drags: 'left',
      tieLeft: mm3(-172, 676, 262),
      tieRight: mm3(-172, -676, 262),
    },
  })
})

test('CO11 the drag link moves the knuckle on whose side its outer end lies', () => {
  const file = unit('03/front')
  for (const name of ['drag-inner', 'drag-outer', 'drag-thread', 'drop-axis-from', 'drop-axis-to'])
    spoil(
      file,
      ['points', name, 'at', 1],
      `-${(file.points as Record<string, { at: string[] }>)[name]!.at[1]}`,
    )
  for (const joint of Object.values(file.joints as Record<string, { side?: string }>))
    if (joint.side) joint.side = 'right'
  const axle = wholeAxlePoints(read(file)) as SolidAxlePoints
  expect(axle.steering?.drags).toBe('right')
  expect(() => solidAxle(axle)).not.toThrow()
})

test('CO11 a rear axle is not steered; on coils it is guided by four links, or by three and a track bar', () => {
  const rear = wholeAxlePoints(read(unit('07/rear'))) as SolidAxlePoints
  expect(rear.steering).toBeNull()
  expect([rear.left.kingpin, rear.right.kingpin]).toEqual([null, null])
  const lower = [
    { inner: mm3(-2500, 420, 380), outer: mm3(-3020, 470, 300) },
    { inner: mm3(-2500, -420, 380), outer: mm3(-3020, -470, 300) },
  ]
  expect((wholeAxlePoints(read(onCoils(upperLinks))) as SolidAxlePoints).location).toEqual({
    kind: 'links',
    links: [
      ...lower,
      { inner: mm3(-2600, 420, 520), outer: mm3(-3000, 160, 480) },
      { inner: mm3(-2600, -420, 520), outer: mm3(-3000, -160, 480) },
    ],
  })
  expect((wholeAxlePoints(read(onCoils(middleAndBar))) as SolidAxlePoints).location).toEqual({
    kind: 'links',
    links: [
      ...lower,
      { inner: mm3(-2600, 60, 520), outer: mm3(-3000, 40, 480) },
      { inner: mm3(-3150, -480, 420), outer: mm3(-3150, 460, 380) },
    ],
  })
})

test('CO11 links above and half a track bar are told', () => {
  const { 'track-bar-outer': _, ...half } = middleAndBar
  const told = readCorner(onCoils(half))
  expect(told.ok ? [] : told.problems.map(({ field }) => field)).toEqual(['points.track-bar-outer'])
  const both = readCorner(onCoils({ ...upperLinks, ...middleAndBar }))
  expect(both.ok ? [] : both.problems.map(({ field, wrong }) => `${field}: ${wrong}`)).toEqual([
    'points.upper-link-inner: Nothing uses this point.',
    'points.upper-link-outer: Nothing uses this point.',
  ])
})

test('CO11 a twist beam comes over with its shear centre and its shape', () => {
  expect(wholeAxlePoints(read(unit('12/rear')))).toEqual({
    left: {
      wheelCentre: mm3(-2560, 731, 298),
      camber: deg(-1),
      toe: deg(0.12),
      tyreRadius: mm(298),
      pivot: mm3(-2130, 560, 312),
    },
    right: {
      wheelCentre: mm3(-2560, -731, 298),
      camber: deg(-1),
      toe: deg(0.12),
      tyreRadius: mm(298),
      pivot: mm3(-2130, -560, 312),
    },
    shearCentre: mm3(-2295, 0, 338),
    shape: 0.9,
  })
})

test('CO5 a semi-trailing arm comes over with its hinge and can be computed', () => {
  const points = cornerPoints(read(semiTrailing()))
  expect(points).toMatchObject({
    layout: 'semi-trailing arm',
    innerFront: mm3(-2120, 610, 300),
    innerRear: mm3(-2260, 270, 310),
    wheelCentre: mm3(-2560, 731, 298),
  })
  expect(() => poseAt(mechanism(points), { travel: metre(0), rack: metre(0) })).not.toThrow()
})

test('CO6 every adjuster comes over with its own names and numbers, those of the axle apart', () => {
  const tipper = read(unit('03/front'))
  expect(adjustersOf(tipper)).toEqual([
    {
      kind: 'offset sleeve',
      id: 'kingpin-sleeve',
      name: 'kingpin sleeve',
      tilt: deg(0.5),
      range: [0, deg(330)],
      step: deg(30),
      play: deg(3),
      seenFrom: 'above',
      positiveLooks: 'clockwise',
      markAt: 0,
    },
  ])
  const thread = { kind: 'thread', pitch: mm(1.5), range: [turn(-4), turn(4)], sets: 'toe' }
  expect(axleAdjustersOf(tipper)).toMatchObject([
    { ...thread, id: 'tie-rod', length: 'tie-rod', sleeve: true },
    { ...thread, id: 'drag-link', length: 'drag-link', sleeve: false },
  ])
  expect(adjustersOf(read(unit('12/rear')))).toMatchObject([
    { kind: 'wedge', tilts: 'toe', sizes: [deg(0.25), deg(0.5)], play: 0, range: [deg(-0.5), deg(0.5)] },
  ])
  const arm = read(semiTrailing())
  expect(adjustersOf(arm).map(({ kind }) => kind)).toEqual(['wedge', 'slide'])
  expect(adjustersOf(arm)[1]).toMatchObject({ moves: ['innerFront'], along: [0, 0, 1], play: 0 })
  expect(axleAdjustersOf(arm)).toMatchObject([
    { kind: 'sub-frame shift', along: 'y', moves: ['innerFront', 'innerRear'] },
  ])
  for (const adjuster of [...adjustersOf(arm), ...axleAdjustersOf(arm)]) {
    checkAdjuster(adjuster)
    expect(() => displacementOf(adjuster, cornerPoints(arm), adjuster.range[1])).not.toThrow()
  }
})

test('CO6 a top plate moves the top of the strut', () => {
  const file = unit('12/front')
  spoil(file, ['adjusters', 'plate'], {
    kind: 'top plate',
    name: 'top plate',
    moves: 'strut-top',
    along: [0, -1, 0],
    range: ['-6 mm', '6 mm'],
    step: '3 mm',
    seenFrom: 'above',
    sets: 'camber',
  })
  spoil(file, ['joints', 'strut-top-nuts', 'adjuster'], 'plate')
  const corner = read(file)
  const plate = adjustersOf(corner).find(({ id }) => id === 'plate')!
  expect(plate).toMatchObject({ moves: 'topMount', along: [0, -1, 0], step: mm(3) })
  expect(displacementOf(plate, cornerPoints(corner), mm(3)).body).toEqual({ topMount: [0, -0.003, 0] })
})

test('CO6 an adjuster that cannot work is told at its own member', () => {
  const told = (file: Record<string, unknown>) => {
    const corner = readCorner(file)
    return corner.ok ? [] : corner.problems.map(({ field }) => field)
  }
  expect(told(spoil(unit('03/front'), ['adjusters', 'kingpin-sleeve', 'tilt'], '0°'))).toEqual([
    'adjusters.kingpin-sleeve.tilt',
  ])
  expect(told(spoil(unit('03/front'), ['adjusters', 'kingpin-sleeve', 'range', 1], '400°'))).toEqual([
    'adjusters.kingpin-sleeve.range',
  ])
  expect(told(spoil(unit('12/rear'), ['adjusters', 'toe-wedge', 'sizes', 0], '-0.25°'))).toEqual([
    'adjusters.toe-wedge.sizes',
  ])
  // 600 turns of a 1.5 mm thread are longer than the drag link itself.
  const range = ['-600 turns', '4 turns']
  for (const rod of ['drag-link', 'tie-rod'])
    expect(told(spoil(unit('03/front'), ['adjusters', rod, 'range'], range))).toEqual([`adjusters.${rod}`])
})

test('CO7 bushes and letters are those of the file for axles too', () => {
  const tipper = read(unit('03/front'))
  expect(Object.values(jointLetters(tipper)).join('')).toBe('ABCDEFGHIJKLMNO')
  expect(bushesOf(tipper).map(({ letter, pivot, part }) => `${letter} ${pivot} ${part}`)).toEqual([
    'I leaf-front-eye leaf-spring',
    'J shackle-top shackle',
    'K leaf-rear-eye shackle',
  ])
  expect(bushesOf(read(unit('12/rear'))).map(({ pivot, part }) => `${pivot} ${part}`)).toEqual(['pivot beam'])
})

test('CO5 spreads of an axle’s points go by the linkage room’s names', () => {
  expect(pointSpreads(read(unit('12/rear')))).toEqual({
    pivot: mm(4),
    shearCentre: mm(10),
    wheelCentre: mm(2),
  })
})

test.each(['03/front', '07/rear', '12/rear'])('CO4 the demo axle %s is written as it was read', (file) => {
  const written = writeCorner(read(unit(file)))
  expect(writeCorner(read(written))).toEqual(written)
  expect(Object.keys(written.joints)).toEqual(Object.keys(unit(file).joints as object))
})

test('CO11 a layout is computed corner by corner or as a whole axle', () => {
  expect(layouts.filter(isWholeAxle)).toEqual(['twist beam', 'solid axle, leaf springs', 'solid axle, coils'])
})
refuses('not-one-corner', () => cornerPoints(read(unit('12/rear'))), 'layout')
refuses('not-a-whole-axle', () => wholeAxlePoints(demoCorner('07')), 'layout')
refuses(
  'no-such-point',
  () => {
    const { 'shear-centre': _, ...points } = read(unit('12/rear')).points
    wholeAxlePoints({ ...read(unit('12/rear')), points })
  },
  'points.shear-centre',
)
refuses(
  'no-such-point',
  () => wholeAxlePoints({ ...read(unit('07/rear')), axle: 'front' }),
  'points.kingpin-lower',
)
