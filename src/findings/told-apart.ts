/** One outcome among the suspects: belief in each, and how a reading would come out for it. */
export interface Outcome {
  readonly belief: number
  readonly mean: number
  readonly variance: number
}

/**
 * Expected drop of entropy over the suspects by a check that shows something or does not.
 *
 * @param list belief in each suspect, and how often the check shows something when it is the cause
 * @returns nat
 * @source mutual information: textbooks
 * @example gainOfCheck([{ belief: 0.5, shows: 1 }, { belief: 0.5, shows: 0 }]) // 0.693147
 */
export function gainOfCheck(list: readonly { readonly belief: number; readonly shows: number }[]): number {
  const all = list.reduce((sum, { belief }) => sum + belief, 0)
  const shows = list.reduce((sum, one) => sum + (one.belief / all) * one.shows, 0)
  const left = list.reduce((sum, one) => sum + (one.belief / all) * entropy(one.shows), 0)
  return Math.max(0, entropy(shows) - left)
}

const entropy = (p: number): number => (p <= 0 || p >= 1 ? 0 : -p * Math.log(p) - (1 - p) * Math.log(1 - p))

const POINTS = 240
const REACH = 5

/**
 * The same by a reading: each suspect foresees a normal one.
 *
 * @returns nat
 * @source mutual information: textbooks; integral by the trapezoidal rule
 */
export function gainOfReading(list: readonly Outcome[]): number {
  const all = list.reduce((sum, { belief }) => sum + belief, 0)
  const ends = list.flatMap(({ mean, variance }) => [
    mean - REACH * Math.sqrt(variance),
    mean + REACH * Math.sqrt(variance),
  ])
  const [from, to] = [Math.min(...ends), Math.max(...ends)]
  const step = (to - from) / POINTS
  let mixed = 0
  for (let k = 0; k <= POINTS; k++) {
    const x = from + k * step
    let density = 0
    for (const { belief, mean, variance } of list)
      density +=
        ((belief / all) * Math.exp((-0.5 * (x - mean) ** 2) / variance)) / Math.sqrt(2 * Math.PI * variance)
    if (density > 0) mixed -= density * Math.log(density) * step
  }
  const own = list.reduce(
    (sum, { belief, variance }) => sum + (belief / all) * 0.5 * Math.log(2 * Math.PI * Math.E * variance),
    0,
  )
  return Math.max(0, mixed - own)
}
