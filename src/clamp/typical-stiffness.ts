import { type Measured, rectangular } from '../measure/index.ts'
import { deg } from '../quantity/index.ts'

/** Lowest and highest torsional stiffness of a pivot bush of a car or light van, N·m per degree. */
const low_Nm_per_deg = 0.3
const high_Nm_per_deg = 3

/**
 * A pivot bush's torsional stiffness when nobody knows it: anywhere in a typical range. Bushes of 14 to 20 mm
 * inner and 30 to 40 mm outer diameter, 40 to 60 mm long, of rubber with 0.7 to 1.2 MPa, span it.
 *
 * @param bush names the bush: its unknown stiffness is its own error
 * @returns N·m/rad
 * @source own choice, from `bushStiffness` over those sizes: docs/methods/clamp-pose.md
 * @example typicalStiffness('x').value // 94.5380 N·m/rad
 */
export function typicalStiffness(bush: string): Measured {
  const perRad = 1 / deg(1)
  const [low, high] = [low_Nm_per_deg * perRad, high_Nm_per_deg * perRad]
  return rectangular((high - low) / 2, `typical stiffness of ${bush}`, (low + high) / 2)
}
