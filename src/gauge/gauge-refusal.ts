import { Refusal } from '../quantity/index.ts'

/**
 * Why this room says no.
 *
 * - `not-with-this-kit` the method needs a gauge that is not there
 * - `no-instrument` an instrument is named that the kit does not hold
 * - `wrong-instrument` an instrument of another kind than the method needs
 * - `too-few` fewer readings or places than the computation needs
 * - `not-finite` a reading is NaN or infinite
 * - `not-positive` a length, span or arm that must be above zero
 * - `no-sweep` both ends of the sweep point the same way, or too little was turned
 * - `not-level` heights or places that cannot belong to a wheel
 * - `no-floor-size` a floor map without track or wheelbase to divide by
 *
 * @source definition
 */
export type GaugeRefusal =
  | 'not-with-this-kit'
  | 'no-instrument'
  | 'wrong-instrument'
  | 'too-few'
  | 'not-finite'
  | 'not-positive'
  | 'no-sweep'
  | 'not-level'
  | 'no-floor-size'

/** A refusal of this room, with the code held to its union. */
export const gaugeRefusal = (
  code: GaugeRefusal,
  at: string,
  given: unknown,
  sentence: string,
  remedy: string,
): Refusal<GaugeRefusal> => new Refusal({ code, at, given: String(given), sentence, remedy })

/** Passes a finite reading on. */
export function finiteReading(value: number, at: string): number {
  if (Number.isFinite(value)) return value
  throw gaugeRefusal('not-finite', at, value, `${at} is ${value}, which nobody can read.`, 'Read it again.')
}

/** Passes a length above zero on. */
export function aboveZero(value: number, at: string): number {
  if (finiteReading(value, at) > 0) return value
  throw gaugeRefusal(
    'not-positive',
    at,
    value,
    `${at} is ${value}; it must be above zero.`,
    'Measure it, and mind the unit.',
  )
}
