import { type Metre, metre } from '../quantity/index.ts'
import { positive } from './fasten-refusal.ts'

/** Machinery's Handbook puts 0.625·μ·d for the head: a mean ring of 1.25 d. */
const PLAIN = 1.25
/** A flanged head rubs further out; own choice. */
const FLANGED = 1.5

/**
 * Where nobody measured it: the mean ring a plain hexagon rubs on (low) up to that of a flange (high).
 *
 * @source Machinery's Handbook, 31st ed., p. 1665, equation (23), for the low end; common practice, no source, for the high end
 * @example bearingDiameter(mm(12)).low // 0.015
 */
export function bearingDiameter(diameter: Metre): { readonly low: Metre; readonly high: Metre } {
  positive(diameter, 'diameter')
  return { low: metre(PLAIN * diameter), high: metre(FLANGED * diameter) }
}
