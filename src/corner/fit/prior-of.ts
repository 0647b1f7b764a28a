import { choleskyOf } from '../../measure/index.ts'
import { armPairs, populations } from './population.ts'
import { type Unknowns, valuesOf } from './unknowns.ts'

/** What is known of a corner before anything is measured on it. */
export interface FitPrior {
  readonly mean: readonly number[]
  readonly covariance: readonly (readonly number[])[]
  /** Columns of a root of the covariance: unknowns = mean + Σ column · z, z independent with spread 1. */
  readonly columns: readonly (readonly number[])[]
}

/**
 * Gaussian prior of a corner's unknowns.
 *
 *     point = typical + own spread + (size + shape of this direction) · (typical − origin) + shift of its arm
 *
 * @param of `population`: the vehicle is one of those that the layout is typical of; `points`: only the spread that the
 *   file gives each point
 */
export function priorOf(unknowns: Unknowns, of: 'population' | 'points'): FitPrior {
  const { corner, family, points, camber, toe, count } = unknowns
  const mean = valuesOf(unknowns)
  const effects: number[][] = []
  const effect = (fill: (row: number[]) => void) => {
    const row = new Array<number>(count).fill(0)
    fill(row)
    if (row.some((x) => x !== 0)) effects.push(row)
  }
  points.forEach((name, i) => {
    const spread = corner.points[name]?.spread ?? 0
    for (let axis = 0; axis < 3; axis++)
      effect((row) => {
        row[3 * i + axis] = spread
      })
  })
  const { size, shape, armShift, camber: camberSpread, toe: toeSpread } = populations[family]
  if (of === 'population') {
    const origin = mean[3 * points.indexOf('wheel-centre')]!
    const reach = (i: number, axis: number) => mean[3 * i + axis]! - (axis === 0 ? origin : 0)
    const scaled = (by: number, axes: readonly number[]) =>
      effect((row) => {
        for (let i = 0; i < points.length; i++)
          for (const axis of axes) row[3 * i + axis] = by * reach(i, axis)
      })
    scaled(size, [0, 1, 2])
    for (const axis of [0, 1, 2]) scaled(shape, [axis])
    for (const pair of armPairs[family] ?? [])
      for (const axis of [0, 1, 2])
        effect((row) => {
          for (const name of pair) row[3 * points.indexOf(name) + axis] = armShift
        })
  }
  effect((row) => {
    row[camber] = camberSpread
  })
  effect((row) => {
    row[toe] = toeSpread
  })
  const covariance = mean.map((_, i) => mean.map((__, j) => effects.reduce((s, e) => s + e[i]! * e[j]!, 0)))
  const root = choleskyOf(covariance)
  const columns = mean
    .map((_, k) => root.map((row) => row[k]!))
    .filter((column) => column.some((x) => x !== 0))
  return { mean, covariance, columns }
}
