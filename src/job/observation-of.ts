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
  return { id: occasion(entry), ...(plain(data) as object) } as Observation
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

/** Typed quantities replaced by their values, all the way down; absent members stay absent. */
function plain(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(plain)
  if (typeof data !== 'object' || data === null) return data
  const { text, value } = data as { text?: unknown; value?: unknown }
  if (typeof text === 'string' && typeof value === 'number') return value
  return Object.fromEntries(
    Object.entries(data)
      .filter(([, inner]) => inner !== undefined)
      .map(([name, inner]) => [name, plain(inner)]),
  )
}
