import { type Point, type TwistBeam, twistBeamReadings } from '../../../src/linkage/index.ts'
import { deg, inDegrees, metre } from '../../../src/quantity/index.ts'
import { beam } from '../../support/linkage-examples.ts'
import { type PublishedRow, published } from '../../support/published.ts'
import { byLeastSquares, camberOf, distance, minus, plus, spinOf, toeOf, turned } from './least-squares.ts'

// Both arms are free to turn about their pivots; the fitter is told where the beam's effective point has gone with both
// arms' mean height, and at which heights the wheels stand.
function judged(b: TwistBeam, left: number, right: number): Record<string, number> {
  const [pl, pr] = [b.left.pivot, b.right.pivot]
  const long = distance(pl, pr)
  const line = minus(pl, pr).map((x) => x / long) as unknown as Point
  const off = minus(b.shearCentre, pr)
  const along = off[0] * line[0] + off[1] * line[1] + off[2] * line[2]
  const foot = plus(pr, line.map((x) => along * x) as unknown as Point)
  const still = plus(foot, minus(b.shearCentre, foot).map((x) => b.shape * x) as unknown as Point)
  const about = (p: Point, q: Point, by: Point): Point => plus(p, turned(minus(q, p), by))
  const mean = (b.left.wheelCentre[2] + b.right.wheelCentre[2] + left + right) / 2
  const v = byLeastSquares((x) => {
    const [a, c] = [x.slice(0, 3) as unknown as Point, x.slice(3, 6) as unknown as Point]
    const common = line.map((e) => e * x[6]!) as unknown as Point
    const gone = about(pl, still, common)
    const middle = (about(pl, b.left.wheelCentre, common)[2] + about(pl, b.right.wheelCentre, common)[2]) / 2
    return [
      ...minus(about(pl, still, a), gone),
      ...minus(about(pr, still, c), gone),
      about(pl, b.left.wheelCentre, a)[2] - b.left.wheelCentre[2] - left,
      about(pr, b.right.wheelCentre, c)[2] - b.right.wheelCentre[2] - right,
      middle - mean,
    ]
  }, new Array(7).fill(0))
  const l = turned(spinOf(b.left.camber, b.left.toe, 1), v.slice(0, 3) as unknown as Point)
  const r = turned(spinOf(b.right.camber, b.right.toe, -1), v.slice(3, 6) as unknown as Point)
  return {
    'left camber': inDegrees(camberOf(l)),
    'left toe': inDegrees(toeOf(l)),
    'right camber': inDegrees(camberOf(r)),
    'right toe': inDegrees(toeOf(r)),
  }
}

const uneven: TwistBeam = {
  ...beam,
  right: { ...beam.right, pivot: [0.415, -0.54, 0.305], wheelCentre: [0.006, -0.745, 0.295], toe: deg(0.4) },
  shape: 0.7,
}
published(
  'LI20 twist beams against a general least-squares fitter',
  (
    [
      ['even', beam],
      ['uneven', uneven],
    ] as const
  ).flatMap(([name, b]) =>
    (
      [
        [0.05, 0.05],
        [0.06, -0.04],
        [-0.07, 0.02],
      ] as const
    ).flatMap(([left, right]): PublishedRow[] => {
      const want = judged(b, left, right)
      const at = twistBeamReadings(b, { left: metre(left), right: metre(right) })
      return (['left', 'right'] as const).flatMap((side) =>
        (['camber', 'toe'] as const).map((angle) => ({
          id: `${name} ${left} ${right} ${side} ${angle}`,
          got: inDegrees(at[side][angle]),
          want: want[`${side} ${angle}`]!,
          // as the other corners: differences of 1e-6 leave about 1e-9 of a radian
          within: 1e-6,
          source: 'ml-levenberg-marquardt 5.1.0 on places',
          basis: 'derived' as const,
        })),
      )
    }),
  ),
)
