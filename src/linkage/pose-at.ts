import type { Metre } from '../quantity/index.ts'
import { checkDrive } from './check-drive.ts'
import { checkFinite } from './check-points.ts'
import { type Followed, follow } from './follow.ts'
import { hingeState } from './hinge-pose.ts'
import type { Mechanism } from './mechanism.ts'
import { formSize } from './numeric-form.ts'
import type { Drive } from './points.ts'
import type { Pose } from './pose.ts'
import { poseOfState } from './pose-of-state.ts'
import { unreachable } from './unreachable.ts'
import type { Way } from './walk.ts'

/** Ways shorter than this are measured in it, so that no way is too short to divide by, m. */
const leastWorth = 1e-6

/**
 * The pose of a corner at a travel and rack: followed without a jump from the design pose, along the straight
 * way in travel, rack and displacement, so the branch is kept. A trailing arm has a closed form and takes no rack.
 *
 * @throws {Refusal} `not-finite`; `bad-input`; `unreachable` past the fold; `degenerate` when the wheel would lie flat
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example inDegrees(poseAt(m, { travel: mm(60), rack: mm(0) }).camber) // -2.68643
 */
export function poseAt(m: Mechanism, drive: Drive): Pose {
  const { travel, rack } = checkedDrive(drive)
  const found = followTo(m, { travel, rack })
  if (!found.arrived) throw unreachable(m, { travel, rack }, found)
  return poseOfState(m, found.state, { travel, rack })
}

/** Travel and rack are finite numbers. */
export function checkedDrive({ travel, rack }: Drive): { travel: Metre; rack: Metre } {
  checkFinite({ travel, rack }, '')
  checkDrive({ travel, rack })
  return { travel, rack }
}

/** Follows from the design pose to a drive and the mechanism's displacement. */
export function followTo(m: Mechanism, { travel, rack }: Drive): Followed {
  if (travel === 0 && (rack === 0 || isHinged(m)) && !isDisplaced(m))
    return { arrived: true, share: 0, state: designState(m) }
  if (isHinged(m)) {
    const state = hingeState(m, m.form, m.home[2] + travel)
    return { arrived: state !== null, share: state ? 1 : 0, state: state ?? designState(m) }
  }
  return follow(m, wayTo(m, { travel, rack }), designState(m), 1)
}

/** Whether the knuckle is the arm itself. */
const isHinged = (m: Mechanism): boolean => m.points.layout === 'semi-trailing arm'

/** State of the design pose. */
export const designState = (m: Mechanism): Float64Array => Float64Array.of(...m.home, 1, 0, 0, 0)

/** Whether any number of the form differs from the design. */
const isDisplaced = (m: Mechanism): boolean => m.form.some((x, i) => x !== m.design[i])

function wayTo(m: Mechanism, { travel, rack }: Drive): Way {
  let rate: Float64Array | null = null
  let largest = 0
  if (isDisplaced(m)) {
    rate = new Float64Array(formSize)
    for (let i = 0; i < formSize; i++) {
      rate[i] = m.form[i]! - m.design[i]!
      largest = Math.max(largest, Math.abs(rate[i]!))
    }
  }
  return {
    travel: [0, travel],
    rack: [0, rack],
    form: [m.design, rate],
    worth: Math.max(leastWorth, Math.hypot(travel, rack, largest)),
  }
}
