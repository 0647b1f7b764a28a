import { combine, type Measured, rectangular, resolution } from '../measure/index.ts'
import { finiteReading, gaugeRefusal } from './gauge-refusal.ts'
import type { ReadingErrors } from './reading-errors.ts'
import { repeatsOnScale } from './repeats-on-scale.ts'
import { type SourceKind, sourceName } from './source-name.ts'

/** Kinds of the two errors. */
interface Kinds {
  readonly placing: SourceKind
  readonly step: SourceKind
}

const PLAIN: Kinds = { placing: 'reading', step: 'step' }
/** Of steer gauges: named apart, so that advice can tell them apart. */
export const STEER: Kinds = { placing: 'steer reading', step: 'steer step' }

/** Three standard deviations: 1 in 740 honest scatters is taken for a surprise. */
const SURPRISE = 3
const TERM = 9

/** A mean with a note when its readings differ more than the gauge explains. */
export interface MeanReading {
  readonly measured: Measured
  readonly notes: readonly string[]
}

/**
 * Several readings of one value: what they say together on their stepped scale. With weights, or with a residual
 * of the caller's own (readings around a wheel), and for a single reading: the weighted sum, where placing is a
 * new error each time, and the step hides the same amount each time where the hand is steadier than half a step,
 * else it too is new. Readings that differ more than the gauge explains widen the spread to what they show.
 *
 * @param what names the quantity and occasion
 * @throws {Refusal} `too-few`; `not-finite`
 * @source own derivation: docs/methods/camber-inclinometer.md
 */
export function meanReading(
  values: readonly number[],
  gauge: ReadingErrors,
  what: string,
  options: {
    readonly weights?: readonly number[]
    /** Squared deviations that are left, and their degrees of freedom. */
    readonly residual?: { readonly squares: number; readonly dof: number }
    readonly kinds?: Kinds
    readonly steady?: boolean
  } = {},
): MeanReading {
  const {
    weights = values.map(() => 1 / values.length),
    residual = deviation(values),
    kinds = PLAIN,
    steady = gauge.placing < gauge.resolution / 2,
  } = options
  if (values.length === 0)
    throw gaugeRefusal('too-few', what, 0, `There is no reading of ${what}.`, 'Read it at least once.')
  for (const value of values) finiteReading(value, what)
  const plain = options.weights === undefined && options.residual === undefined
  const together = plain && values.length > 1 ? repeatsOnScale(values, gauge) : null
  if (together)
    return {
      measured: {
        value: together.mean,
        parts: [
          {
            source: sourceName(kinds.placing, what),
            effect: together.u,
            shape: together.shape,
            dof: Number.POSITIVE_INFINITY,
          },
        ],
      },
      notes: [],
    }
  const variance = gauge.placing ** 2 / 3 + (steady ? 0 : gauge.resolution ** 2 / 12)
  const widen = surprise(residual, variance)
  const each = values.map((value, i) => ({
    of: combine(
      [
        { of: rectangular(gauge.placing, sourceName(kinds.placing, `${what}, ${i + 1}`)), times: widen },
        {
          of: resolution(gauge.resolution, sourceName(kinds.step, steady ? what : `${what}, ${i + 1}`)),
          times: widen,
        },
      ],
      value,
    ),
    times: weights[i]!,
  }))
  return {
    measured: combine(each),
    notes:
      widen > 1
        ? [
            `The readings of ${what} differ more than the gauge explains; the spread was widened ${widen.toFixed(1)} times. Read again.`,
          ]
        : [],
  }
}

function deviation(values: readonly number[]): { squares: number; dof: number } {
  const mean = values.reduce((sum, x) => sum + x, 0) / values.length
  return { squares: values.reduce((sum, x) => sum + (x - mean) ** 2, 0), dof: values.length - 1 }
}

/** Factor by which the stated errors fall short, 1 when they do not (chi-squared limit by Wilson and Hilferty). */
function surprise({ squares, dof }: { squares: number; dof: number }, variance: number): number {
  if (dof < 1 || variance === 0) return 1
  const room = dof * (1 - 2 / (TERM * dof) + SURPRISE * Math.sqrt(2 / (TERM * dof))) ** 3
  return squares / variance > room ? Math.sqrt(squares / variance / dof) : 1
}
