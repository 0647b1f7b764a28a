import {
  type Displacement,
  mechanism,
  mirrorPoint,
  type Point,
  poseAt,
  type SemiTrailingArm,
} from '../../../src/linkage/index.ts'
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
function judged(
  p: SemiTrailingArm,
  by: Displacement,
  travel: number,
  outward: 1 | -1 = 1,
): { camber: number; toe: number; y: number } {
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
  const s = turned(turned(spinOf(p.camber, p.toe, outward), by.spin ?? none), [v[2]!, v[3]!, v[4]!])
  return { camber: inDegrees(camberOf(s)), toe: inDegrees(toeOf(s)), y: v[1]! }
}

published(
  'LI16 a hinged wheel against a general least-squares fitter',
  cases.flatMap(([name, by]) =>
    [-0.08, 0, 0.06].flatMap((travel): PublishedRow[] => {
      const want = judged(trailingArm, by, travel)
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

const ahead = (q: Point): Point => [-q[0], q[1], q[2]]
const leading: SemiTrailingArm = {
  ...trailingArm,
  innerFront: ahead(trailingArm.innerRear),
  innerRear: ahead(trailingArm.innerFront),
  wheelCentre: ahead(trailingArm.wheelCentre),
}
/** The same arm as it stands on the right, in vehicle axes: the fitter is given this one. */
const onTheRight = (p: SemiTrailingArm): SemiTrailingArm => ({
  ...p,
  innerFront: mirrorPoint(p.innerFront),
  innerRear: mirrorPoint(p.innerRear),
  wheelCentre: mirrorPoint(p.wheelCentre),
})
published(
  'LI16 LI13 hinged wheels ahead of their hinge and on the right against a general least-squares fitter',
  (
    [
      ['front left', leading, 1],
      ['front right', leading, -1],
      ['rear right', trailingArm, -1],
    ] as const
  ).flatMap(([name, p, outward]) =>
    [-0.12, -0.05, 0.07, 0.13].flatMap((travel): PublishedRow[] => {
      const want = judged(outward === 1 ? p : onTheRight(p), {}, travel, outward)
      const pose = poseAt(mechanism(p), { travel: metre(travel), rack: metre(0) })
      const shared = { source: 'ml-levenberg-marquardt 5.1.0 on places', basis: 'derived' as const }
      const id = `${name} ${travel}`
      return [
        { id: `${id} camber`, got: inDegrees(pose.camber), want: want.camber, within: 1e-6, ...shared },
        { id: `${id} toe`, got: inDegrees(pose.toe), want: want.toe, within: 1e-6, ...shared },
        { id: `${id} y`, got: outward * pose.wheelCentre[1], want: want.y, within: 1e-8, ...shared },
      ]
    }),
  ),
)
