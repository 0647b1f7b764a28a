import { type Metre, metre, Refusal } from '../quantity/index.ts'
import { checkDrive } from './check-drive.ts'
import { checkFinite } from './check-points.ts'
import { follow } from './follow.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import { followTo } from './pose-at.ts'
import { unreachable } from './unreachable.ts'

/**
 * How far the rack can push and pull at a wheel height: the first turning points of rack along the design branch.
 * No steering stops, joints unlimited.
 *
 * @returns left ≥ 0 and right ≤ 0, m from the design position
 * @throws {Refusal} `not-finite`; `not-for-this-layout` when no link is moved by the rack; `unreachable` when the
 *   travel itself is past its end at rack 0
 * @source own derivation: docs/methods/travel-limits.md
 * @example inMillimetres(rackRange(m, { travel: mm(0) }).right) // -126.861
 */
export function rackRange(
  m: Mechanism,
  { travel }: { readonly travel: Metre },
): { left: Metre; right: Metre } {
  checkFinite({ travel }, '')
  checkDrive({ travel })
  if (m.facts.rackLeg < 0)
    throw new Refusal<LinkageRefusal>({
      code: 'not-for-this-layout',
      at: 'links',
      sentence: 'No link of this corner is moved by the rack, so the rack has no range.',
      remedy: 'Mark the steered link, or ask only for the travel.',
    })
  const drive = { travel, rack: metre(0) }
  const start = followTo(m, drive)
  if (!start.arrived) throw unreachable(m, drive, start)
  const end = (rate: 1 | -1): Metre => {
    const way = { travel: [travel, 0], rack: [0, rate], form: [m.form, null], worth: 1 } as const
    return metre(rate * follow(m, way, start.state, Number.POSITIVE_INFINITY).share)
  }
  return { left: end(1), right: end(-1) }
}
