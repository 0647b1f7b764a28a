/** What one unsigned number can be read as: one value, two values, or none. */
export type NumberReading =
  | { readonly value: number }
  | { readonly either: readonly [number, number] }
  | { readonly wrong: string }

const grouped = /^[1-9]\d{0,2}([., ])\d{3}(?:\1\d{3})*$/

/**
 * Reads one unsigned number as the trade writes it: 12, 0.25, 0,25, 1.234,5, 1 234, 3/32, 1 1/4, 1-1/4.
 * A comma before exactly three digits has two readings; so has a point where `pointGroups` (mileage),
 * since elsewhere the point is never taken for a mark between thousands (ISO 80000-1, 7.3.1 and 7.3.2).
 */
export function readNumber(token: string, { pointGroups = false } = {}): NumberReading {
  const parts = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(token)
  if (parts) {
    const [whole, over, under] = [Number(parts[1] ?? 0), Number(parts[2]), Number(parts[3])]
    if (under === 0) return { wrong: 'it divides by zero' }
    if (parts[1] !== undefined && over >= under)
      return { wrong: `the fraction beside the ${whole} is not less than one` }
    return { value: whole + over / under }
  }
  const power = /e[+-]?\d+$/i.exec(token)?.[0] ?? ''
  const digits = token.slice(0, token.length - power.length)
  const number = (plain: string): NumberReading => ({ value: Number(plain + power) })

  const marks = digits.match(/[., ]/g) ?? []
  const last = marks.at(-1)
  if (last === undefined) return number(digits)
  if (!/\d$/.test(digits)) return { wrong: 'nothing follows its decimal mark' }
  const kinds = new Set(marks)
  const cut = digits.lastIndexOf(last)
  if (kinds.size === 1) {
    const groups = grouped.test(digits)
    const joined = digits.replace(/[., ]/g, '')
    if (last === ' ' || marks.length > 1)
      return groups ? number(joined) : { wrong: 'its groups of digits are not groups of three' }
    const decimal = digits.replace(',', '.')
    if (groups && power === '' && (last === ',' || pointGroups))
      return { either: [Number(decimal + power), Number(joined + power)] }
    return number(decimal)
  }
  const [whole, part] = [digits.slice(0, cut), digits.slice(cut + 1)]
  if (kinds.size === 2 && grouped.test(whole)) return number(`${whole.replace(/[., ]/g, '')}.${part}`)
  return { wrong: 'its marks between digits do not fit together' }
}
