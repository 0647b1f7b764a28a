import { type Metre, metre } from '../quantity/index.ts'
import type { Tyre } from './parse-tyre.ts'

/** Rolling circumference by diameter of a new car tyre. */
const rolls = { radial: 3.05, diagonal: 2.99, 'bias-belted': null } as const

/**
 * How far a car tyre rolls in one turn: somewhat less than π times its free diameter.
 *
 * @returns m; null for a construction of which no factor is known here
 * @source from memory: ETRTO design guide (Cr = F · D, F = 3.05 radial, 2.99 diagonal)
 * @example rollingCircumference(parseTyre('205/55R16')) // 1.927295
 */
export function rollingCircumference({
  diameter,
  construction,
}: Pick<Tyre, 'diameter' | 'construction'>): Metre | null {
  const factor = rolls[construction]
  return factor === null ? null : metre(factor * diameter)
}
