import type { ThreePoint } from './three-point.ts'

/**
 * Expected value of a three-point time: (low + 4 usual + high) / 6.
 *
 * @source Malcolm, Roseboom, Clark and Fazar 1959, Application of a technique for research and development program evaluation
 * @example meanMinutes([5, 8, 17]) // 9
 */
export const meanMinutes = ([low, usual, high]: ThreePoint): number => (low + 4 * usual + high) / 6
