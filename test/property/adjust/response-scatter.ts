// How far responses scatter when a corner's points are off; for tests only.
import { displacementOf, priorResponse, type WheelSetup } from '../../../src/adjust/index.ts'
import { type AnyCornerPoints, mechanism, type Point, poseAt } from '../../../src/linkage/index.ts'
import { seededRandom } from '../../../src/measure/index.ts'

/** Every coordinate off by a normal error, tie-rod and arm points alike; the wheel centre stays. */
export function jittered(points: AnyCornerPoints, spread: number, seed: number): AnyCornerPoints {
  const { normal } = seededRandom(seed)
  const off = (p: Point): Point => [
    p[0] + spread * normal(),
    p[1] + spread * normal(),
    p[2] + spread * normal(),
  ]
  if (points.layout === 'five-link')
    return {
      ...points,
      links: points.links.map((link) => ({
        ...link,
        inner: off(link.inner),
        outer: off(link.outer),
      })) as never,
    }
  return Object.fromEntries(
    Object.entries(points).map(([name, value]) => [
      name,
      Array.isArray(value) && name !== 'wheelCentre' ? off(value as unknown as Point) : value,
    ]),
  ) as unknown as AnyCornerPoints
}

/** Slopes in rad per m of stroke, [angle · adjusters + adjuster], by the linkage alone. */
function slopesOf(wheel: WheelSetup): number[] {
  const h = 1e-4
  const at = (j: number, by: number) => {
    const one = wheel.adjusters[j]!
    // near the middle an eccentric's stroke is throw · setting
    const setting =
      one.kind === 'thread' ? by / one.pitch : one.kind === 'eccentric' ? Math.asin(by / one.throw) : by
    return poseAt(mechanism(wheel.points, displacementOf(one, wheel.points, setting)), wheel.drive)
  }
  const angles =
    wheel.points.layout === 'five-link' || wheel.points.layout === 'semi-trailing arm'
      ? (['camber', 'toe'] as const)
      : (['camber', 'caster', 'toe'] as const)
  return angles.flatMap((angle) =>
    wheel.adjusters.map((_, j) => ((at(j, h)[angle] ?? 0) - (at(j, -h)[angle] ?? 0)) / (2 * h)),
  )
}

/** Root mean square of the slopes' scatter over the prior's standard deviation, slope by slope. */
export function scatterOverPrior(
  wheel: WheelSetup,
  known: 'typical' | 'measured',
  spread: number,
  runs: number,
): number[] {
  const nominal = slopesOf(wheel)
  const prior = priorResponse(wheel, { known, source: 'x' })
  const n = nominal.length
  const squares = new Array<number>(n).fill(0)
  let ran = 0
  for (let k = 0; k < runs; k++) {
    try {
      slopesOf({ ...wheel, points: jittered(wheel.points, spread, k) }).forEach((slope, i) => {
        squares[i]! += (slope - nominal[i]!) ** 2
      })
      ran++
    } catch {
      // points that cannot be assembled are nobody's car
    }
  }
  return squares.map((sum, i) => Math.sqrt(sum / ran) / Math.sqrt(prior.covariance[i * n + i]!))
}
