/** A straight scale from values to pixels. */
export type Scale = (value: number) => number

/**
 * Scale that shows `values` with some air at both ends.
 *
 * @param from pixel of the low end
 * @param to pixel of the high end
 */
export function scaleOver(values: readonly number[], from: number, to: number, air = 0.12): Scale {
  const low = Math.min(...values)
  const high = Math.max(...values)
  const span = high - low || 1
  const start = low - air * span
  const end = high + air * span
  return (value) => from + ((value - start) / (end - start)) * (to - from)
}

/** Round values inside a range, about `count` of them: steps of 1, 2 or 5 times a power of ten. */
export function roundTicks(low: number, high: number, count: number): readonly number[] {
  const raw = (high - low) / Math.max(count, 1)
  if (!(raw > 0)) return []
  const power = 10 ** Math.floor(Math.log10(raw))
  const step = [1, 2, 5, 10].map((n) => n * power).find((s) => s >= raw) ?? 10 * power
  const first = Math.ceil(low / step)
  const last = Math.floor(high / step)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step)
}
