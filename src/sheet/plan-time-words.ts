/** A time of a whole job is not known better than this, minutes. */
const steps: readonly (readonly [below: number, step: number])[] = [
  [10, 1],
  [30, 5],
  [120, 10],
  [Number.POSITIVE_INFINITY, 10],
]

/**
 * A time as people say it, with no more digits than it deserves.
 *
 * @param minutes expected minutes
 * @source own choice
 * @example planTimeWords(0.7) // under 1 min
 * @example planTimeWords(3.8) // 4 min
 * @example planTimeWords(232) // 3 h 50 min
 */
export function planTimeWords(minutes: number): string {
  if (minutes < 0.95) return 'under 1 min'
  const [, step] = steps.find(([below]) => minutes < below)!
  const rounded = Math.round(minutes / step) * step
  if (rounded < 60) return `${rounded} min`
  const hours = Math.floor(rounded / 60)
  const rest = rounded % 60
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
}
