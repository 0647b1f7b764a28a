import { NOISE_FREE } from './deserved-places.ts'
import { quantityRefusal } from './quantity-refusal.ts'

const TEN = 10
const MOST_PLACES = 15
const GROUP_FROM = 5

/** A number to a decimal place, for people: "−0.92", "0.00" (never with a sign), "+1.5" when asked, "125 000". */
export function decimalText(value: number, places: number, { sign = false } = {}): string {
  if (!Number.isFinite(value) || Math.abs(value) >= TEN ** MOST_PLACES)
    throw quantityRefusal({
      code: 'not-finite',
      at: 'value',
      given: String(value),
      sentence: `${value} is not a number that can be printed.`,
      remedy: 'Report this: the computation should have refused before.',
    })
  if (!Number.isInteger(places) || Math.abs(places) > MOST_PLACES)
    throw quantityRefusal({
      code: 'bad-style',
      at: 'digits',
      given: String(places),
      sentence: `${places} decimals cannot be printed.`,
      remedy: `Ask for a whole number of decimals, at most ${MOST_PLACES}.`,
    })
  const size = Number(Math.abs(value).toPrecision(NOISE_FREE))
  const scale = TEN ** Math.max(0, -places)
  const text = (Math.round(size / scale) * scale).toFixed(0)
  const digits = places > 0 ? size.toFixed(places) : text
  const mark = Number(digits) === 0 ? '' : value < 0 ? '−' : sign ? '+' : ''
  return mark + grouped(digits)
}

/** Groups of three from the point leftward, from five digits on (ISO 80000-1, 7.3.1). */
function grouped(digits: string): string {
  const [whole = '', part] = digits.split('.')
  const spaced = whole.length < GROUP_FROM ? whole : whole.replace(/\B(?=(\d{3})+$)/g, '\u00a0')
  return part === undefined ? spaced : `${spaced}.${part}`
}
