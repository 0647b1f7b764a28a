import type { WheelAngle } from '../linkage/index.ts'
import { angleOrder, anglesNearStrokes } from './angles-at-strokes.ts'
import type { LearnedResponse } from './learned-response.ts'
import type { WheelSetup } from './problem.ts'
import { type PointsKnown, responsePriors } from './response-prior.ts'
import { responseSurface } from './response-surface.ts'
import { strokeOf } from './stroke-of.ts'

/**
 * The response before any move was recorded: no correction to the points' own slopes, with a spread that
 * their layout and the way they were got deserve.
 *
 *     u² = (of itself · slope)² + (beside · the adjuster's largest slope)²
 *
 * @param known `typical` for a layout's points, `measured` for points taken on the vehicle
 * @param source names this corner's error; both sides of a vehicle may share it
 * @source own derivation: docs/methods/learned-response.md
 */
export function priorResponse(
  wheel: WheelSetup,
  { known, source }: { readonly known: PointsKnown; readonly source: string },
): LearnedResponse {
  const row = responsePriors.find((one) => one.layout === wheel.points.layout && one.known === known)!
  const strokes = wheel.adjusters.map((adjuster) =>
    strokeOf(adjuster, wheel.settings[adjuster.id] ?? (adjuster.range[0] + adjuster.range[1]) / 2),
  )
  const { slope } = responseSurface(anglesNearStrokes(wheel, strokes), strokes)
  const angles: WheelAngle[] =
    wheel.points.layout === 'five-link' || wheel.points.layout === 'semi-trailing arm'
      ? ['camber', 'toe']
      : ['camber', 'caster', 'toe']
  const n = wheel.adjusters.length
  const count = angles.length * n
  const at = (angle: WheelAngle, j: number) => slope[angleOrder.indexOf(angle) * n + j]!
  const covariance = new Array<number>(count * count).fill(0)
  angles.forEach((angle, a) => {
    for (let j = 0; j < n; j++) {
      const largest = Math.max(...angles.map((other) => Math.abs(at(other, j))))
      covariance[(a * n + j) * (count + 1)] =
        (row.ofItself * at(angle, j)) ** 2 + ((angle === 'toe' ? row.besideToe : row.beside) * largest) ** 2
    }
  })
  return {
    source,
    adjusters: wheel.adjusters.map((adjuster) => adjuster.id),
    angles,
    mean: new Array<number>(count).fill(0),
    covariance,
    moves: 0,
  }
}
