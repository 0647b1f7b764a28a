// The trade's rules of thumb for adjusters, worked out on a corner whose joint axis stands upright.
import { describe } from 'vitest'
import { type Adjuster, displacementOf, type ShimPack, strokeOf } from '../../../src/adjust/index.ts'
import { type DoubleWishbone, mechanism, poseAt, sumOfDisplacements } from '../../../src/linkage/index.ts'
import { deg, inch, inDegrees, metre, mm, rad } from '../../../src/quantity/index.ts'
import { eccentric, tieRod } from '../../property/adjust/invented-corners.ts'
import { published } from '../../support/published.ts'

/** Equal level arms, ball joints straight above one another, tie rod 130 mm behind. Invented. */
const upright = (spacing: number): DoubleWishbone => ({
  layout: 'double wishbone',
  upperFrontInner: [0.15, 0.4, 0.25 + spacing],
  upperRearInner: [-0.15, 0.4, 0.25 + spacing],
  upperOuter: [0, 0.7, 0.25 + spacing],
  lowerFrontInner: [0.15, 0.4, 0.25],
  lowerRearInner: [-0.15, 0.4, 0.25],
  lowerOuter: [0, 0.7, 0.25],
  tieInner: [-0.13, 0.4, 0.3],
  tieOuter: [-0.13, 0.7, 0.3],
  wheelCentre: [0, 0.8, 0.33],
  camber: rad(0),
  toe: rad(0),
  tyreRadius: metre(0.33),
})
const still = { travel: metre(0), rack: metre(0) }
const angles = (corner: DoubleWishbone, ...set: readonly (readonly [Adjuster, number])[]) => {
  const pose = poseAt(
    mechanism(corner, sumOfDisplacements(set.map(([one, to]) => displacementOf(one, corner, to)))),
    still,
  )
  return { camber: inDegrees(pose.camber), caster: inDegrees(pose.caster!), toe: inDegrees(pose.toe) }
}
const pair = (size: number, front: number, rear: number) => {
  const one = (id: string, moves: string) => eccentric(id, moves, { throw: mm(size) })
  return [
    [one('front', 'upperFrontInner'), front],
    [one('rear', 'upperRearInner'), rear],
  ] as const
}
const shims: ShimPack = {
  kind: 'shims',
  id: 'shims',
  name: 'shims',
  moves: ['upperFrontInner', 'upperRearInner'],
  along: [0, 1, 0],
  sizes: [inch(1 / 32)],
  range: [mm(0), mm(10)],
  step: inch(1 / 32),
  play: mm(0),
}
const source = 'trade table of adjusters, recomputed from the lever of the joints'
const row = (id: string, got: number, want: number, within: number) =>
  ({ id, got, want, within, source, basis: 'derived' }) as const

describe('AD1', () => {
  published('eccentric pair at 300 mm joint spacing: full throw as camber', [
    row('3 mm', angles(upright(0.3), ...pair(3, deg(90), deg(90))).camber, 0.57, 0.005),
    row('5 mm', angles(upright(0.3), ...pair(5, deg(90), deg(90))).camber, 0.95, 0.005),
    row('6 mm', angles(upright(0.3), ...pair(6, deg(90), deg(90))).camber, 1.15, 0.005),
    row('6 mm inward', angles(upright(0.3), ...pair(6, deg(-90), deg(-90))).camber, -1.15, 0.005),
    // opposite ways: the arm turns by 6/150 rad, so the upper joint goes 12 mm forward or back on 300 mm (2.29° of
    // caster) and, second order, 0.24 to 0.30 mm inward (0.05 to 0.06° of camber)
    row(
      'opposite ways, caster',
      Math.abs(angles(upright(0.3), ...pair(6, deg(90), deg(-90))).caster),
      2.29,
      0.02,
    ),
    row('opposite ways, camber', angles(upright(0.3), ...pair(6, deg(90), deg(-90))).camber, -0.05, 0.01),
  ])
  published('an eccentric is sinusoidal: 10° of turn in the middle and at the end', [
    row('3 mm, middle', 1000 * strokeOf(pair(3, 0, 0)[0][0], deg(10)), 0.5, 0.05),
    row('6 mm, middle', 1000 * strokeOf(pair(6, 0, 0)[0][0], deg(10)), 1, 0.05),
    row(
      '6 mm, end: under 0.1',
      1000 * (strokeOf(pair(6, 0, 0)[0][0], deg(90)) - strokeOf(pair(6, 0, 0)[0][0], deg(80))),
      0.05,
      0.05,
    ),
  ])
  published('1/32 in under both bolts', [
    row('joints 350 mm apart', angles(upright(0.35), [shims, inch(1 / 32)]).camber, 0.13, 0.005),
    row('joints 250 mm apart', angles(upright(0.25), [shims, inch(1 / 32)]).camber, 0.18, 0.005),
  ])
  const perTurn = angles(upright(0.3), [tieRod(), 1]).toe
  const sleeve = angles(upright(0.3), [tieRod({ sleeve: true }), 1]).toe
  published('tie-rod thread 1.5 mm on a 130 mm arm', [
    row('one turn', perTurn, 0.66, 0.005),
    row('one turn of a left-and-right sleeve', sleeve, 1.32, 0.01),
    // steering wheel 3° off at 16:1
    row('3° of steering wheel, at the road wheels', 3 / 16, 0.19, 0.005),
    row('3° of steering wheel, turns each side', 3 / 16 / perTurn, 0.28, 0.005),
  ])
})
