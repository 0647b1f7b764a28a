/** A probability with no more digits than it deserves: "92 %", "under 1 %", "over 99 %". */
export function chance(probability: number): string {
  if (probability < 0.01) return 'under 1 %'
  if (probability > 0.99) return 'over 99 %'
  return `${Math.round(probability * 100)} %`
}
