import { finite } from './measure-refusal.ts'
import type { Measured } from './measured.ts'

/**
 * A value without uncertainty: a definition, a count, a setting taken as it is.
 *
 * @throws {Refusal} `not-finite`
 * @source definition
 * @example exact(2).parts.length // 0
 */
export const exact = (value: number): Measured => ({ value: finite(value, 'value'), parts: [] })
