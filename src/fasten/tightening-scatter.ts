import { combine, type Measured, rectangular } from '../measure/index.ts'
import { fastenRefusal, notNegative } from './fasten-refusal.ts'

/** How a joint is tightened, as far as its preload's scatter goes. @source definition */
export type TighteningMethod =
  | 'yield-controlled'
  | 'angle-controlled'
  | 'hydraulic'
  | 'torque wrench, torque found by test on the joint'
  | 'torque wrench, friction estimated'
  | 'precision torque screwdriver'
  | 'common torque wrench'

/** Half-width of the preload's scatter as a share, from a good case to a bad one. @source definition */
export interface Scatter {
  readonly low: number
  readonly high: number
  readonly source: string
}

const VDI = 'VDI 2230 (1986 edition), table of tightening factors, read in a public copy'
const row = (low: number, high: number, source = VDI): Scatter => ({
  low: low / 100,
  high: high / 100,
  source,
})

const table: Readonly<Record<TighteningMethod, Scatter>> = {
  'yield-controlled': row(5, 12),
  'angle-controlled': row(5, 12),
  hydraulic: row(9, 23),
  'torque wrench, torque found by test on the joint': row(17, 23),
  'torque wrench, friction estimated': row(23, 28),
  'precision torque screwdriver': row(26, 43),
  'common torque wrench': row(30, 30, 'fastener glossary, “Preload accuracy”: ±30 %, read in a public copy'),
}

/**
 * How far preload scatters by method.
 *
 * @source VDI 2230 (1986 edition), table of tightening factors; for the common torque wrench a fastener glossary, “Preload accuracy”
 * @example scatterOf('torque wrench, friction estimated').high // 0.28
 */
export const scatterOf = (method: TighteningMethod): Scatter => table[method]

/**
 * Tightening factor α = F_max/F_min = (1 + p)/(1 − p).
 *
 * @param scatter half-width p as a share, 0 ≤ p < 1
 * @throws {Refusal} `not-positive`, `not-finite`; `bad-range` from 1 on
 * @source VDI 2230 (1986 edition), table of tightening factors
 * @example tighteningFactor(0.23) // 1.597
 */
export function tighteningFactor(scatter: number): number {
  if (notNegative(scatter, 'scatter') < 1) return (1 + scatter) / (1 - scatter)
  throw fastenRefusal({
    code: 'bad-range',
    at: 'scatter',
    given: String(scatter),
    sentence: `A scatter of ${scatter} leaves no least preload.`,
    remedy: 'Give it as a share below 1: 0.3 for ±30 %.',
  })
}

/**
 * A preload of one, scattered by method and wrench: both half-widths taken as boxes.
 *
 * @param method its worst case is taken
 * @param wrench half-width of the wrench's deviation as a share: 0.04
 * @throws {Refusal} `not-positive`, `not-finite`
 * @source JCGM 100:2008, 4.3.7 and 5.1.2
 * @example standardUncertainty(scattered('common torque wrench', 0.04)) * Math.sqrt(3) // 0.303
 */
export function scattered(method: TighteningMethod, wrench: number): Measured {
  return combine([
    { of: rectangular(scatterOf(method).high, `scatter of preload, ${method}`, 1), times: 1 },
    { of: rectangular(notNegative(wrench, 'wrench'), 'deviation of the wrench'), times: 1 },
  ])
}
