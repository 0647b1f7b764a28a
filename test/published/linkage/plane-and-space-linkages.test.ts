import { type Placement, type Point, rigidBodyFromDistances } from '../../../src/linkage/index.ts'
import { type PublishedRow, published } from '../../support/published.ts'

// A rocker on a fixed axis with a coupler of given length is a rigid body held by six distances: three hold one
// point of the axis, two more the other, the sixth is the coupler.
const rad = Math.PI / 180
const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])
const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]

/** Angle of a rocker about an axis through `centre` along x or z, from `guess`, both rad. */
function rockerAngle(
  {
    centre,
    along,
    joint,
    pin,
    coupler,
  }: { centre: Point; along: 'x' | 'z'; joint: Point; pin: Point; coupler: number },
  guess: number,
): number {
  const size = Math.hypot(...joint)
  const axis: Point = along === 'x' ? [size, 0, 0] : [0, 0, size]
  const [u, v]: [Point, Point] =
    along === 'x'
      ? [
          [0, size, 0],
          [0, 0, size],
        ]
      : [
          [size, 0, 0],
          [0, size, 0],
        ]
  const other = plus(centre, axis)
  const base: Point[] = [
    plus(centre, axis.map((x) => -x) as unknown as Point),
    plus(centre, u),
    plus(centre, v),
    plus(other, u),
    plus(other, v),
    pin,
  ]
  const body: Point[] = [[0, 0, 0], [0, 0, 0], [0, 0, 0], axis, axis, joint]
  const lengths = [size, size, size, size, size, coupler]
  const half = guess / 2
  const turn: Placement['turn'] =
    along === 'x' ? [Math.cos(half), Math.sin(half), 0, 0] : [Math.cos(half), 0, 0, Math.sin(half)]
  const found = rigidBodyFromDistances({ base, body, lengths }, { origin: centre, turn })
  const [w, x, , z] = found.turn
  const angle = 2 * Math.atan2(along === 'x' ? x : z, w)
  return Math.atan2(Math.sin(angle), Math.cos(angle))
}

interface FourBar {
  readonly id: string
  readonly a: number
  readonly b: number
  readonly c: number
  readonly d: number
  readonly theta2: number
  readonly open: readonly [number, number]
  readonly crossed: readonly [number, number]
  readonly within: number
  readonly source: string
  readonly basis: 'from memory' | 'derived'
}
const derived = { source: 'Freudenstein equation, recomputed', basis: 'derived', within: 5.1e-7 } as const
const bars: readonly FourBar[] = [
  {
    id: 'norton.4-1',
    a: 40,
    b: 120,
    c: 80,
    d: 100,
    theta2: 40,
    open: [20.2979, 57.3249],
    crossed: [-60.978, -98.005],
    within: 5.1e-4,
    source: 'Norton, Design of Machinery, example 4-1, from memory and recomputed',
    basis: 'from memory',
  },
  {
    id: 'fourbar.146.5',
    a: 146.5,
    b: 233.84,
    c: 228.6,
    d: 221.43,
    theta2: 60,
    open: [23.091276, 72.976711],
    crossed: [-104.232001, -154.117436],
    ...derived,
  },
  {
    id: 'fourbar.30',
    a: 30,
    b: 90,
    c: 70,
    d: 100,
    theta2: 75,
    open: [26.42206, 99.569262],
    crossed: [-61.304561, -134.451763],
    ...derived,
  },
  {
    id: 'fourbar.50',
    a: 50,
    b: 120,
    c: 60,
    d: 110,
    theta2: 30,
    open: [1.243463, 27.391516],
    crossed: [-42.337442, -68.485495],
    ...derived,
  },
]

published(
  'LI11 planar four-bars, both closures',
  bars.flatMap(({ a, b, c, d, theta2, open, crossed, ...row }) =>
    (
      [
        ['open', open],
        ['crossed', crossed],
      ] as const
    ).flatMap(([name, [theta3, theta4]]): PublishedRow[] => {
      const pin: Point = [a * Math.cos(theta2 * rad), a * Math.sin(theta2 * rad), 0]
      const four = rockerAngle(
        { centre: [d, 0, 0], along: 'z', joint: [c, 0, 0], pin, coupler: b },
        // started ten degrees away
        (theta4 + 10) * rad,
      )
      const three = Math.atan2(c * Math.sin(four) - pin[1], d + c * Math.cos(four) - pin[0])
      const shared = { within: row.within, source: row.source, basis: row.basis }
      return [
        { id: `${row.id} ${name} θ3`, got: three / rad, want: theta3, ...shared },
        { id: `${row.id} ${name} θ4`, got: four / rad, want: theta4, ...shared },
      ]
    }),
  ),
)

const table: readonly (readonly [number, number, number])[] = [
  [-60, -103.03001451, 160.56694192],
  [-40, -69.36507553, 135.91804968],
  [-20, -36.26743284, 119.65130295],
  [0, 0, 112.61986495],
  [20, 25.28996294, 130.92026786],
  [40, -178.97693306, 20.53527669],
  [60, -120.4279478, -7.54416555],
]
published(
  'LI11 spatial crank and rocker with two ball joints, both closures',
  table.flatMap(([input, ...outputs]) =>
    outputs.map((want): PublishedRow => {
      const pin: Point = [40 * Math.cos(input * rad), 40 * Math.sin(input * rad), 0]
      const joint: Point = [0, 60, 0]
      const got = () =>
        rockerAngle(
          { centre: [150, 20, 30], along: 'x', joint, pin, coupler: 139.2838827718 },
          (want + 3) * rad,
        ) / rad
      return {
        id: `rssr.1 input ${input} output ${want}`,
        got,
        want,
        within: 2e-8, // printed to 8 decimals, coupler length to 10
        source: 'closed form E cos φ + F sin φ + G = 0 (Hartenberg and Denavit; Suh and Radcliffe)',
        basis: 'derived',
      }
    }),
  ),
)
published('LI11 the coupler of the spatial linkage', [
  {
    id: 'rssr.1 coupler',
    got: distance([40, 0, 0], [150, 80, 30]),
    want: 139.2838827718,
    within: 5.1e-11,
    source: 'distance of the two ball joints at zero',
    basis: 'derived',
  },
])
