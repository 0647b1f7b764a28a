import { decimalText } from './decimal-text.ts'
import { deservedPlaces } from './deserved-places.ts'
import type { DecimalStyle } from './print-style.ts'
import { quantityRefusal } from './quantity-refusal.ts'
import { type Kind, type Unit, units } from './units.ts'

/** "−0.92°" and "0.12°" from SI values; the spread is null where none was given. */
export function formatDecimal(
  value: number,
  kind: Kind,
  { unit, spread, digits, sign }: DecimalStyle<string>,
): { text: string; spread: string | null } {
  const minutes = unit === '°′'
  const known = unitOf(kind, minutes ? '′' : unit)
  const inUnit = (si: number) => (si * known.over) / known.times
  const places = placesOf(spread === undefined ? undefined : inUnit(spread), digits)
  const number = (si: number, signed: boolean | undefined) =>
    withUnit(decimalText(inUnit(si), places, { sign: signed ?? false }), known.symbol)
  return {
    text: minutes ? degreesAndMinutes(inUnit(value), places, sign ?? false) : number(value, sign),
    spread: spread === undefined || spread === 0 ? null : number(spread, false),
  }
}

function placesOf(spread: number | undefined, digits: number | undefined): number {
  if (digits !== undefined && (spread === undefined || spread === 0)) return digits
  if (spread === undefined)
    throw quantityRefusal({
      code: 'no-digits',
      at: 'digits',
      given: '',
      sentence: 'Neither a spread nor a number of digits says how this is to be printed.',
      remedy: 'Give the spread of the value, or say how many decimals are meant.',
    })
  return deservedPlaces(spread)
}

const MINUTES = 60

/** Rounded as minutes first, so that 59.6′ becomes 1°00′ and never 0°60′. */
function degreesAndMinutes(minutes: number, places: number, sign: boolean): string {
  const rounded = decimalText(minutes, places, { sign })
  const mark = /^[−+]/.exec(rounded)?.[0] ?? ''
  const size = Number(rounded.slice(mark.length).replace(/\u00a0/g, ''))
  const whole = Math.floor(size / MINUTES)
  const rest = decimalText(size - whole * MINUTES, Math.max(0, places))
  const [ones = '', part] = rest.split('.')
  return `${mark}${whole}°${ones.padStart(2, '0')}${part === undefined ? '' : `.${part}`}′`
}

const withUnit = (number: string, symbol: string) =>
  /^[°′″]/.test(symbol) ? `${number}${symbol}` : `${number} ${symbol}`

function unitOf(kind: Kind, symbol: string): Unit {
  const known = units[kind].find((unit) => unit.symbol === symbol)
  if (known) return known
  throw quantityRefusal({
    code: 'bad-style',
    at: 'unit',
    given: symbol,
    sentence: `“${symbol}” is not a unit to print this in.`,
    remedy: `Take one of ${units[kind].map((unit) => unit.symbol).join(', ')}.`,
  })
}
