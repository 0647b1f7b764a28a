/** How far a line is to move: one place, or to the station before or after. */
export type LineStep = 'earlier' | 'later' | 'station before' | 'station after'

/**
 * An order with one line moved.
 *
 * @param bands the lines' ids, station by station
 * @returns the same order where the line can go no further
 */
export function movedLine(
  bands: readonly (readonly string[])[],
  id: string,
  step: LineStep,
): readonly string[] {
  const order = bands.flat()
  const from = order.indexOf(id)
  const band = bands.findIndex((ids) => ids.includes(id))
  if (from < 0) return order
  const starts = bands.map((_, i) => bands.slice(0, i).flat().length)
  const to =
    step === 'earlier'
      ? from - 1
      : step === 'later'
        ? from + 1
        : step === 'station before'
          ? (starts[band] ?? 0) - 1
          : (starts[band + 1] ?? order.length)
  const at = Math.max(0, Math.min(order.length - 1, to))
  const without = order.filter((one) => one !== id)
  return [...without.slice(0, at), id, ...without.slice(at)]
}
