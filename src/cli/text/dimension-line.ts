import type { SheetReading } from '../../sheet/index.ts'

/** Characters of a dimension line; the ASCII set is for terminals that cannot show the other. */
export interface LineInk {
  readonly empty: string
  readonly inside: string
  readonly limit: string
  readonly low: string
  readonly high: string
  readonly spread: string
  readonly value: string
  readonly after: string
}

export const drawn: LineInk = {
  empty: ' ',
  inside: '·',
  limit: '│',
  low: '├',
  high: '┤',
  spread: '─',
  value: '●',
  after: '▾',
}
export const ascii: LineInk = {
  empty: ' ',
  inside: '.',
  limit: '|',
  low: '[',
  high: ']',
  spread: '-',
  value: 'o',
  after: 'v',
}

/**
 * A reading between its limit marks as one line of text: the limits take the middle two quarters, what lies
 * beyond the drawn width sits at its edge.
 */
export function dimensionLine(reading: SheetReading, ink: LineInk, width = 32): string {
  const limit = reading.limit
  if (!limit) return ''
  const room = limit.high - limit.low
  const from = limit.low - room / 2
  const column = (x: number): number =>
    Math.min(width - 1, Math.max(0, Math.round(((x - from) / (2 * room)) * (width - 1))))
  const cells = Array.from({ length: width }, () => ink.empty)
  for (let i = column(limit.low); i <= column(limit.high); i++) cells[i] = ink.inside
  for (let i = column(reading.low); i <= column(reading.high); i++) cells[i] = ink.spread
  cells[column(limit.low)] = ink.limit
  cells[column(limit.high)] = ink.limit
  cells[column(reading.low)] = ink.low
  cells[column(reading.high)] = ink.high
  if (reading.predicted) cells[column(reading.predicted.value)] = ink.after
  cells[column(reading.value)] = ink.value
  return cells.join('')
}
