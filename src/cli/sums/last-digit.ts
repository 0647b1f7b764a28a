/**
 * Half a step of the last digit that a person wrote: "0.2°" is meant within 0.05°, "0°12′" within half a minute.
 *
 * @param read what makes an SI value of the text
 * @returns SI, ≥ 0
 */
export function lastDigit(text: string, read: (text: string) => number): number {
  const neighbour = text.replace(/\d(?=\D*$)/, (digit) => String(digit === '9' ? 8 : Number(digit) + 1))
  return Math.abs(read(neighbour) - read(text)) / 2
}
