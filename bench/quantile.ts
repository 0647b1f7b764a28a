/** A quantile of a list, between its neighbours by line. */
export function quantile(list: readonly number[], p: number): number {
  const sorted = [...list].sort((a, b) => a - b)
  const at = p * (sorted.length - 1)
  const below = Math.floor(at)
  const above = Math.min(below + 1, sorted.length - 1)
  return sorted[below]! + (at - below) * (sorted[above]! - sorted[below]!)
}
