import { inInches, inMillimetres } from '../quantity/index.ts'
import { fastenRefusal } from './fasten-refusal.ts'
import type { Thread } from './thread.ts'
import { threadTable } from './thread-table.ts'

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`
const TOLERANCE = String.raw`(?:\s*-?\s*\d[a-hA-H](?:\d[a-hA-H])?)?`
const METRIC = new RegExp(
  `^M\\s*${NUMBER}(?:\\s*[x×*-]\\s*${NUMBER})?(\\s+coarse|\\s+fine)?${TOLERANCE}$`,
  'i',
)
const UNIFIED =
  /^(\d+\/\d+|\d*\.\d+|1)\s*(?:"|in\.?)?(?:\s*[-–]\s*(\d+))?\s*-?\s*(UNC|UNF)?(?:\s*-?\s*[123][AB])?$/i
const LEFT = /[\s-]*\b(LH|left[- ]hand|left)$/i
const VULGAR: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '⅜': '3/8',
  '½': '1/2',
  '⅝': '5/8',
  '¾': '3/4',
  '⅞': '7/8',
}
const SAME = 1e-4

/**
 * A thread as it is written: "M16x1.5", "M12" (coarse), "M14 x 1,5 - 6g", "1/2-20 UNF", "7/16 UNC", "M16x1.5 LH".
 * A size with no pitch and no series in inches, or "fine" with several fine pitches, is asked about, never guessed.
 *
 * @throws {Refusal} `unknown-thread` when no table has it; `ambiguous-thread` when more than one thread is meant
 * @source ISO 965-1:1998, clause 5 (designation: coarse pitch left out; from memory); ASME B1.1 (designation; from memory)
 * @example parseThread('M12').pitch // 0.00175
 * @example parseThread('1/2-20 UNF').designation // '1/2-20 UNF'
 */
export function parseThread(text: string): Thread {
  const plain = text.trim().replace(/[¼⅜½⅝¾⅞]/g, (one) => VULGAR[one]!)
  const left = LEFT.test(plain)
  const name = plain.replace(LEFT, '')
  const found = METRIC.test(name) ? metric(name) : unified(name)
  const [one, ...more] = found
  if (!one)
    throw fastenRefusal({
      code: 'unknown-thread',
      at: 'thread',
      given: text,
      sentence: `“${text}” is no thread of the tables (M5 to M24, UNC and UNF from 1/4 to 1 in)${near(name)}.`,
      remedy: 'Write it as M12x1.5 or 1/2-20 UNF; measure diameter and pitch when nobody knows.',
    })
  if (more.length > 0)
    throw fastenRefusal({
      code: 'ambiguous-thread',
      at: 'thread',
      given: text,
      sentence: `“${text}” can be ${found.map(({ designation }) => designation).join(' or ')}.`,
      remedy: 'Write the pitch, or the threads per inch, as well.',
    })
  return left ? { ...one, designation: `${one.designation} LH`, hand: 'left' } : one
}

function metric(name: string): readonly Thread[] {
  const [, d = '', p, series] = METRIC.exec(name)!
  const pitch = p === undefined ? null : decimal(p)
  const meant = series?.trim().toLowerCase() ?? (pitch === null ? 'coarse' : null)
  return threadTable.filter(
    (one) =>
      one.system === 'metric' &&
      same(inMillimetres(one.diameter), decimal(d)) &&
      (pitch === null || same(inMillimetres(one.pitch), pitch)) &&
      (meant === null || one.series === meant),
  )
}

function unified(name: string): readonly Thread[] {
  const [, size, n, series] = UNIFIED.exec(name) ?? []
  if (size === undefined) return []
  const [above = '', below = '1'] = size.split('/')
  const d = Number(above) / Number(below)
  return threadTable.filter(
    (one) =>
      one.system === 'unified' &&
      same(inInches(one.diameter), d) &&
      (n === undefined || same(1 / inInches(one.pitch), Number(n))) &&
      (series === undefined || one.designation.endsWith(series.toUpperCase())),
  )
}

function near(name: string): string {
  const d = METRIC.exec(name)?.[1]
  const like =
    d === undefined
      ? []
      : threadTable.filter((one) => same(inMillimetres(one.diameter), decimal(d)) && one.system === 'metric')
  return like.length === 0
    ? ''
    : `; of this size they have ${like.map(({ designation }) => designation).join(', ')}`
}

const decimal = (text: string) => Number(text.replace(',', '.'))
const same = (a: number, b: number) => Math.abs(a - b) < SAME * Math.abs(b)
