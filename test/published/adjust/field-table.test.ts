// The trade's table of adjusters in the field: rows worked out anew from levers on invented corners whose joints stand
// upright, and from the circle of a sleeve.
import { describe } from 'vitest'
import {
  type Adjuster,
  displacementOf,
  type MovesProblem,
  moves,
  type WholeAxleSetup,
} from '../../../src/adjust/index.ts'
import {
  type AnyCornerPoints,
  axlePoseAt,
  type DoubleWishbone,
  mechanism,
  poseAt,
  type Strut,
  sleeveTilt,
  solidAxle,
} from '../../../src/linkage/index.ts'
import { exact } from '../../../src/measure/index.ts'
import { deg, inDegrees, metre, mm, rad, turn } from '../../../src/quantity/index.ts'
import { tieRod } from '../../property/adjust/invented-corners.ts'
import {
  set,
  sleeve,
  straight,
  subFrame,
  tipperFront,
  topPlate,
  wedge,
} from '../../property/adjust/whole-axles.ts'
import { published } from '../../support/published.ts'

const still = { travel: metre(0), rack: metre(0) }
const angles = (points: AnyCornerPoints, adjuster?: Adjuster, setting = 0) => {
  const pose = poseAt(mechanism(points, adjuster ? displacementOf(adjuster, points, setting) : {}), still)
  return {
    camber: inDegrees(pose.camber),
    caster: inDegrees(rad(pose.caster ?? 0)),
    sai: inDegrees(rad(pose.sai ?? 0)),
    toe: inDegrees(pose.toe),
  }
}
const source = 'trade table of adjusters, recomputed from the lever of the joints'
const row = (id: string, got: number, want: number, within: number) =>
  ({ id, got, want, within, source, basis: 'derived' }) as const

/** A strut whose top stands 0.66 m straight above the lower joint. */
const upright: Strut = {
  layout: 'strut',
  lowerFrontInner: [0.15, 0.35, 0.18],
  lowerRearInner: [-0.15, 0.35, 0.18],
  lowerOuter: [0, 0.7, 0.18],
  strutLower: [0, 0.7, 0.4],
  topMount: [0, 0.7, 0.84],
  tieInner: [-0.13, 0.35, 0.18],
  tieOuter: [-0.13, 0.7, 0.18],
  wheelCentre: [0, 0.77, 0.3],
  camber: rad(0),
  toe: rad(0),
  tyreRadius: metre(0.3),
}
/** Joints 0.3 m above one another; the lower arm goes square across, a strut rod forward and inward from its outer end. */
const withStrutRod: DoubleWishbone = {
  layout: 'double wishbone',
  upperFrontInner: [0.15, 0.4, 0.55],
  upperRearInner: [-0.15, 0.4, 0.55],
  upperOuter: [0, 0.7, 0.55],
  lowerRearInner: [0, 0.35, 0.25],
  lowerFrontInner: [0.4, 0.4, 0.25],
  lowerOuter: [0, 0.7, 0.25],
  tieInner: [-0.13, 0.4, 0.3],
  tieOuter: [-0.13, 0.7, 0.3],
  wheelCentre: [0, 0.8, 0.33],
  camber: rad(0),
  toe: rad(0),
  tyreRadius: metre(0.33),
}
const strutRod = tieRod({
  id: 'strut rod',
  name: 'strut rod',
  length: 'lowerFront',
  pitch: mm(1.5),
  range: [turn(-6), turn(6)],
  sets: 'caster',
})

