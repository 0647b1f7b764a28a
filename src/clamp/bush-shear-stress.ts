import { type Pascal, pascal } from '../quantity/index.ts'
import { bushStiffness, type RubberRing } from './bush-stiffness.ts'

/**
 * Largest shear stress in a twisted bonded bush: at the inner sleeve. Lasting stress of 0.2 to 0.4 MPa is what
 * rubber springs are designed to.
 *
 *     τ = 2 k θ / (π · length · inner²)
 *
 * @param twist rad
 * @returns Pa
 * @throws {Refusal} `not-positive`
 * @source cylindrical torsion spring in rubber, τ = 2T/(π L d²), read in a public copy
 * @example bushShearStress({ inner: mm(16), outer: mm(32), length: mm(40), shear: pascal(7e5) }, deg(15)) // 488692 Pa
 */
export function bushShearStress(ring: RubberRing, twist: number): Pascal {
  return pascal((2 * bushStiffness(ring) * Math.abs(twist)) / (Math.PI * ring.length * ring.inner ** 2))
}
