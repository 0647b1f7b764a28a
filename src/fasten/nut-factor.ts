import { type Metre, type Newton, type NewtonMetre, Nm, newton } from '../quantity/index.ts'
import { positive } from './fasten-refusal.ts'

/** Finish or lubricant with its torque factor. @source definition */
export interface NutFactor {
  readonly condition: string
  readonly factor: number
}

/**
 * Torque factors K by condition; 0.2 where none is stated. Empirical: one figure for a wide spread.
 *
 * @source Shigley's Mechanical Engineering Design, table 8-15 (K = 0.2 when condition not stated), read in a public copy
 * @example nutFactors.length // 6
 */
export const nutFactors: readonly NutFactor[] = [
  { condition: 'nonplated, black finish', factor: 0.3 },
  { condition: 'zinc-plated', factor: 0.2 },
  { condition: 'lubricated', factor: 0.18 },
  { condition: 'cadmium-plated', factor: 0.16 },
  { condition: 'with an anti-seize compound', factor: 0.12 },
  { condition: 'with proprietary low-friction nuts', factor: 0.09 },
]

/**
 * Torque by nut factor: T = K·d·F.
 *
 * @throws {Refusal} `not-positive`, `not-finite`
 * @source Shigley's Mechanical Engineering Design, equation (8-27)
 * @example torqueByNutFactor({ factor: 0.2, diameter: mm(12), preload: newton(40000) }) // 96
 */
export function torqueByNutFactor({
  factor,
  diameter,
  preload,
}: {
  readonly factor: number
  readonly diameter: Metre
  readonly preload: Newton
}): NewtonMetre {
  return Nm(positive(factor, 'nut factor') * positive(diameter, 'diameter') * positive(preload, 'preload'))
}

/**
 * Preload by nut factor: F = T/(K·d).
 *
 * @throws {Refusal} `not-positive`, `not-finite`
 * @source Shigley's Mechanical Engineering Design, equation (8-27)
 * @example preloadByNutFactor({ factor: 0.2, diameter: mm(12), torque: Nm(96) }) // 40000
 */
export function preloadByNutFactor({
  factor,
  diameter,
  torque,
}: {
  readonly factor: number
  readonly diameter: Metre
  readonly torque: NewtonMetre
}): Newton {
  return newton(
    positive(torque, 'torque') / (positive(factor, 'nut factor') * positive(diameter, 'diameter')),
  )
}
