import type { Observation, PlayObservation, RideHeightObservation } from '../gauge/index.ts'
import type { EntryData } from './entries-schema.ts'

/** The occasion of an entry: what was random that once is named by it. */
const occasion = (entry: number) => `entry ${entry}`

/**
 * A reading as the gauge room takes it: the same members, SI numbers in place of typed quantities.
 *
 * @param entry place in the log; it names the occasion
 * @source definition
 */
export function observationOf(entry: number, data: EntryData<'reading'>): Observation {
  return { ...plain(data), id: occasion(entry) }
}

/** A ride height as the gauge room takes it. @source definition */
export function heightObservation(
  entry: number,
  { wheel, rule, readings }: EntryData<'ride height'>,
): RideHeightObservation {
  return {
    id: occasion(entry),
    method: 'ride height by rule',
    wheel,
    rule,
    readings: readings.map(({ value }) => value),
  }
}

/** Play of a joint as the gauge room takes it. @source definition */
export function playObservation(
  entry: number,
  { wheel, gauge, moves, swings, arm }: EntryData<'play'>,
): PlayObservation {
  return {
    id: occasion(entry),
    method: 'dial indicator',
    wheel,
    gauge,
    moves,
    swings: swings.map(({ value }) => value),
    arm: arm.value,
  }
}

/** What is left of a type when its typed quantities are replaced by their values. */
type Plain<T> = T extends { readonly text: string; readonly value: infer N }
  ? N
  : T extends string | number | boolean
    ? T
    : { [K in keyof T]: Plain<Exclude<T[K], undefined>> }

/** Typed quantities replaced by their values, all the way down; absent members stay absent. */
function plain<T>(data: T): Plain<T> {
  return valuesOf(data) as Plain<T>
}

function valuesOf(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(valuesOf)
  if (typeof data !== 'object' || data === null) return data
  const { text, value } = data as { text?: unknown; value?: unknown }
  if (typeof text === 'string' && typeof value === 'number') return value
  return Object.fromEntries(
    Object.entries(data)
      .filter(([, inner]) => inner !== undefined)
      .map(([name, inner]) => [name, valuesOf(inner)]),
  )
}
