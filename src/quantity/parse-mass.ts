import { type ReadOptions, readQuantity } from './read-quantity.ts'
import { type Kilogram, kilogram } from './tags.ts'

/**
 * A mass: kg, lb, g, oz.
 *
 * @param text number and unit; never a bare number
 * @returns kg, not below zero
 * @throws {Refusal} `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source NIST SP 811 (2008), B.8; which spellings: common practice, no source
 * @example parseMass('1500 kg') // 1500
 * @example parseMass('10 lb') // 4.5359237
 */
export function parseMass(text: string, options: ReadOptions = {}): Kilogram {
  return kilogram(readQuantity(text, 'mass', options))
}
