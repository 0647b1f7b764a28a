import { axisFromSweep, smallAngleCaster, sweepReading } from '../../../src/gauge/index.ts'
import { combine, exact, type Measured, standardUncertainty } from '../../../src/measure/index.ts'
import { deg, inDegrees, rad } from '../../../src/quantity/index.ts'
import { inclinometer, plain, turnPlates } from '../../property/gauge/kit.ts'
import { published } from '../../support/published.ts'

// id, caster, SAI, camber straight ahead, heading to each side, camber at left and right turn, caster by the sine form
const rows: readonly (readonly [string, number, number, number, number, number, number, number])[] = [
  ['castersweep.c3.k12.cam0.th10', 3, 12, 0, 10, 0.707333499, -0.336187409, 3.004699],
  ['castersweep.c3.k12.cam0.th15', 3, 12, 0, 15, 1.194617502, -0.36194414, 3.007046],
  ['castersweep.c3.k12.cam0.th20', 3, 12, 0, 20, 1.766689903, -0.29237894, 3.010157],
  ['castersweep.c6.k13.cam-1.th10', 6, 13, -1, 10, 0.244820206, -1.839780573, 6.002369],
  ['castersweep.c6.k13.cam-1.th15', 6, 13, -1, 15, 1.009169645, -2.100690625, 6.007789],
  ['castersweep.c6.k13.cam-1.th20', 6, 13, -1, 20, 1.861222151, -2.253264127, 6.014977],
  ['castersweep.c8.k14.cam-1.th10', 8, 14, -1, 10, 0.613926085, -2.172781812, 8.024006],
  ['castersweep.c8.k14.cam-1.th15', 8, 14, -1, 15, 1.573367578, -2.584197898, 8.0318],
  ['castersweep.c8.k14.cam-1.th20', 8, 14, -1, 20, 2.625594455, -2.875526133, 8.0421],
  ['castersweep.c-1.k6.cam0.5.th10', -1, 6, 0.5, 10, 0.417752648, 0.765454829, -1.001169],
  ['castersweep.c-1.k6.cam0.5.th15', -1, 6, 0.5, 15, 0.446303526, 0.96463862, -1.001347],
  ['castersweep.c-1.k6.cam0.5.th20', -1, 6, 0.5, 20, 0.521137679, 1.206259388, -1.001581],
  ['castersweep.c4.k10.cam-2.th10', 4, 10, -2, 10, -1.154739645, -2.538372689, 3.984013],
  ['castersweep.c4.k10.cam-2.th15', 4, 10, -2, 15, -0.624037574, -2.687576443, 3.986451],
  ['castersweep.c4.k10.cam-2.th20', 4, 10, -2, 20, -0.026166938, -2.75528562, 3.989705],
]
const source =
  'rigid rotation of the spindle about the steering axis (invariant k·s); method subject of SAE Technical Paper 850219 (1985)'
const close = { within: 1e-6, source, basis: 'derived' } as const

published(
  'GA5 caster from a sweep, exact and by sines',
  rows.flatMap(([id, caster, sai, camber0, heading, left, right, sine]) => {
    const place = (steer: number, camber: number) => ({ steer: deg(steer), camber: deg(camber) })
    const [l, r, straight] = [place(heading, left), place(-heading, right), place(0, camber0)]
    const two = axisFromSweep([l, r], { side: 'left', sai: deg(sai) })
    const three = axisFromSweep([l, r, straight], { side: 'left' })
    const mirrored = axisFromSweep([place(heading, right), place(-heading, left)], {
      side: 'right',
      sai: deg(sai),
    })
    return [
      { id: `${id}.two`, got: inDegrees(two.caster), want: caster, ...close },
      { id: `${id}.right`, got: inDegrees(mirrored.caster), want: caster, ...close },
      { id: `${id}.three.caster`, got: inDegrees(three.caster), want: caster, ...close },
      { id: `${id}.three.sai`, got: inDegrees(three.sai), want: sai, ...close },
      { id: `${id}.sine`, got: inDegrees(smallAngleCaster(l, r, 'left')), want: sine, ...close },
    ]
  }),
)

const factor = (turn: number) =>
  smallAngleCaster({ steer: deg(turn), camber: deg(1) }, { steer: deg(-turn), camber: deg(0) }, 'left') /
  deg(1)
