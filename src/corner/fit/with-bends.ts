import { standardUncertainty } from '../../measure/index.ts'
import { cornerAt } from './corner-at.ts'
import type { LeastOf } from './least-of.ts'
import type { CornerMeasurement } from './observable.ts'
import type { Unknowns } from './unknowns.ts'

/** A bend below this part of a reading's own spread is nothing, since squares add. */
const nothing = 0.1

/**
 * Measurements with what their straight slopes mislead by as a further error of their own, as uncertain as a first fit leaves
 * the corner; null where none of them bends enough to count.
 */
export function withBends(
  unknowns: Unknowns,
  fit: LeastOf,
  measurements: readonly CornerMeasurement[],
): readonly CornerMeasurement[] | null {
  const corner = cornerAt(unknowns, fit.values)
  let bent = false
  const all = measurements.map((measurement, i) => {
    const { of, read } = measurement
    const bend = of.bend?.(corner, fit.covariance) ?? 0
    if (bend < nothing * standardUncertainty(read)) return measurement
    bent = true
    const part = {
      source: `bend ${i + 1}`,
      effect: bend,
      shape: 'normal',
      dof: Number.POSITIVE_INFINITY,
    } as const
    return { of, read: { ...read, parts: [...read.parts, part] } }
  })
  return bent ? all : null
}
