/** Turns are written in parts of a whole that a hand can find: halves to twelfths, and the fine ones. */
const parts = [1, 2, 3, 4, 6, 8, 12, 16, 24]

/**
 * An amount of turns as the trade writes it: whole turns and a fraction in the parts of the step.
 *
 * @param turns amount, ≥ 0
 * @param step smallest amount; where it is 1/n of a turn the fraction is counted in those parts
 * @returns "5/12 turn", "1 1/4 turns", "2 turns"
 * @source common practice, no source
 * @example turnsText(5 / 12, 1 / 12) // '5/12 turn'
 */
export function turnsText(turns: number, step: number): string {
  const by = parts.find((n) => Math.abs(step * n - Math.round(step * n)) < 1e-6 && Math.round(step * n) >= 1)
  if (by === undefined) {
    const text = turns.toFixed(2)
    return `${text} ${turns <= 1 ? 'turn' : 'turns'}`
  }
  const count = Math.round(turns * by)
  const whole = Math.floor(count / by)
  let [top, bottom] = [count % by, by]
  if (top === 0) return `${whole} ${whole === 1 ? 'turn' : 'turns'}`
  while (top % 2 === 0 && bottom % 2 === 0) [top, bottom] = [top / 2, bottom / 2]
  while (top % 3 === 0 && bottom % 3 === 0) [top, bottom] = [top / 3, bottom / 3]
  return `${whole > 0 ? `${whole} ` : ''}${top}/${bottom} ${whole > 0 ? 'turns' : 'turn'}`
}
