import {
  type BoxSteering,
  centringChange,
  idlerAngle,
  type Point,
  rodsForToes,
  steeringShift,
  steeringWheelOff,
} from '../../../src/linkage/index.ts'
import { deg, inDegrees, inMillimetres, metre, rad } from '../../../src/quantity/index.ts'
import { box, inner } from '../../support/linkage-examples.ts'
import { type PublishedRow, published } from '../../support/published.ts'
import { byLeastSquares, distance, minus, plus, turned } from './least-squares.ts'

const turn = (degrees: number): number => Math.atan2(Math.sin(deg(degrees)), Math.cos(deg(degrees)))
/** Difference of two angles in degrees, between −180 and 180, added to the wanted one. */
const beside = (got: number, want: number): number => want + inDegrees(turn(got - want))

// ratio 1: nothing of it counts for the idler
const spatial = (idlerJoint: Point): BoxSteering => ({
  kind: 'box',
  dropAxis: [
    [0, 0, 0],
    [0, 0, 1],
  ],
  dropJoint: [40, 0, 0],
  idlerAxis: [
    [150, 20, 30],
    [151, 20, 30],
  ],
  idlerJoint,
  ratio: 1,
})
// [input, output of the first assembly, of the second], as the table pairs them by following from input 0
const table = [
  [-60, -103.03001451, 160.56694192],
  [-40, -69.36507553, 135.91804968],
  [-20, -36.26743284, 119.65130295],
  [0, 0, 112.61986495],
  [20, 25.28996294, 130.92026786],
  [40, 20.53527669, -178.97693306],
  [60, -7.54416555, -120.4279478],
] as const
const at = (angle: number): Point => [150, 20 + 60 * Math.cos(deg(angle)), 30 + 60 * Math.sin(deg(angle))]

published(
  'LI18 drop arm, centre link and idler as the spatial four-bar of the textbooks, both assemblies',
  // input 0 is where both assemblies start, so it would check nothing
  table
    .filter(([input]) => input !== 0)
    .flatMap(([input, ...outputs]) =>
      outputs.map((want, which): PublishedRow => {
        const start = which === 0 ? 0 : 112.61986495
        const got = inDegrees(idlerAngle(spatial(at(start)), deg(input))) + start
        return {
          id: `rssr.1 input ${input} assembly ${which + 1}`,
          got: beside(got, want),
          want,
          within: which === 0 ? 2e-8 : 1e-7, // printed to 8 decimals; the start is too
          source: 'closed form E cos φ + F sin φ + G = 0 (Hartenberg and Denavit; Suh and Radcliffe)',
          basis: 'derived',
        }
      }),
    ),
)

interface FourBar {
  readonly id: string
  readonly bars: readonly [a: number, b: number, c: number, d: number]
  readonly theta2: number
  readonly open: number
  readonly crossed: number
  readonly within: number
  readonly source: string
  readonly basis: 'from memory' | 'derived'
}
const derived = { source: 'Freudenstein equation, recomputed', basis: 'derived', within: 5.1e-7 } as const
const planar: readonly FourBar[] = [
  {
    id: 'norton.4-1',
    bars: [40, 120, 80, 100],
    theta2: 40,
    open: 57.3249,
    crossed: -98.005,
    within: 5.1e-4,
    source: 'Norton, Design of Machinery, example 4-1, from memory and recomputed',
    basis: 'from memory',
  },
  {
    id: 'fourbar.146.5',
    bars: [146.5, 233.84, 228.6, 221.43],
    theta2: 60,
    open: 72.976711,
    crossed: -154.117436,
    ...derived,
  },
  {
    id: 'fourbar.30',
    bars: [30, 90, 70, 100],
    theta2: 75,
    open: 99.569262,
    crossed: -134.451763,
    ...derived,
  },
  {
    id: 'fourbar.50',
    bars: [50, 120, 60, 110],
    theta2: 30,
    open: 27.391516,
    crossed: -68.485495,
    ...derived,
  },
]

/** Rocker end of a planar four-bar where two circles cut, on one side of the line between crank pin and pivot. */
function rocker([a, b, c, d]: FourBar['bars'], theta2: number, side: 1 | -1): Point {
  const pin = [a * Math.cos(deg(theta2)), a * Math.sin(deg(theta2))] as const
  const [x, y] = [d - pin[0], -pin[1]]
  const long = Math.hypot(x, y)
  const along = (b * b - c * c + long * long) / (2 * long)
  const off = side * Math.sqrt(b * b - along * along)
  return [pin[0] + (along * x - off * y) / long, pin[1] + (along * y + off * x) / long, 0]
}

