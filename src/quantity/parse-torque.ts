import { type ReadOptions, readQuantity } from './read-quantity.ts'
import { type NewtonMetre, Nm } from './tags.ts'

/**
 * A torque: N·m, lbf·ft, lbf·in, ozf·in, kgf·m, kgf·cm, however the product is joined and ordered.
 *
 * @param text number and unit; never a bare number
 * @returns N·m
 * @throws {Refusal} `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source NIST SP 811 (2008), B.8; which spellings: common practice, no source
 * @example parseTorque('190 Nm') // 190
 * @example parseTorque('95 ft-lb') // 128.803
 */
export function parseTorque(text: string, options: ReadOptions = {}): NewtonMetre {
  return Nm(readQuantity(text, 'torque', options))
}
