import type { ThreePoint } from './three-point.ts'

/**
 * Variance of a three-point time: ((high − low) / 6)², minutes squared.
 *
 * @source Malcolm, Roseboom, Clark and Fazar 1959, Application of a technique for research and development program evaluation
 * @example minutesVariance([5, 8, 17]) // 4
 */
export const minutesVariance = ([low, , high]: ThreePoint): number => ((high - low) / 6) ** 2
