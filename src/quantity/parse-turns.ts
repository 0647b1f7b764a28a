import { quantityRefusal } from './quantity-refusal.ts'
import { type ReadOptions, readQuantity } from './read-quantity.ts'
import { type Turn, turn } from './tags.ts'

/** What a caller may say when turns are read. @source definition */
export interface TurnOptions extends ReadOptions {
  /** Flats of the hexagon or square that is turned; without it "2 flats" is refused. */
  readonly flatsPerTurn?: number | undefined
}

/**
 * Turns of a thread: "5/12 turn", "1 1/2 turns", "0.25 turn"; "2 flats" and "1 turn 2 flats" once it is
 * said how many flats a turn has.
 *
 * @returns turns, 1 = one revolution
 * @throws {Refusal} `needs-flats`; `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source definition
 * @example parseTurns('5/12 turn') // 0.41667
 * @example parseTurns('2 flats', { flatsPerTurn: 6 }) // 0.33333
 */
export function parseTurns(text: string, { flatsPerTurn, at = 'text' }: TurnOptions = {}): Turn {
  if (flatsPerTurn === undefined) {
    if (/\dflats?\b/i.test(text.replace(/\s/g, '')))
      throw quantityRefusal({
        code: 'needs-flats',
        at,
        given: text,
        sentence: `“${text}” counts flats, and how many flats make one turn is not said.`,
        remedy: 'Write it in turns: a flat of a hexagon is 1/6 turn, of a square 1/4 turn.',
      })
    return turn(readQuantity(text, 'turns', { at }))
  }
  if (!Number.isInteger(flatsPerTurn) || flatsPerTurn < 2)
    throw quantityRefusal({
      code: 'out-of-range',
      at,
      given: String(flatsPerTurn),
      sentence: `A turn cannot have ${flatsPerTurn} flats.`,
      remedy: 'Give a whole number of flats, 6 for a hexagon.',
    })
  const flat = { symbol: 'flat', times: 1, over: flatsPerTurn, names: ['flat', 'flats'] }
  return turn(readQuantity(text, 'turns', { at, extra: [flat] }))
}
