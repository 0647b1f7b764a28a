/** What is between the threads and under the head. @source definition */
export type ThreadCondition = 'dry' | 'oiled' | 'locking compound' | 'anti-seize'

/** Friction from low to high, no unit. @source definition */
export interface Friction {
  readonly low: number
  readonly high: number
}

// Data. VDI 2230 Part 1, friction classes A (0.04–0.10), B (0.08–0.16), C (0.14–0.24); from memory, the classes
// belonging to each condition too.
const A: Friction = { low: 0.04, high: 0.1 }
const B: Friction = { low: 0.08, high: 0.16 }
const C: Friction = { low: 0.14, high: 0.24 }
const ranges: Readonly<Record<ThreadCondition, Friction>> = {
  dry: C,
  oiled: B,
  'locking compound': C,
  'anti-seize': A,
}

/**
 * The range in which friction is taken to lie; null, nobody knows, is classes B and C together.
 *
 * @source VDI 2230 Part 1, table of friction classes (from memory)
 * @example frictionOf('oiled').high // 0.16
 */
export const frictionOf = (condition: ThreadCondition | null): Friction =>
  condition === null ? { low: B.low, high: C.high } : ranges[condition]
