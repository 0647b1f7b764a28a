import type { Side } from '../../linkage/index.ts'

/** From where the corner is looked at. */
export type CornerView = 'front' | 'side' | 'plan'

/** A point of the vehicle, [x forward, y left, z up] in metres. */
type Place = readonly [number, number, number]

/** A point on the sheet, metres: to the right, upward. */
export type Flat = readonly [number, number]

/**
 * What the eye sees. Front: looking rearward, so the vehicle's left is on the right. Side: from outside the
 * wheel. Plan: from above with the front upward.
 *
 * @source docs/methods/signs.md
 */
export function seenAs(view: CornerView, side: Side): (place: Place) => Flat {
  if (view === 'front') return ([, y, z]) => [y, z]
  if (view === 'plan') return ([x, y]) => [-y, x]
  return side === 'left' ? ([x, , z]) => [-x, z] : ([x, , z]) => [x, z]
}
