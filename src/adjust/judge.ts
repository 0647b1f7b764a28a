import { drawJoint, seededRandom } from '../measure/index.ts'
import type { SearchSpace } from './search-space.ts'
import { type AxisDraws, axisDraws } from './setting-noise.ts'

/** Errors of one learned response: independent unit normals, and the root of the covariance that mixes them. */
interface ResponseDraws {
  /** [slope][unit], rad/m. */
  readonly root: readonly (readonly number[])[]
  /** One column per unit. */
  readonly units: readonly Float64Array[]
}

/** Everything random about a problem, drawn once, so that every set of moves is judged on the same draws. */
export interface Judge {
  readonly draws: number
  /** Plausible readings now, one column per row. */
  readonly readings: readonly Float64Array[]
  readonly axes: readonly AxisDraws[]
  /** Response errors by source. */
  readonly responses: ReadonlyMap<string, ResponseDraws>
}

/**
 * Draws a problem's errors.
 *
 * @source JCGM 101:2008, 6.4 and 7
 */
export function judgeOf(
  space: SearchSpace,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): Judge {
  const count = space.rows.length
  const joint = drawJoint(
    space.rows.map((row) => row.now),
    { draws, seed },
  )
  const readings = space.rows.map((_, i) => {
    const column = new Float64Array(draws)
    for (let k = 0; k < draws; k++) column[k] = joint[k * count + i]!
    return column
  })
  const responses = new Map<string, ResponseDraws>()
  for (const { response } of space.wheels)
    if (response && !responses.has(response.source))
      responses.set(
        response.source,
        responseDraws(response.covariance, draws, seed + 7919 * (responses.size + 1)),
      )
  return {
    draws,
    readings,
    axes: space.axes.map((axis, j) => axisDraws(axis, { draws, seed: seed + 104729 + j })),
    responses,
  }
}

function responseDraws(covariance: readonly number[], draws: number, seed: number): ResponseDraws {
  const root = rootOf(covariance)
  const random = seededRandom(seed)
  const units = root.map(() => {
    const column = new Float64Array(draws)
    for (let k = 0; k < draws; k += 2) {
      const radius = Math.sqrt(-2 * Math.log(1 - random()))
      const turn = 2 * Math.PI * random()
      column[k] = radius * Math.cos(turn)
      if (k + 1 < draws) column[k + 1] = radius * Math.sin(turn)
    }
    return column
  })
  return { root, units }
}

/** Lower root of a covariance; what has no variance left (a slope learned for sure) gets a row of zeros. */
function rootOf(covariance: readonly number[]): number[][] {
  const n = Math.round(Math.sqrt(covariance.length))
  const L = Array.from({ length: n }, () => new Array<number>(n).fill(0))
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = covariance[i * n + j]!
      for (let k = 0; k < j; k++) sum -= L[i]![k]! * L[j]![k]!
      if (i === j) L[i]![i] = Math.sqrt(Math.max(0, sum))
      else L[i]![j] = L[j]![j]! > 0 ? sum / L[j]![j]! : 0
    }
  return L
}
