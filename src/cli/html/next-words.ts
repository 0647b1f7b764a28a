import type { Sheet } from '../../sheet/index.ts'

/** What fits on two lines of the strip at the foot; longer advice stands with the moves. */
export const strip = 170

/** The one sentence of the strip at the foot of each side. */
export function nextWords({ next, moves: { sentence } }: Sheet): string {
  if (next.sentence !== sentence || sentence.length <= strip) return next.sentence
  // Of long advice what the hand does first; decimals have no blank behind their point.
  const said = sentence.split(/(?<=[.]) /)
  const first = said.find((one) => /^(Look for|Start with|See how)/.test(one)) ?? said[0]!
  return `${first} See the moves.`
}
