import type { Metre } from '../quantity/index.ts'
import type { Mechanism } from './mechanism.ts'
import type { Pose } from './pose.ts'
import { poseAt } from './pose-at.ts'

/**
 * Poses over the rack at one wheel height.
 *
 * @throws {Refusal} `not-finite`; `unreachable`; `degenerate`, as `poseAt`
 * @source own derivation: docs/methods/pose-of-a-corner.md
 */
export const steerCurve = (
  m: Mechanism,
  { racks, travel }: { readonly racks: readonly Metre[]; readonly travel: Metre },
): readonly Pose[] => racks.map((rack) => poseAt(m, { travel, rack }))
