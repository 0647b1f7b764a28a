import type { Foreseen, Move, Moves } from '../adjust/index.ts'
import { formatChance, type UnitChoice } from '../quantity/index.ts'
import type { SheetMove, SheetMoves, SheetNumber } from './sheet.ts'
import { sheetNumber } from './sheet-number.ts'

/** The moves as the sheet shows them. */
export function sheetMoves(answer: Moves, made: boolean): SheetMoves {
  return {
    made,
    moves: answer.moves.map(sheetMove),
    insideNow: answer.insideNow,
    insideAfter: answer.insideAfter,
    insideAfterText: formatChance(answer.insideAfter),
    outOfReach: answer.outOfReach.map(({ reading, by, sentence }) => ({ reading, by, sentence })),
    sentence: answer.sentence,
  }
}

function sheetMove({ order, adjuster, side, end, from, to, hand }: Move): SheetMove {
  return {
    order,
    adjuster: adjuster.id,
    name: adjuster.name,
    wheel: side === 'both' ? `${end} axle` : `${side} ${end}`,
    side: side === 'both' ? 'left' : side,
    kind: adjuster.kind,
    amount: hand.amount,
    how: hand.how,
    seenFrom: hand.seenFrom,
    from,
    to,
    dial: hand.dial,
    looks: hand.looks,
    warning: hand.warning,
  }
}

/** What is foreseen of a reading after all moves; null where they do not change it. */
export function predictedNumber(foreseen: Foreseen | undefined, units: UnitChoice): SheetNumber | null {
  if (!foreseen || Math.abs(foreseen.after.value - foreseen.now.value) < stillness) return null
  return sheetNumber(foreseen.after, { kind: 'angle', unit: units.angle, sign: false })
}

/** A change below this cannot be read by anyone, rad (0.005°). @source own choice */
const stillness = 8.7e-5
