import type { Mechanism } from './mechanism.ts'
import { newtonKernel, newtonSettle, rackInner } from './newton-kernel.ts'
import type { Drive } from './points.ts'
import type { Pose } from './pose.ts'
import { checkedDrive, poseAt } from './pose-at.ts'
import { poseOfState } from './pose-of-state.ts'
import { stateOf } from './rates-at.ts'

/**
 * The pose close to a known one: Newton on the five constraints from there, height substituted. For sliders.
 * When it would have to jump it is left to `poseAt`, which follows from the design pose.
 *
 * @param from a pose of the same or of a slightly different mechanism
 * @throws {Refusal} `not-finite`; `unreachable`; `degenerate`, as `poseAt`
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example inDegrees(newtonPose(m, { travel: mm(10), rack: mm(0) }, from).toe) // 0.0057334
 */
export function newtonPose(m: Mechanism, drive: Drive, from: Pose): Pose {
  if (m.points.layout === 'semi-trailing arm') return poseAt(m, drive)
  const { travel, rack } = checkedDrive(drive)
  const state = stateOf(m, { ...from, travel })
  const kernel = newtonKernel(m)
  return newtonSettle(kernel, state, rackInner(kernel) + rack)
    ? poseOfState(m, state, { travel, rack })
    : poseAt(m, drive)
}
