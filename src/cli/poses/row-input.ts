import { checkFinite } from '../../linkage/index.ts'
import { metre } from '../../quantity/index.ts'
import { isPlain, readNumber } from './read-geometry.ts'
import type { Stand } from './settled-corner.ts'

const words: Readonly<Record<string, number>> = {
  NaN: Number.NaN,
  Infinity: Number.POSITIVE_INFINITY,
  '-Infinity': Number.NEGATIVE_INFINITY,
}

/** The same value with "NaN", "Infinity" and "-Infinity" turned into the numbers they stand for. */
export function withNonFinite(value: unknown): unknown {
  if (typeof value === 'string') return Object.hasOwn(words, value) ? words[value] : value
  if (Array.isArray(value)) return value.map(withNonFinite)
  if (isPlain(value))
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withNonFinite(inner)]))
  return value
}

/** What a row is driven by: read from the row, everything else in it is ignored. */
export const driveOf = (row: Readonly<Record<string, unknown>>) => ({
  travel: metre(readNumber(row['travel'], 'travel')),
  rack: metre(readNumber(row['rack'], 'rack')),
})

/** How the adjusters stand in a row; not mentioned is neutral. */
export function standOf(row: Readonly<Record<string, unknown>>): Stand {
  const sine = (name: string): number => Math.sin((readNumber(row[name] ?? 0, name) * Math.PI) / 180)
  return {
    sinFront: sine('theta_front_deg'),
    sinRear: sine('theta_rear_deg'),
    tie: readNumber(row['tie_delta'] ?? 0, 'tie_delta'),
  }
}

/** Refuses `not-finite` if any number that the row is computed from is not finite. Comes before every other check. */
export function checkRowFinite(geometry: unknown, row: Readonly<Record<string, unknown>>): void {
  checkFinite(geometry, 'geometry')
  for (const name of inputs) checkFinite(row[name], name)
}

const inputs = [
  'travel',
  'rack',
  'theta_front_deg',
  'theta_rear_deg',
  'tie_delta',
  'target_delta',
  'inverse_target_delta',
]
