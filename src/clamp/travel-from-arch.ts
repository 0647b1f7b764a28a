import { combine, type Measured } from '../measure/index.ts'
import type { Metre } from '../quantity/index.ts'

/**
 * Travel of the wheel from a rule between hub centre and arch edge: a shorter gap is bump.
 *
 *     travel = gap at the design pose − gap
 *
 * @param gap hub centre to arch edge, m
 * @param atDesign the same gap at the design pose
 * @source definition
 * @example travelFromArch(exact(0.43), metre(0.45)).value // 0.02 m
 */
export function travelFromArch(gap: Measured, atDesign: Metre): Measured {
  return combine([{ of: gap, times: -1 }], atDesign)
}
