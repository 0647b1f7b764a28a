import { type Metre, type Radian, rad } from '../quantity/index.ts'
import { specRefusal } from './spec-refusal.ts'

/**
 * The toe that play felt at the front of the tread lets a wheel wander by.
 *
 *     toe = asin(play / (D / 2))
 *
 * @param play whole movement at the tread, at hub height, m, ≥ 0
 * @param tyre outer diameter D, m, > 0
 * @returns rad, from one end of the play to the other
 * @throws {Refusal} `out-of-range` if the play is below zero or more than half the diameter, or the diameter not above zero
 * @assumes the wheel turns about an upright axis through the middle of its tread, so its lever is half the diameter
 * @source own derivation: docs/methods/inspection-limits.md
 * @example inDegrees(playAsToe({ play: inch(0.25), tyre: mm(663.7) })) // 1.096
 */
export function playAsToe({ play, tyre }: { readonly play: Metre; readonly tyre: Metre }): Radian {
  if (!(tyre > 0 && Number.isFinite(tyre) && play >= 0 && play <= tyre / 2))
    throw specRefusal({
      code: 'out-of-range',
      at: 'play',
      given: `${play} at ${tyre}`,
      sentence: 'The play does not fit the tyre’s diameter.',
      remedy: 'Check both lengths and their units.',
    })
  return rad(Math.asin(play / (tyre / 2)))
}
