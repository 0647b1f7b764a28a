import type { WheelAngle } from '../linkage/index.ts'
import type { Adjuster } from './adjuster.ts'
import { angleOrder, anglesNearStrokes } from './angles-at-strokes.ts'
import type { LearnedResponse } from './learned-response.ts'
import type { WheelSetup } from './problem.ts'
import { responseSurface } from './response-surface.ts'
import { strokeOf } from './stroke-of.ts'

/** How an adjuster answers against what its points say. @source definition */
export interface LearnedFactor {
  readonly adjuster: Adjuster
  readonly angle: WheelAngle
  /** 1: as its points say. */
  readonly factor: number
  /** Standard uncertainty. */
  readonly spread: number
}

/** An angle is what an adjuster is there for when it does this share of the most it does to any. @source own choice */
const main = 0.4

/**
 * What a response has learned, as a factor on what the points say: (slope + correction) / slope, of the angles that an adjuster
 * moves most. Nothing where it moves none.
 *
 * @source own derivation: docs/methods/learned-response.md
 */
export function learnedFactors(wheel: WheelSetup, response: LearnedResponse): readonly LearnedFactor[] {
  const n = wheel.adjusters.length
  const strokes = wheel.adjusters.map((adjuster) =>
    strokeOf(adjuster, wheel.settings[adjuster.id] ?? (adjuster.range[0] + adjuster.range[1]) / 2),
  )
  const { slope } = responseSurface(anglesNearStrokes(wheel, strokes), strokes)
  const columns = response.adjusters.length
  const count = response.mean.length
  return wheel.adjusters.flatMap((adjuster, j) => {
    const column = response.adjusters.indexOf(adjuster.id)
    const slopeOf = (angle: WheelAngle) => slope[angleOrder.indexOf(angle) * n + j]!
    const most = Math.max(...response.angles.map((angle) => Math.abs(slopeOf(angle))))
    return response.angles.flatMap((angle, a): LearnedFactor[] => {
      const g = slopeOf(angle)
      if (column < 0 || !(Math.abs(g) > 0) || Math.abs(g) < main * most) return []
      const at = a * columns + column
      const variance = response.covariance[at * (count + 1)]!
      return [
        {
          adjuster,
          angle,
          factor: 1 + response.mean[at]! / g,
          spread: Math.sqrt(Math.max(0, variance)) / Math.abs(g),
        },
      ]
    })
  })
}
