/** How long a work took, ms. */
export async function took(work: () => unknown): Promise<number> {
  const before = performance.now()
  await work()
  return performance.now() - before
}

/** The value below which a share of them lies. */
export const at = (list: readonly number[], share: number): number =>
  [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(list.length * share))]!
export const median = (list: readonly number[]): number => at(list, 0.5)
