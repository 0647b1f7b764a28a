import { arcsine, type Measured, triangular } from '../measure/index.ts'
import type { RunOut } from './gauge-context.ts'
import type { WheelPlace } from './instruments.ts'
import { sourceName } from './source-name.ts'

/** Half the swing of a rim that runs out 1 mm in all over 400 mm; from memory of ordinary steel rims. */
const USUAL_AMPLITUDE = 0.00125

/**
 * What the run-out of a rim leaves in an angle read at an unknown place of the wheel. A run-out that was measured
 * is a sine caught somewhere; one that is only bounded is likelier small.
 *
 * @param share what is left of the first harmonic: 1 for one place, 0 for two places half a turn apart
 * @param where names the occasion and the direction in which the run-out acts
 */
export function runOutLeft(
  known: RunOut | undefined,
  { wheel, share, where }: { readonly wheel: WheelPlace; readonly share: number; readonly where: string },
): { measured: Measured; notes: readonly string[] } {
  const source = sourceName('run-out', `${wheel}, ${where}`)
  const amplitude = (known?.amplitude ?? USUAL_AMPLITUDE) * share
  const measured = known?.known === 'measured' ? arcsine(amplitude, source) : triangular(amplitude, source)
  const assumed = !known && share > SMALL
  return {
    measured,
    notes: assumed
      ? [
          `The run-out of the ${wheel} rim was not measured; half a millimetre either way at the edge is assumed.`,
        ]
      : [],
  }
}

const SMALL = 0.05
