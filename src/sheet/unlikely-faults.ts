import type { FaultKind } from '../adjust/index.ts'
import type { Sheet } from './sheet.ts'

/** Faults that leave the included angle of a wheel as it is: they move its pivots, not the stub against them. */
const keepIncludedAngle: readonly FaultKind[] = [
  'sagged spring',
  'worn ball joint',
  'bent lower arm',
  'bent upper arm',
  'collapsed bush',
  'shifted cross-member',
  'shifted tower',
  'rack off centre',
  'eccentric fitted the wrong way round',
]

/**
 * Kinds of fault that what was measured speaks against: a sagged spring where every height is inside, and all
 * that keeps the included angle where that angle is not what it should be.
 *
 * @param includedAngleDiffers whether the sides' included angles differ by more than the adjusters explain
 * @source from memory (classical table of SAI, included angle and camber)
 */
export function unlikelyFaults(
  heights: Sheet['heights'],
  includedAngleDiffers: boolean,
): readonly FaultKind[] {
  const level = heights.length > 0 && heights.every((height) => height.verdict === 'inside')
  return [...(level ? (['sagged spring'] as const) : []), ...(includedAngleDiffers ? keepIncludedAngle : [])]
}
