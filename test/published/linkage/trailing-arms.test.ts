import { type Displacement, mechanism, type Point, poseAt } from '../../../src/linkage/index.ts'
import { inDegrees, metre } from '../../../src/quantity/index.ts'
import { trailingArm } from '../../property/linkage/any-trailing-arm.ts'
import { type PublishedRow, published } from '../../support/published.ts'
import { byLeastSquares, camberOf, distance, minus, plus, spinOf, toeOf, turned } from './least-squares.ts'

const cases: readonly (readonly [string, Displacement])[] = [
  ['as designed', {}],
  ['rear bush moved', { body: { innerRear: [0.006, -0.002, 0.004] } }],
  [
    'arm bent, hub shimmed',
    {
      knuckle: { eyeFront: [0.004, 0.003, -0.005], wheelCentre: [0.002, 0.004, -0.003] },
      spin: [0.01, 0, -0.004],
    },
  ],
]
const none: Point = [0, 0, 0]

/** The hinge in the fitter's words: the front eye is in its bush, the rear eye on the line of the bushes. */
function judged(by: Displacement, travel: number): { camber: number; toe: number; y: number } {
  const p = trailingArm
  const front = plus(p.innerFront, by.body?.['innerFront'] ?? none)
  const rear = plus(p.innerRear, by.body?.['innerRear'] ?? none)
  const hub = plus(p.wheelCentre, by.knuckle?.['wheelCentre'] ?? none)
  const eyes = [
    plus(p.innerFront, by.knuckle?.['eyeFront'] ?? none),
    plus(p.innerRear, by.knuckle?.['eyeRear'] ?? none),
  ] as const
  const height = p.wheelCentre[2] + travel
  const long = distance(front, rear)
  const ahead = minus(rear, front).map((x) => x / long) as unknown as Point
  const errors = (v: readonly number[]): number[] => {
    const place = (q: Point): Point =>
      plus([v[0]!, v[1]!, height], turned(minus(q, hub), [v[2]!, v[3]!, v[4]!]))
    const off = minus(place(eyes[1]), front)
    const along = off[0] * ahead[0] + off[1] * ahead[1] + off[2] * ahead[2]
    return [...minus(place(eyes[0]), front), ...minus(off, ahead.map((x) => along * x) as unknown as Point)]
  }
  const v = byLeastSquares(errors, [hub[0], hub[1], 0, 0, 0])
  const s = turned(turned(spinOf(p.camber, p.toe, 1), by.spin ?? none), [v[2]!, v[3]!, v[4]!])
  return { camber: inDegrees(camberOf(s)), toe: inDegrees(toeOf(s)), y: v[1]! }
}

published(
  'LI16 a hinged wheel against a general least-squares fitter',
  cases.flatMap(([name, by]) =>
    [-0.08, 0, 0.06].flatMap((travel): PublishedRow[] => {
      const want = judged(by, travel)
      const pose = poseAt(mechanism(trailingArm, by), { travel: metre(travel), rack: metre(0) })
      // as the other corners: differences of 1e-6 leave about 1e-9 of a metre or radian
      const shared = { source: 'ml-levenberg-marquardt 5.1.0 on places', basis: 'derived' as const }
      const id = `${name} ${travel}`
      return [
        { id: `${id} camber`, got: inDegrees(pose.camber), want: want.camber, within: 1e-6, ...shared },
        { id: `${id} toe`, got: inDegrees(pose.toe), want: want.toe, within: 1e-6, ...shared },
        { id: `${id} y`, got: pose.wheelCentre[1], want: want.y, within: 1e-8, ...shared },
      ]
    }),
  ),
)
