import type { KindInUnit } from './format-measured.ts'
import { quantityRefusal } from './quantity-refusal.ts'
import { readQuantity } from './read-quantity.ts'
import { type Kind, units } from './units.ts'

const MOST_DIGITS = 17

/**
 * A quantity for a file: the shortest decimal with its unit that is read back as the same number, or as its
 * neighbour among the doubles where no decimal gives it back through the unit. Plain minus.
 * Not for people: it may show more digits than anything deserves.
 *
 * @param quantity SI value, kind, unit
 * @throws {Refusal} `not-finite`; `bad-style` for degrees with minutes; `out-of-range` for a mass or distance below zero
 * @source definition
 * @example exactText({ value: mm(1.5), kind: 'length', unit: 'mm' }) // 1.5 mm
 */
export function exactText({ value, kind, unit }: { readonly value: number } & KindInUnit): string {
  const refuse = (code: 'bad-style' | 'not-finite', sentence: string, given: string) =>
    quantityRefusal({ code, at: 'value', given, sentence, remedy: 'Take a finite value and a single unit.' })
  if (!Number.isFinite(value)) throw refuse('not-finite', `${value} cannot be written.`, String(value))
  const known = units[kind].find(({ symbol }) => symbol === unit)
  if (!known) throw refuse('bad-style', `“${unit}” is not a single unit.`, unit)
  const inUnit = (value * known.over) / known.times
  const gap = /^[°′″]/.test(known.symbol) ? '' : ' '
  let text = ''
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    text = `${oneReading(String(Number(inUnit.toPrecision(digits))), kind)}${gap}${known.symbol}`
    if (Math.abs(readQuantity(text, kind) - value) <= Number.EPSILON * Math.abs(value)) break
  }
  return text
}

/** A distance of "1.234 km" is written "1.2340", since three digits behind a mark can be read as thousands. */
const oneReading = (number: string, kind: Kind) =>
  kind === 'distance' && /^-?[1-9]\d{0,2}\.\d{3}$/.test(number) ? `${number}0` : number
