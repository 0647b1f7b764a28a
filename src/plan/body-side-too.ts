import type { JointNode } from './assembly.ts'
import type { Work } from './work.ts'

/**
 * Whether a joint is marked on the body side too: its mark goes with a part that comes new, or with a bolt that does.
 *
 * @source common practice, no source
 */
export const bodySideToo = (work: Work, joint: JointNode): boolean =>
  joint.joins.some((part) => work.renewed.has(part)) ||
  work.branches.some((one) => one.fastener && one.joint?.id === joint.id)
