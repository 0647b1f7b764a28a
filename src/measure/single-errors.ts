import { finite, notNegative } from './measure-refusal.ts'
import type { Measured, Shape } from './measured.ts'

const VARIANCE_OF_UNIT_BOX = 3
const VARIANCE_OF_UNIT_TRIANGLE = 6

/** One error about a value; an error of zero leaves the value exact. */
const single = (value: number, effect: number, source: string, shape: Shape): Measured => ({
  value: finite(value, 'value'),
  parts: effect === 0 ? [] : [{ source, effect, shape, dof: Number.POSITIVE_INFINITY }],
})

/**
 * An error that lies anywhere within ± `halfWidth` with equal chance: accuracy of a gauge, zero error.
 *
 * @param halfWidth ≥ 0, SI
 * @throws {Refusal} `not-finite`; `not-positive` below zero
 * @source JCGM 100:2008, 4.3.7 (u = a/√3)
 * @example standardUncertainty(rectangular(0.1, 'level, accuracy')) // 0.057735
 */
export const rectangular = (halfWidth: number, source: string, value = 0): Measured =>
  single(value, notNegative(halfWidth, 'halfWidth') / Math.sqrt(VARIANCE_OF_UNIT_BOX), source, 'rectangular')

/**
 * What a scale or display of this step hides: anywhere within half a step.
 *
 * @param step ≥ 0, SI
 * @throws {Refusal} `not-finite`; `not-positive` below zero
 * @source JCGM 100:2008, F.2.2.1
 * @example standardUncertainty(resolution(0.1, 'display')) // 0.0288675
 */
export const resolution = (step: number, source: string, value = 0): Measured =>
  rectangular(notNegative(step, 'step') / 2, source, value)

/**
 * An error within ± `halfWidth` that is likelier small: the sum of two like boxes.
 *
 * @param halfWidth ≥ 0, SI
 * @throws {Refusal} `not-finite`; `not-positive` below zero
 * @source JCGM 100:2008, 4.3.9 (u = a/√6)
 * @example standardUncertainty(triangular(0.1, 'placing')) // 0.0408248
 */
export const triangular = (halfWidth: number, source: string, value = 0): Measured =>
  single(
    value,
    notNegative(halfWidth, 'halfWidth') / Math.sqrt(VARIANCE_OF_UNIT_TRIANGLE),
    source,
    'triangular',
  )

/**
 * An error that swings like a sine of this amplitude, caught at any moment: run-out at an unknown wheel position.
 *
 * @param amplitude ≥ 0, SI
 * @throws {Refusal} `not-finite`; `not-positive` below zero
 * @source JCGM 101:2008, 6.4.6 (u = a/√2)
 * @example standardUncertainty(arcsine(0.1, 'run-out')) // 0.0707107
 */
export const arcsine = (amplitude: number, source: string, value = 0): Measured =>
  single(value, notNegative(amplitude, 'amplitude') / Math.SQRT2, source, 'arcsine')

/**
 * An error known by its standard uncertainty only, or the sum of many small ones.
 *
 * @param u standard uncertainty, ≥ 0, SI
 * @throws {Refusal} `not-finite`; `not-positive` below zero
 * @source JCGM 100:2008, 4.3.4
 * @example normal(0.05, 'fit', 1).value // 1
 */
export const normal = (u: number, source: string, value = 0): Measured =>
  single(value, notNegative(u, 'u'), source, 'normal')
