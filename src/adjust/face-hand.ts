import { inDegrees } from '../quantity/index.ts'
import type { ActsOn } from './adjuster.ts'
import { clockOf } from './clock-of.ts'
import { clockText } from './clock-text.ts'
import type { Faced } from './faced.ts'
import type { HandWords, Turning } from './hand.ts'
import { otherWay } from './other-way.ts'
import { seenFrom } from './seen-from.ts'

/** How an eccentric or an offset sleeve is turned under its mark; a sleeve goes the shorter way round. */
export function faceHand(
  faced: Faced,
  on: ActsOn,
  { from, to, known = true }: Turning,
  still: boolean,
): HandWords {
  const side = on === 'right' ? 'right' : 'left'
  const way = faced.kind === 'offset sleeve' ? shorterWay(to - from, faced.range) : to - from
  const onLeft = way > 0 ? faced.positiveLooks : otherWay(faced.positiveLooks)
  const looks = side === 'left' ? onLeft : otherWay(onLeft)
  const dial = known ? { from: clockOf(faced, side, from), to: clockOf(faced, side, to) } : null
  const digits = inDegrees(faced.step) < 0.95 ? 1 : 0
  const [a, b] = dial ? [clockText(dial.from), clockText(dial.to)] : ['', '']
  return {
    amount: still ? 'stays' : `${Math.abs(inDegrees(way)).toFixed(digits)}° ${looks}`,
    how: !dial ? '' : a === b ? `stays close to ${a} o'clock` : `from ${a} to ${b} o'clock`,
    seenFrom: seenFrom(faced.seenFrom, on),
    dial,
    looks: still ? null : looks,
  }
}

const whole = 2 * Math.PI

/** Where the range is the whole circle, more than half a turn one way is less than half the other way. */
function shorterWay(turn: number, [low, high]: readonly [number, number]): number {
  if (high - low < whole * (1 - 1e-9) || Math.abs(turn) <= whole / 2 + 1e-9) return turn
  return turn - Math.sign(turn) * whole
}
