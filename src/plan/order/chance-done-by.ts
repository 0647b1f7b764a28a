import { normalCdf } from '../../measure/index.ts'

/**
 * The chance that a path of many independent times is done by a given time.
 *
 * @param path its expected duration and the variance of that, as `criticalPath` gives them
 * @param by in the unit of the duration
 * @returns 0 … 1; without variance 0 before the duration and 1 from it on
 * @assumes the sum of the times is about normal, and no path beside it takes longer; so it is on the hopeful side
 * @source Malcolm, Roseboom, Clark and Fazar 1959, Application of a technique for research and development program evaluation
 * @example chanceDoneBy({ duration: 24, variance: 5 }, 28) // 0.963
 */
export function chanceDoneBy(
  { duration, variance }: { duration: number; variance: number },
  by: number,
): number {
  if (variance === 0) return by >= duration ? 1 : 0
  return normalCdf((by - duration) / Math.sqrt(variance))
}
