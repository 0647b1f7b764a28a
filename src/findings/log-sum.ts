/** Log of the sum of exponentials. @source definition */
export function logSum(values: readonly number[]): number {
  const top = Math.max(...values)
  if (top === Number.NEGATIVE_INFINITY) return top
  return top + Math.log(values.reduce((sum, x) => sum + Math.exp(x - top), 0))
}
