import type { WheelAngle } from '../linkage/index.ts'
import { covariance } from '../measure/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { AdjustRefusal } from './adjuster.ts'
import { type Lesson, lessonOf, type RecordedMove } from './learn-lesson.ts'
import type { LearnedResponse } from './learned-response.ts'
import type { WheelSetup } from './problem.ts'

/**
 * Takes one recorded move into a corner's response (linear Gaussian update).
 *
 *     surprise = observed change − change that the points give − correction · Δstroke
 *     gain K   = P Hᵀ (H P Hᵀ + R)⁻¹,  H = Δstroke of each adjuster, R = readings' and settings' covariance
 *     mean    += K · surprise,  P −= K H P
 *
 * @param wheel the wheel as it stood: points, drive, adjusters
 * @returns the response that has seen one move more; the same one when nothing moved or nothing was read
 * @throws {Refusal} `wrong-length` when mean and covariance do not fit the adjusters and angles
 * @throws {Refusal} `setting-out-of-range` when a recorded setting lies outside its adjuster's range
 * @source Gaussian conditioning (JCGM 102:2011, 6 for the covariances); own derivation: docs/methods/learned-response.md
 */
export function learnMove(response: LearnedResponse, wheel: WheelSetup, move: RecordedMove): LearnedResponse {
  const n = response.adjusters.length
  const count = response.angles.length * n
  if (response.mean.length !== count || response.covariance.length !== count * count)
    throw new Refusal<AdjustRefusal>({
      code: 'wrong-length',
      at: response.source,
      given: `${response.mean.length} slopes, ${response.covariance.length} covariances`,
      sentence: `The learned response of ${response.source} does not fit its ${n} adjusters and ${response.angles.length} angles.`,
      remedy: 'Start again from the prior response and take the recorded moves in one by one.',
    })
  const lesson = lessonOf(wheel, move, response.angles)
  const { seen, foreseen } = lesson
  const moved = response.adjusters.map((id) => {
    const column = wheel.adjusters.findIndex((adjuster) => adjuster.id === id)
    return column < 0 ? 0 : lesson.moved[column]!
  })
  if (foreseen.length === 0 || moved.every((by) => by === 0)) return response

  const surprise = seen.map((angle, p) => {
    const a = response.angles.indexOf(angle)
    const corrected = moved.reduce((sum, by, j) => sum + response.mean[a * n + j]! * by, 0)
    return move.change[angle]!.value - foreseen[p]! - corrected
  })
  const noise = noiseOf(move, lesson)
  // P Hᵀ: one column per seen angle
  const PHt = seen.map((angle) => {
    const a = response.angles.indexOf(angle)
    return Array.from({ length: count }, (_, i) =>
      moved.reduce((sum, by, j) => sum + response.covariance[i * count + a * n + j]! * by, 0),
    )
  })
  const S = seen.map((angle, p) => {
    const a = response.angles.indexOf(angle)
    return seen.map((_, q) => moved.reduce((sum, by, j) => sum + by * PHt[q]![a * n + j]!, 0) + noise[p]![q]!)
  })
  return conditioned(response, PHt, S, surprise)
}

/** Covariance of the readings' change, plus what play and half a step of the moved adjusters do to it at both ends. */
const noiseOf = (move: RecordedMove, { seen, setting }: Lesson): number[][] =>
  seen.map((first: WheelAngle, p) =>
    seen.map((second, q) =>
      setting.reduce(
        (sum, effects) => sum + 2 * effects[p]! * effects[q]!,
        covariance(move.change[first]!, move.change[second]!),
      ),
    ),
  )

function conditioned(
  response: LearnedResponse,
  PHt: readonly (readonly number[])[],
  S: readonly (readonly number[])[],
  surprise: readonly number[],
): LearnedResponse {
  const count = response.mean.length
  // Cholesky factor of S; a readings' change without any spread leaves it singular only where H is zero
  const m = surprise.length
  const L = S.map((row) => row.map(() => 0))
  for (let i = 0; i < m; i++)
    for (let j = 0; j <= i; j++) {
      let sum = S[i]![j]!
      for (let k = 0; k < j; k++) sum -= L[i]![k]! * L[j]![k]!
      L[i]![j] = i === j ? Math.sqrt(Math.max(sum, 1e-30)) : sum / L[j]![j]!
    }
  const forward = (right: readonly number[]) => {
    const out = [...right]
    for (let i = 0; i < m; i++) {
      for (let k = 0; k < i; k++) out[i]! -= L[i]![k]! * out[k]!
      out[i]! /= L[i]![i]!
    }
    return out
  }
  const half = Array.from({ length: count }, (_, i) => forward(PHt.map((column) => column[i]!)))
  const white = forward(surprise)
  const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, k) => sum + x * b[k]!, 0)
  return {
    ...response,
    mean: response.mean.map((value, i) => value + dot(half[i]!, white)),
    covariance: response.covariance.map(
      (value, at) => value - dot(half[Math.floor(at / count)]!, half[at % count]!),
    ),
    moves: response.moves + 1,
  }
}
