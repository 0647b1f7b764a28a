import type { Metre } from '../quantity/index.ts'
import type { Mechanism } from './mechanism.ts'
import type { Pose } from './pose.ts'
import { poseAt } from './pose-at.ts'

/**
 * Poses over travel at one rack position.
 *
 * @throws {Refusal} `not-finite`; `unreachable`; `degenerate`, as `poseAt`
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export const motionCurve = (
  m: Mechanism,
  { travels, rack }: { readonly travels: readonly Metre[]; readonly rack: Metre },
): readonly Pose[] => travels.map((travel) => poseAt(m, { travel, rack }))