const table = 'trade table of this project, computed from the sine form'
published('GA5 sweep factors', [
  { id: 'factor.10', got: factor(10), want: 2.879, within: 0.0005, source: table, basis: 'derived' },
  { id: 'factor.15', got: factor(15), want: 1.932, within: 0.0005, source: table, basis: 'derived' },
  { id: 'factor.20', got: factor(20), want: 1.462, within: 0.0005, source: table, basis: 'derived' },
  { id: 'factor.25', got: factor(25), want: 1.183, within: 0.0005, source: table, basis: 'derived' },
  {
    id: 'times-1.5-at-20',
    got: 100 * (1.5 / factor(20) - 1),
    want: 2.6,
    within: 0.05,
    source: table,
    basis: 'derived',
  },
  {
    id: '20-factor-on-15',
    got: 100 * (1 - factor(20) / factor(15)),
    want: 24,
    within: 0.5,
    source: table,
    basis: 'derived',
  },
])

// Camber at a heading by the published relation, for caster 6°, SAI 13°, camber −1° straight ahead: by halving.
function camberAt(heading: number, mirror: 1 | -1): number {
  const [c, k] = [Math.tan(deg(6)), Math.tan(deg(13))]
  const invariant = (p: number, g: number) =>
    c * Math.sin(p) * Math.cos(g) - k * Math.cos(p) * Math.cos(g) - Math.sin(g)
  const want = invariant(0, deg(-1))
  let [low, high] = [-0.5, 0.5]
  for (let i = 0; i < 60; i++) {
    const g = (low + high) / 2
    if (invariant(mirror * heading, g) > want) low = g
    else high = g
  }
  return low
}
/** A sweep with the wheels `off` to the left of what the gauge says. */
function sweep(side: 'left' | 'right', turn: number, { off = 0, camber = 0, steer = 0 }): Measured {
  const place = (said: number) => ({
    steer: deg(said),
    camber: rad(camberAt(deg(said + off), side === 'left' ? 1 : -1)),
  })
  const [caster] = sweepReading(
    {
      method: 'steer sweep',
      id: 'sweep',
      side,
      gauge: 'level',
      steerGauge: 'plates',
      sweeps: [{ left: place(turn), right: place(-turn) }],
    },
    plain({
      instruments: [inclinometer({ placing: deg(camber) }), turnPlates({ placing: deg(steer) })],
      sai: { left: exact(deg(13)), right: exact(deg(13)) },
    }),
  )
  return caster!.measured
}
const twice = (m: Measured) => 2 * inDegrees(standardUncertainty(m))
const cross = (a: Measured, b: Measured) =>
  combine([
    { of: a, times: 1 },
    { of: b, times: -1 },
  ])
const table2 = 'trade table of this project (reading errors as boxes, result two standard deviations)'
const apart = 'the same relation differentiated in a separate program that shares no code with this one'
const middle = { camber: 0.1, steer: 1 }
const cases = [
  ['20.fine', twice(sweep('left', 20, { camber: 0.05, steer: 0.5 })), 0.2, 0.19],
  ['20.middle', twice(sweep('left', 20, middle)), 0.4, 0.381],
  ['20.coarse', twice(sweep('left', 20, { camber: 0.1, steer: 2 })), 0.67, 0.642],
  ['10.middle', twice(sweep('left', 10, middle)), 0.72, 0.696],
] as const
// The trade table's figures are 3 to 5 % wider than the relation gives for its stated errors: held to 6 %.
published('GA6 what a sweep can tell', [
  ...cases.flatMap(([id, got, want, exactly]) => [
    { id, got, want, within: 0.06 * want, source: table2, basis: 'derived' as const },
    { id: `${id}.apart`, got, want: exactly, within: 0.0005, source: apart, basis: 'derived' as const },
  ]),
  {
    id: 'cross.middle',
    got: twice(cross(sweep('left', 20, middle), sweep('right', 20, middle))),
    want: 0.57,
    within: 0.06 * 0.57,
    source: table2,
    basis: 'derived',
  },
  {
    id: 'cross.one-degree-off.apart',
    got: Math.abs(inDegrees(cross(sweep('left', 20, { off: 1 }), sweep('right', 20, { off: 1 })).value)),
    want: 0.457,
    within: 0.0005,
    source: apart,
    basis: 'derived',
  },
  {
    id: 'cross.one-degree-off.sines',
    got: Math.abs(inDegrees(bySines('left') - bySines('right'))),
    want: 0.47,
    within: 0.005,
    source: table2,
    basis: 'derived',
  },
])

function bySines(side: 'left' | 'right'): number {
  const place = (said: number) => ({
    steer: deg(said),
    camber: rad(camberAt(deg(said + 1), side === 'left' ? 1 : -1)),
  })
  return smallAngleCaster(place(20), place(-20), side)
}
