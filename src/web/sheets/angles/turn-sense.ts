import type { SheetMove } from '../../../sheet/index.ts'

/** Which way the hand turns, as the move itself says it; null when nothing is turned. */
export function turnSense({ looks, amount, how }: SheetMove): 'clockwise' | 'anticlockwise' | null {
  if (looks) return looks
  const said = /\b(anti)?clockwise\b/.exec(`${amount} ${how}`)
  return said ? (said[1] ? 'anticlockwise' : 'clockwise') : null
}
