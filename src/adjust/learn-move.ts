import type { WheelAngle } from '../linkage/index.ts'
import { covariance, type Measured } from '../measure/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { AdjustRefusal } from './adjuster.ts'
import { angleOrder, anglesAtStrokes, anglesNearStrokes } from './angles-at-strokes.ts'
import type { LearnedResponse } from './learned-response.ts'
import type { WheelSetup } from './problem.ts'
import { responseSurface } from './response-surface.ts'
import { setByEye } from './set-by-eye.ts'
import { strokeOf } from './stroke-of.ts'

/**
 * One move as it was recorded on one wheel: settings before and after, and what the readings did.
 *
 * @source definition
 */
export interface RecordedMove {
  /** Settings by adjuster id; those not named did not move. */
  readonly from: Readonly<Record<string, number>>
  readonly to: Readonly<Record<string, number>>
  /** After minus before, so that errors common to both readings are gone already. */
  readonly change: Readonly<Partial<Record<WheelAngle, Measured>>>
}

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
  const strokes = (settings: Readonly<Record<string, number>>) =>
    wheel.adjusters.map((adjuster) => {
      const resting = wheel.settings[adjuster.id] ?? (adjuster.range[0] + adjuster.range[1]) / 2
      return strokeOf(adjuster, settings[adjuster.id] ?? move.from[adjuster.id] ?? resting)
    })
  const before = strokes(move.from)
  const after = strokes({ ...move.from, ...move.to })
  const moved = response.adjusters.map((id) => {
    const column = wheel.adjusters.findIndex((adjuster) => adjuster.id === id)
    return column < 0 ? 0 : after[column]! - before[column]!
  })
  const seen = response.angles.filter((angle) => move.change[angle] !== undefined)
  if (seen.length === 0 || moved.every((by) => by === 0)) return response

  const anglesAt = anglesAtStrokes(wheel)
  const [start, end] = [anglesAt(before), anglesAt(after)]
  const surprise = seen.map((angle) => {
    const a = response.angles.indexOf(angle)
    const place = angleOrder.indexOf(angle)
    const corrected = moved.reduce((sum, by, j) => sum + response.mean[a * n + j]! * by, 0)
    return move.change[angle]!.value - (end[place]! - start[place]!) - corrected
  })
  const noise = noiseOf(wheel, move, seen, before, after)
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

/** Covariance of the readings' change, plus what play and half a step of the moved adjusters do to it. */
function noiseOf(
  wheel: WheelSetup,
  move: RecordedMove,
  seen: readonly WheelAngle[],
  before: readonly number[],
  after: readonly number[],
): number[][] {
  const n = wheel.adjusters.length
  const { slope } = responseSurface(anglesNearStrokes(wheel, after), after)
  const slack = wheel.adjusters.map((adjuster, j) => {
    if (after[j] === before[j]) return 0
    const step = setByEye(adjuster)
    const perSetting = Math.abs((after[j]! - before[j]!) / (settingChange(adjuster.id, move) || 1))
    // both ends of the move were set by hand; rectangular
    return perSetting * Math.sqrt((2 * (adjuster.play ** 2 + step ** 2)) / 3)
  })
  return seen.map((first) =>
    seen.map((second) => {
      const read = covariance(move.change[first]!, move.change[second]!)
      const [a, b] = [angleOrder.indexOf(first), angleOrder.indexOf(second)]
      return slack.reduce((sum, s, j) => sum + slope[a * n + j]! * slope[b * n + j]! * s * s, read)
    }),
  )
}

const settingChange = (id: string, move: RecordedMove) => (move.to[id] ?? 0) - (move.from[id] ?? 0)

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
