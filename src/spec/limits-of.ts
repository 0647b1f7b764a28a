import type { ReadingName } from '../linkage/index.ts'
import { limitKeys } from './limit-keys.ts'
import type { Spec } from './spec-schema.ts'

/** What a reading must be, SI, and how the sheet says it. @source definition */
export interface Limit {
  readonly low: number
  readonly high: number
  /** Where it is best; null where the sheet does not say. */
  readonly preferred: number | null
  readonly lowText: string
  readonly highText: string
}

/**
 * The limits of a spec sheet by reading: a limit for both wheels is given to each, one for a single wheel
 * goes before it, toe of a front wheel is to the thrust line.
 *
 * @returns rad; readings without a limit are absent
 * @source definition
 */
export function limitsOf(spec: Spec): Readonly<Partial<Record<ReadingName, Limit>>> {
  const found: Partial<Record<ReadingName, Limit>> = {}
  for (const [key, readings] of limitKeys) {
    const limit = spec.limits[key]
    if (!limit) continue
    for (const reading of readings)
      found[reading] = {
        low: limit.low.value,
        high: limit.high.value,
        preferred: limit.preferred?.value ?? null,
        lowText: limit.low.text,
        highText: limit.high.text,
      }
  }
  return found
}
