/** An angle for an axis or a limit: "−1.5", "0", "2.25"; no plus sign, no zero with digits behind it. */
export function degreeText(radians: number): string {
  const degrees = Math.round((radians * 18000) / Math.PI) / 100
  if (degrees === 0) return '0'
  const digits = Number.isInteger(degrees) ? 0 : Number.isInteger(degrees * 10) ? 1 : 2
  return `${degrees < 0 ? '−' : ''}${Math.abs(degrees).toFixed(digits)}`
}