published(
  'LI18 a planar drop arm and idler as the four-bars of the textbooks, both assemblies',
  planar.flatMap(({ id, bars, theta2, open, crossed, ...row }) =>
    (
      [
        ['open', open, 1],
        ['crossed', crossed, -1],
      ] as const
    ).map(([name, want, side]): PublishedRow => {
      const [a, , , d] = bars
      // straight ahead is somewhere else on the same assembly: 20° further
      const start = theta2 + 20
      const joint = rocker(bars, start, side)
      const linkage: BoxSteering = {
        kind: 'box',
        dropAxis: [
          [0, 0, 0],
          [0, 0, 10],
        ],
        dropJoint: [a * Math.cos(deg(start)), a * Math.sin(deg(start)), 0],
        idlerAxis: [
          [d, 0, 0],
          [d, 0, 10],
        ],
        idlerJoint: joint,
        ratio: 1,
      }
      const from = inDegrees(Math.atan2(joint[1], joint[0] - d))
      const got = from + inDegrees(idlerAngle(linkage, deg(theta2 - start)))
      return { id: `${id} ${name} θ4`, got: beside(got, want), want, ...row }
    }),
  ),
)

// a drop arm longer than the idler, axes leaning: nothing is parallel
const skew: BoxSteering = {
  ...box,
  dropJoint: [-0.15, 0.35, 0.25],
  idlerAxis: [
    [0.02, -0.36, 0.3],
    [0.01, -0.34, 0.4],
  ],
}
function judged(wheel: number): Point {
  const drop = deg(wheel) / skew.ratio
  const pin = plus(skew.dropAxis[0], turned(minus(skew.dropJoint, skew.dropAxis[0]), [0, 0, drop]))
  const long = distance(skew.dropJoint, skew.idlerJoint)
  const [from, to] = skew.idlerAxis
  // the idler's joint keeps its distances to three points of its arm, and to the drop arm's joint
  const near = [from, to, plus(from, [minus(from, to)[0], minus(from, to)[1], minus(from, to)[2]])] as const
  return byLeastSquares(
    (v) => {
      const joint: Point = [v[0]!, v[1]!, v[2]!]
      return [
        distance(joint, pin) - long,
        ...near.map((p) => distance(joint, p) - distance(skew.idlerJoint, p)),
      ]
    },
    [...skew.idlerJoint],
  ) as unknown as Point
}
published(
  'LI18 the centre link’s far end against a general least-squares fitter',
  [-400, -90, 180, 450].flatMap((wheel): PublishedRow[] => {
    const want = judged(wheel)
    const { shift } = steeringShift(skew, {
      wheel: deg(wheel),
      inner: { left: inner.left, right: skew.idlerJoint },
    })
    return [0, 1].map((i) => ({
      id: `wheel ${wheel} ${'xy'[i]}`,
      got: skew.idlerJoint[i]! + shift.right[i]!,
      want: want[i]!,
      within: 1e-8,
      source: 'ml-levenberg-marquardt 5.1.0 on distances',
      basis: 'derived' as const,
    }))
  }),
)

const trade = { source: 'common practice, arithmetic redone here', basis: 'derived' } as const
const zero = { left: rad(0), right: rad(0) }
published('LI18 steering wheel against road wheels', [
  {
    id: 'thrust 0.25° at 16:1',
    got: Math.abs(inDegrees(steeringWheelOff({ toes: zero, thrust: deg(0.25) }, 16))),
    want: 4,
    within: 1e-12,
    ...trade,
  },
  {
    id: 'steering wheel 3° off at 16:1, at the wheels',
    got: () => {
      // toes that put the wheel 3° off; each has to change by that over the ratio
      const toes = { left: deg(3 / 16), right: deg(-3 / 16) }
      const off = inDegrees(steeringWheelOff({ toes, thrust: rad(0) }, 16))
      return Math.abs(inDegrees(centringChange({ toes, thrust: rad(0) }).left)) * (off / 3)
    },
    want: 0.19,
    within: 0.005, // printed to 0.01°
    ...trade,
  },
  {
    id: 'the same in turns of a 1.5 mm thread on a 130 mm arm',
    got: () => {
      const rate = 1 / 0.13
      const change = { left: deg(-3 / 16), right: deg(3 / 16) }
      return inMillimetres(rodsForToes(change, { left: rate, right: rate }).right) / 1.5
    },
    want: 0.28,
    within: 0.005, // printed to 0.01 turn
    ...trade,
  },
  {
    id: 'rack at one turn',
    got: steeringShift({ kind: 'rack', perTurn: metre(0.045) }, { wheel: deg(360), inner }).shift.left[1],
    want: 0.045,
    within: 1e-15,
    source: 'definition of travel per turn',
    basis: 'derived',
  },
])