describe('AD1 AD21 AD22 AD23', () => {
  const out = angles(upright, topPlate(), mm(6))
  published('AD21 a strut top shifted 6 mm outward on 660 mm: atan(6/660)', [
    row('camber', out.camber, 0.52, 0.005),
    row('SAI', out.sai, -0.52, 0.005),
    row('included angle', out.camber + out.sai, 0, 0.0005),
  ])
  const plate = angles(upright, topPlate({ along: [-1, 0, 0] }), mm(6))
  published('AD21 the same plate shifted rearward: caster, hardly camber', [
    row('caster', plate.caster, 0.52, 0.005),
    row('camber', plate.camber, 0, 0.02),
  ])
  const frame = subFrame({ moves: ['lowerFrontInner', 'lowerRearInner', 'tieInner'] })
  const [left, right] = [angles(upright, frame, mm(4)), angles(upright, frame, mm(-4))]
  published('AD22 sub-frame 4 mm to the left, struts 660 mm: one side gains what the other loses', [
    row('left camber', left.camber, -0.35, 0.005),
    row('right camber', right.camber, 0.35, 0.005),
    row('sum', left.camber + right.camber, 0, 0.0005),
  ])
  const [shorter, one] = [angles(withStrutRod, strutRod, -1), angles(withStrutRod, strutRod, 1)]
  published('AD1 strut rod, one turn of 1.5 mm at 300 mm joint spacing', [
    {
      id: 'caster, order of size',
      got: Math.abs(one.caster),
      want: 0.4,
      // 0.3 to 0.5
      within: 0.1,
      source: 'trade table of adjusters, strut rod length: 0.3–0.5° per turn',
      basis: 'from memory',
    },
    // the rod runs 0.4 m forward on 0.5 m, so the lower joint goes pitch · 0.5/0.4 back on 300 mm
    row('caster, by the lever', Math.abs(one.caster), inDegrees(rad((0.0015 * 0.5) / 0.4 / 0.3)), 0.01),
    row('the other way', one.caster + shorter.caster, 0, 0.01),
    row('camber: none to speak of', one.camber, 0, 0.01),
  ])
  const wedges = [0.25, 0.5, 1].map((size) => angles(upright, wedge('camber'), deg(size)).camber)
  published('AD23 a wedge adds what is marked on it', [
    row('1/4°', wedges[0]!, 0.25, 1e-9),
    row('1/2°', wedges[1]!, 0.5, 1e-9),
    row('1°', wedges[2]!, 1, 1e-9),
  ])
})

describe('AD20', () => {
  /** Camber and caster of a left wheel on a kingpin, with a sleeve of 1° at a turn, against no sleeve. */
  const at = (degrees: number) => {
    const tilt = { left: sleeveTilt([{ offset: deg(1), angle: deg(degrees) }]) }
    const pose = axlePoseAt(solidAxle(tipperFront, { tilt }), straight)
    const was = axlePoseAt(solidAxle(tipperFront), straight)
    return {
      camber: inDegrees(rad(was.left.sai! - pose.left.sai!)),
      caster: inDegrees(rad(pose.left.caster! - was.left.caster!)),
    }
  }
  published('AD20 an offset sleeve of 1°: r·cos and r·sin', [
    row('0°, camber', at(0).camber, 1, 1e-9),
    row('0°, caster', at(0).caster, 0, 1e-9),
    row('30°, camber', at(30).camber, 0.866, 5e-4),
    row('30°, caster', at(30).caster, 0.5, 5e-4),
    row('90°, caster', at(90).caster, 1, 1e-9),
    row('120°, camber', at(120).camber, -0.5, 5e-4),
    row('−90°, caster', at(-90).caster, -1, 1e-9),
  ])
  // what the moves foresee of the same sleeve: 1.5° more caster asked of a sleeve that takes half a degree away
  const setup: WholeAxleSetup = {
    end: 'front',
    axle: tipperFront,
    drive: straight,
    left: set([sleeve({ tilt: deg(0.75), step: deg(90) }), deg(-90)]),
    right: set(),
  }
  const caster = (limit: NonNullable<MovesProblem['limits']['front left caster']>) => {
    const found = moves({
      axles: [setup],
      readings: { 'front left caster': exact(deg(2.5)) },
      limits: { 'front left caster': limit },
    })
    return {
      to: inDegrees(rad(found.moves[0]?.to ?? Number.NaN)),
      change: inDegrees(rad(found.foreseen[0]!.after.value)) - 2.5,
    }
  }
  const asked = caster({ low: deg(3.8), high: deg(4.2) })
  published(
    'AD20 a splined sleeve of 0.75° turned from all caster forward to all caster rearward: twice its tilt',
    [row('turned to', asked.to, 90, 1e-9), row('change of caster', asked.change, 1.5, 0.005)],
  )
})
