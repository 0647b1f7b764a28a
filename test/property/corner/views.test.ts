import { expect, test } from 'vitest'
import { checkAdjuster, displacementOf } from '../../../src/adjust/index.ts'
import {
  adjustersOf,
  bushesOf,
  closestName,
  cornerPoints,
  fieldPath,
  jointLetters,
  linkNames,
  pointNames,
  pointSpreads,
  readCorner,
} from '../../../src/corner/index.ts'
import { displaceable, mechanism } from '../../../src/linkage/index.ts'
import { deg, mm } from '../../../src/quantity/index.ts'
import { demo, demoCorner, spoil } from './demo.ts'

/** Five links from the strut's own points, enough to hold a wheel. */
function fiveLink(): Record<string, unknown> {
  const json = demo('port-unit-12/front.corner.json')
  const at: Record<string, readonly [readonly number[], readonly number[]]> = {
    'link-1': [
      [120, 400, 520],
      [30, 690, 540],
    ],
    'link-2': [
      [-150, 410, 510],
      [-40, 685, 530],
    ],
    'link-3': [
      [180, 350, 230],
      [15, 710, 210],
    ],
    'link-4': [
      [-200, 360, 240],
      [-10, 705, 215],
    ],
    'link-5': [
      [-150, 340, 300],
      [-130, 680, 290],
    ],
  }
  const points: Record<string, unknown> = { 'wheel-centre': { at: ['0 mm', '740 mm', '310 mm'] } }
  const links: string[][] = []
  for (const [name, [inner, outer]] of Object.entries(at)) {
    points[`${name}-inner`] = { at: inner.map((x) => `${x} mm`) }
    points[`${name}-outer`] = { at: outer.map((x) => `${x} mm`) }
    links.push([`${name}-inner`, `${name}-outer`])
  }
  spoil(json, ['layout'], 'five-link')
  spoil(json, ['steeredLink'], 5)
  spoil(json, ['points'], points)
  spoil(json, ['parts'], {
    body: { kind: 'body' },
    arms: { kind: 'arm', links },
    knuckle: { kind: 'knuckle' },
  })
  spoil(json, ['joints'], {
    inner: { kind: 'bolt', joins: ['arms', 'body'], at: 'link-1-inner', adjuster: 'shims' },
    outer: { kind: 'bolt', joins: ['arms', 'knuckle'], at: 'link-1-outer', adjuster: 'toe' },
  })
  spoil(json, ['adjusters'], {
    shims: {
      kind: 'shims',
      name: 'upper shims',
      moves: ['link-1-inner', 'link-2-inner'],
      along: [0, 2, 0],
      sizes: ['1 mm', '1/32 in'],
      asDrawn: '3 mm',
      range: ['0 mm', '9 mm'],
      step: '1 mm',
    },
    toe: {
      kind: 'thread',
      name: 'toe link',
      between: ['link-5-outer', 'link-5-inner'],
      pitch: '1.5 mm',
      sleeve: true,
      range: ['-3 turns', '3 turns'],
      step: '1/12 turn',
      seenFrom: 'outside',
      positiveLooks: 'clockwise',
      rightSide: 'mirrored thread',
    },
  })
  return spoil(json, ['holds'], {})
}

test('CO5 every point and link of every layout has the linkage room’s name', () => {
  for (const corner of [demoCorner('07'), demoCorner('12')]) {
    const points = cornerPoints(corner)
    const { body, knuckle, length } = displaceable(points)
    const family = points.layout
    const inside = [...Object.values(pointNames[family])]
    expect([...body, ...knuckle]).toEqual(expect.arrayContaining(inside))
    expect(length).toEqual(expect.arrayContaining(linkNames[family].map(([, , name]) => name)))
    expect(() => mechanism(points)).not.toThrow()
  }
})

test('CO5 each point of a file stands in its own place', () => {
  const mm3 = (...at: number[]) => at.map((x) => x / 1000)
  expect(cornerPoints(demoCorner('12'))).toEqual({
    layout: 'strut',
    wheelCentre: mm3(0, 735, 298),
    camber: deg(-0.4),
    toe: deg(0.06),
    tyreRadius: mm(298),
    lowerFrontInner: mm3(22, 358, 188),
    lowerRearInner: mm3(-288, 352, 199),
    lowerOuter: mm3(6, 688, 176),
    topMount: mm3(-31, 548, 846),
    strutLower: mm3(-5, 607, 410),
    tieInner: mm3(-148, 336, 246),
    tieOuter: mm3(-132, 668, 236),
  })
  expect(cornerPoints(demoCorner('07'))).toMatchObject({
    upperFrontInner: mm3(112, 440, 541),
    upperRearInner: mm3(-126, 447, 524),
    upperOuter: mm3(-12, 668, 550),
    lowerFrontInner: mm3(188, 352, 268),
    lowerRearInner: mm3(-205, 356, 262),
  })
})

