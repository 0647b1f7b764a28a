import { solveSymmetric } from '../measure/index.ts'
import type { Radian } from '../quantity/index.ts'
import { finiteReading, gaugeRefusal } from './gauge-refusal.ts'

/**
 * One reading at a place of the wheel's turn.
 *
 * @source definition
 */
export interface TurnReading {
  readonly wheelTurn: Radian
  readonly reading: number
}

/**
 * y = mean + cos·cos θ + sin·sin θ by least squares.
 *
 * @source definition
 */
export interface RunOutFit {
  readonly mean: number
  readonly cos: number
  readonly sin: number
  readonly amplitude: number
  /** Where the reading is largest, rad, 0 … 2π. */
  readonly phase: Radian
  /** Squared deviations left, and their degrees of freedom. */
  readonly residual: { readonly squares: number; readonly dof: number }
  /** Weight of each reading in the mean; they add to 1. */
  readonly weights: readonly number[]
}

const PLACES = 3
const APART = 1e-3

/**
 * Mean and first harmonic of readings taken at wheel turns: the run-out, and what is left without it.
 *
 * @throws {Refusal} `too-few` for fewer than three different places; `not-finite`
 * @source discrete Fourier first harmonic by least squares; docs/methods/run-out.md
 * @example runOutFit([0, 90, 180, 270].map((t, i) => ({ wheelTurn: deg(t), reading: [3, 2, 1, 2][i] }))).amplitude // 1
 */
export function runOutFit(readings: readonly TurnReading[]): RunOutFit {
  const places = differentPlaces(readings)
  if (places < PLACES)
    throw gaugeRefusal(
      'too-few',
      'readings',
      places,
      `${places} place${places === 1 ? '' : 's'} of the wheel cannot show a run-out.`,
      'Read at three or more, evenly around.',
    )
  const rows = readings.map(({ wheelTurn }) => [1, Math.cos(wheelTurn), Math.sin(wheelTurn)] as const)
  const matrix = [0, 1, 2].map((i) =>
    [0, 1, 2].map((j) => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0)),
  )
  const right = [0, 1, 2].map((i) =>
    rows.reduce((sum, row, k) => sum + row[i]! * finiteReading(readings[k]!.reading, 'reading'), 0),
  )
  const [mean, cos, sin] = solveSymmetric(matrix, right) as [number, number, number]
  const forMean = solveSymmetric(matrix, [1, 0, 0])
  const squares = rows.reduce(
    (sum, row, k) => sum + (readings[k]!.reading - mean - cos * row[1] - sin * row[2]) ** 2,
    0,
  )
  const phase = Math.atan2(sin, cos)
  return {
    mean,
    cos,
    sin,
    amplitude: Math.hypot(cos, sin),
    phase: (phase < 0 ? phase + 2 * Math.PI : phase) as Radian,
    residual: { squares, dof: readings.length - PLACES },
    weights: rows.map((row) => forMean[0]! + forMean[1]! * row[1] + forMean[2]! * row[2]),
  }
}

/** How many places of the wheel the readings were taken at, a twentieth of a degree apart at least. */
export function differentPlaces(readings: readonly TurnReading[]): number {
  const places: number[] = []
  for (const { wheelTurn } of readings) {
    finiteReading(wheelTurn, 'wheelTurn')
    if (!places.some((place) => Math.abs(Math.sin((place - wheelTurn) / 2)) < APART / 2))
      places.push(wheelTurn)
  }
  return places.length
}
