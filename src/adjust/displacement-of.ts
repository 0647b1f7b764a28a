import type { AnyCornerPoints, Displacement } from '../linkage/index.ts'
import type { Adjuster } from './adjuster.ts'
import { checkAdjuster } from './check-adjuster.ts'
import { displacementByStroke } from './displacement-by-stroke.ts'
import { strokeOf } from './stroke-of.ts'

/**
 * What an adjuster at a setting does to the points of a (left-drawn) corner, exactly.
 *
 *     eccentric           point += throw · sin setting · along
 *     shims               points += (setting − as drawn) · along
 *     slide, plate, frame points += setting · along (a sub-frame: to the left, so outward)
 *     thread              length += pitch · setting, twice for a left-and-right sleeve
 *     slotted             the wheel turns by shift / bolt spacing about the other bolt (`SlottedBolt`)
 *     wedge               the spin axis tilts by setting − as drawn
 *
 * @param setting in the adjuster's own unit (`settingUnit`)
 * @returns a displacement against the design points
 * @throws {Refusal} `bad-adjuster`; `setting-out-of-range`; `no-such-point` when the corner lacks the point or the link
 * @source definition; slotted bolt: own derivation: docs/methods/adjusters.md
 * @example displacementOf(upperFront, corner, deg(30)).body // { upperFrontInner: [0, 0.0035, 0] }
 */
export function displacementOf(adjuster: Adjuster, points: AnyCornerPoints, setting: number): Displacement {
  checkAdjuster(adjuster)
  return displacementByStroke(adjuster, points, strokeOf(adjuster, setting))
}
