import { type Metre, metre } from '../quantity/index.ts'
import { checkDrive } from './check-drive.ts'
import { checkFinite } from './check-points.ts'
import { follow } from './follow.ts'
import { hingeRange } from './hinge-pose.ts'
import type { Mechanism } from './mechanism.ts'
import { followTo } from './pose-at.ts'
import { unreachable } from './unreachable.ts'

/**
 * How far the wheel can go up and down at a rack position: the first turning points of travel along the design
 * branch. No bump stops, joints unlimited.
 *
 * @returns up ≥ 0 and down ≤ 0, m against the design height
 * @throws {Refusal} `not-finite`; `unreachable` when the rack position itself is past its end at travel 0
 * @source own derivation: docs/methods/travel-limits.md
 * @example inMillimetres(travelRange(m, { rack: mm(0) }).up) // 287.736
 */
export function travelRange(m: Mechanism, { rack }: { readonly rack: Metre }): { up: Metre; down: Metre } {
  checkFinite({ rack }, '')
  checkDrive({ rack })
  if (m.points.layout === 'semi-trailing arm') return hingeRange(m)
  const drive = { travel: metre(0), rack }
  const start = followTo(m, drive)
  if (!start.arrived) throw unreachable(m, drive, start)
  const end = (rate: 1 | -1): Metre => {
    const way = { travel: [0, rate], rack: [rack, 0], form: [m.form, null], worth: 1 } as const
    return metre(rate * follow(m, way, start.state, Number.POSITIVE_INFINITY).share)
  }
  return { up: end(1), down: end(-1) }
}
