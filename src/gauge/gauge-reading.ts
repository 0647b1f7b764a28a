import type { AxleEnd, ReadingName, Side } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import type { WheelPlace } from './instruments.ts'

/**
 * Readings that are no wheel angle of a sheet. Heights and set-back in m, the others in rad.
 *
 * @source definition
 */
export type OtherName =
  | `${WheelPlace} ride height`
  | `${AxleEnd} set-back`
  | `front ${Side} included angle`
  | `${WheelPlace} run-out`
  | `${WheelPlace} ${'camber' | 'toe'} play`

/**
 * What a correction took off or put on, SI.
 *
 * @source definition
 */
export interface Correction {
  readonly name:
    | 'floor roll'
    | 'floor pitch'
    | 'strings'
    | 'below hub height'
    | 'linkage'
    | 'zero'
    | 'ride height'
  readonly by: number
}

/**
 * A reading with everything that was done to it.
 *
 * @source definition
 */
export interface GaugeReading {
  readonly name: ReadingName | OtherName
  /** Corrected. */
  readonly measured: Measured
  readonly corrections: readonly Correction[]
  /** Plain sentences: what was assumed, what looked odd. */
  readonly notes: readonly string[]
  readonly formula: string
  /** Document with clause, or the page of this project. */
  readonly source: string
}

const others = / (ride height|set-back|included angle|run-out|play)$/

/**
 * Whether a reading is an angle that a sheet has limits for.
 *
 * @source definition
 * @example isAngleName('front left camber') // true
 */
export const isAngleName = (name: GaugeReading['name']): name is ReadingName => !others.test(name)
