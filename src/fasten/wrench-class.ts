import type { NewtonMetre } from '../quantity/index.ts'
import { positive } from './fasten-refusal.ts'

/** Type and class of a hand torque tool; type I indicates, type II gives way at a setting. @source ISO 6789-1:2017, 5.1 (from memory) */
export type WrenchClass =
  | 'I A'
  | 'I B'
  | 'I C'
  | 'I D'
  | 'I E'
  | 'II A'
  | 'II B'
  | 'II C'
  | 'II D'
  | 'II E'
  | 'II F'
  | 'II G'

// Data. Largest deviation as a share, for a largest torque up to 10 N·m and above: ISO 6789-1:2017, 5.1.5, from memory.
const SMALL = 10
const WIDE = [0.06, 0.06] as const
const NARROW = [0.06, 0.04] as const
const table: Readonly<Record<WrenchClass, readonly [number, number]>> = {
  'I A': WIDE,
  'I B': NARROW,
  'I C': NARROW,
  'I D': WIDE,
  'I E': NARROW,
  'II A': NARROW,
  'II B': NARROW,
  'II C': NARROW,
  'II D': WIDE,
  'II E': WIDE,
  'II F': WIDE,
  'II G': WIDE,
}

/**
 * Largest permitted deviation of a wrench, as a share of the reading.
 *
 * @param most largest torque of its range
 * @throws {Refusal} `not-positive`, `not-finite`
 * @source ISO 6789-1:2017, 5.1.5 (from memory)
 * @example wrenchDeviation('II A', Nm(200)) // 0.04
 */
export const wrenchDeviation = (kind: WrenchClass, most: NewtonMetre): number =>
  table[kind][positive(most, 'largest torque') > SMALL ? 1 : 0]
