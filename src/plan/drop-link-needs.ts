import type { Need } from './action.ts'
import type { HoldNode } from './assembly.ts'
import { dropLinkJoints } from './drop-link-joints.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/**
 * The anti-roll link of a side is off before that side's arm moves far: of its joints, the ones that this work opens.
 *
 * @source common practice, no source
 */
export function dropLinkNeeds(work: Work, hold: Pick<HoldNode, 'axle' | 'side'>): readonly Need[] {
  // With the other side's link off too the bar is free anyway: then it is only tidy.
  const other = hold.side === 'left' ? 'right' : 'left'
  const bothOff =
    hold.side && dropLinkJoints(work.assembly, { ...hold, side: other }).some((id) => work.open.has(id))
  return dropLinkJoints(work.assembly, hold)
    .filter((joint) => work.open.has(joint))
    .slice(0, 1)
    .map((joint) => ({
      key: keys.joint(joint),
      is: ['open'],
      why: 'the bar would twist and spring back',
      rule: 'I10',
      ...(bothOff ? { custom: true as const } : {}),
    }))
}
