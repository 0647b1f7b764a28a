import type { Foreseen, Move, Moves } from '../adjust/index.ts'
import { formatChance, type UnitChoice } from '../quantity/index.ts'
import type { SheetMove, SheetMoves, SheetNumber } from './sheet.ts'
import { sheetNumber } from './sheet-number.ts'

/** The moves as the sheet shows them. */
export function sheetMoves(
  answer: Moves,
  {
    made,
    taught,
    judged,
  }: { readonly made: boolean; readonly taught: string | null; readonly judged: boolean },
  units: UnitChoice,
): SheetMoves {
  return {
    made,
    moves: answer.moves.map(sheetMove),
    insideNow: judged ? answer.insideNow : null,
    insideAfter: answer.insideAfter,
    insideAfterText: formatChance(answer.insideAfter),
    outOfReach: answer.outOfReach.map(({ reading, by, sentence }) => ({ reading, by, sentence })),
    steeringWheel: answer.steeringWheel && steeringWheel(answer, units),
    sentence: taught === null ? answer.sentence : `${answer.sentence} ${taught}`,
  }
}

/** Ratios between which most steerings lie. @source from memory */
const ratios = [14, 20] as const

function steeringWheel(answer: Moves, units: UnitChoice): NonNullable<SheetMoves['steeringWheel']> {
  const { now, after } = answer.steeringWheel!
  const said = (one: typeof now) => sheetNumber(one, { kind: 'angle', unit: units.angle, sign: false })
  const [is, will] = [said(now), said(after)]
  const moved = Math.abs(after.value - now.value) >= stillness
  return {
    now: is,
    after: will,
    sentence: `Running straight, the steering wheel stands off by ${is.text} ${is.spread} as told at the road wheels (left is plus)${moved ? `, after the moves by ${will.text} ${will.spread}` : ''}. At its rim that is ${ratios[0]} to ${ratios[1]} times as much, by its ratio.`,
  }
}

function sheetMove({ order, adjuster, side, end, from, to, hand, before }: Move): SheetMove {
  return {
    order,
    adjuster: adjuster.id,
    name: adjuster.name,
    wheel: side === 'both' ? `${end} axle` : `${side} ${end}`,
    side: side === 'both' ? 'left' : side,
    kind: adjuster.kind,
    amount: hand.amount,
    how: before === '' ? hand.how : `${before}; ${hand.how}`,
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