test('CO5 a five-link corner is read, its links counted from 1 in the file', () => {
  const read = readCorner(fiveLink())
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const points = cornerPoints(read.value)
  if (points.layout !== 'five-link') throw new Error(points.layout)
  expect(points.links[0].inner).toEqual([0.12, 0.4, 0.52])
  expect(points.links.map((l) => l.rack ?? false)).toEqual([false, false, false, false, true])
  const [shims, toe] = adjustersOf(read.value)
  expect(shims).toMatchObject({ moves: ['inner0', 'inner1'], along: [0, 1, 0], asDrawn: mm(3), play: 0 })
  expect(toe).toMatchObject({ length: 'link4', sleeve: true, rightSide: 'mirrored thread' })
})

test('CO2 a front five-link corner says which link is steered', () => {
  const read = readCorner(spoil(fiveLink(), ['steeredLink'], undefined))
  expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(['steeredLink'])
})

test('CO6 every adjuster of the demo moves a point that the linkage has', () => {
  for (const corner of [demoCorner('07'), demoCorner('12')])
    for (const adjuster of adjustersOf(corner)) {
      checkAdjuster(adjuster)
      expect(() => displacementOf(adjuster, cornerPoints(corner), adjuster.range[1])).not.toThrow()
    }
})

test('CO6 an eccentric comes over with its own names and numbers', () => {
  expect(adjustersOf(demoCorner('07'))[0]).toEqual({
    kind: 'eccentric',
    id: 'lower-front-eccentric',
    name: 'front eccentric',
    moves: 'lowerFrontInner',
    along: [0, 1, 0],
    throw: mm(5.5),
    range: [deg(-90), deg(90)],
    step: deg(3),
    play: deg(2),
    seenFrom: 'front',
    positiveLooks: 'clockwise',
    markAt: 0,
  })
})

test('CO7 letters follow the order of the file and bushes carry them', () => {
  const corner = demoCorner('07')
  const letters = jointLetters(corner)
  expect(Object.values(letters).join('')).toBe('ABCDEFGHIJKL')
  expect(bushesOf(corner).map((b) => `${b.letter} ${b.pivot}`)).toEqual([
    'A lowerFrontInner',
    'B lowerRearInner',
    'D upperFrontInner',
    'E upperRearInner',
  ])
  expect(bushesOf(corner)[0]).toMatchObject({
    part: 'lower-arm',
    bonded: true,
    adjuster: 'lower-front-eccentric',
  })
})

test('CO7 after Z the letters go on with AA', () => {
  const corner = demoCorner('07')
  const joint = corner.joints['lower-ball-joint']!
  const joints = Object.fromEntries(Array.from({ length: 30 }, (_, i) => [`j${i}`, joint]))
  expect(Object.values(jointLetters({ ...corner, joints })).slice(24)).toEqual([
    'Y',
    'Z',
    'AA',
    'AB',
    'AC',
    'AD',
  ])
})

test('CO5 spreads are given for the points of the linkage only', () => {
  expect(pointSpreads(demoCorner('07')).lowerOuter).toBe(0.003)
  expect(Object.keys(pointSpreads(demoCorner('07')))).not.toContain('coil-top')
})

test('CO2 a close name is one slip away, a far one is none', () => {
  const known = ['lower-outer', 'upper-outer', 'wheel']
  expect(closestName('lower-outr', known)).toBe('lower-outer')
  expect(closestName('uper-outre', known)).toBe('upper-outer')
  expect(closestName('whele', known)).toBe('wheel')
  expect(closestName('hub', known)).toBeNull()
  expect(closestName('', known)).toBeNull()
})

test('CO2 a field’s path reads as a person would write it', () => {
  expect(fieldPath(['points', 'lower-outer', 'at', 1])).toBe('points.lower-outer.at[1]')
  expect(fieldPath(['limits', 'front toe', 'low'])).toBe('limits.front toe.low')
  expect(fieldPath(['a.b', ''])).toBe('["a.b"][""]')
  expect(fieldPath([])).toBe('the file')
})
