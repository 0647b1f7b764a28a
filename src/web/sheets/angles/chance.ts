/** A probability with no more digits than it deserves: "92 %", "less than 1 %", "more than 99 %". */
export function chance(probability: number): string {
  if (probability < 0.01) return 'less than 1 %'
  if (probability > 0.99) return 'more than 99 %'
  return `${Math.round(probability * 100)} %`
}
