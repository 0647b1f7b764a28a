import type { Entry } from './entry.ts'

/** By kind: the members that say what an entry is about. What is not here can be said any number of times. */
const about: Readonly<Record<string, readonly string[]>> = {
  opened: [],
  arrival: [],
  'set pressures': [],
  floor: [],
  'ride height': ['wheel', 'when'],
  'as found': ['adjuster', 'wheel'],
  play: ['joint', 'wheel', 'direction'],
  round: ['number'],
  moved: ['adjuster', 'wheel'],
  'part renewed': ['part', 'wheels'],
  tyre: ['wheel'],
  carried: ['axle'],
  placed: ['part', 'wheel'],
  spring: ['part', 'wheel'],
  steering: [],
  pedal: [],
  correction: ['of'],
  cleared: ['of'],
  'not road-ready': [],
}

/**
 * What an entry is about, as one text: two entries of one slot that were written apart may speak against each other.
 *
 * @returns null for what may be said any number of times, and where another rule looks at it
 * @source own derivation: docs/methods/record.md
 * @example slotOf({ kind: 'note', data: { text: 'a' } }) // null
 */
export function slotOf({ kind, data }: Entry): string | null {
  const members = Object.hasOwn(about, kind) ? about[kind] : undefined
  return members ? JSON.stringify([kind, ...members.map((name) => data[name] ?? null)]) : null
}
