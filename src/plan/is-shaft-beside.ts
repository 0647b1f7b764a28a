import type { JointNode, PartNode } from './assembly.ts'
import { whereOf } from './where-of.ts'

/**
 * Whether a drive shaft limits how far the knuckle may swing once a joint is open: the shaft of the joint's corner;
 * beside a joint of the whole axle, each shaft whose reach is known.
 *
 * @source own derivation: docs/methods/plan.md
 */
export const isShaftBeside = (shaft: PartNode, joint: Pick<JointNode, 'axle' | 'side'>): boolean =>
  joint.side === null
    ? shaft.axle === joint.axle &&
      shaft.side !== null &&
      'reach' in shaft.file &&
      shaft.file.reach !== undefined
    : whereOf(shaft) === whereOf(joint)
