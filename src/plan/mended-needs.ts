import type { Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/**
 * What must be so before a joint that failed is closed: what was lost is mended, what stays was looked at.
 *
 * @source common practice, no source
 */
export function mendedNeeds(work: Work, joint: JointNode): readonly Need[] {
  const own = work.branches.filter((one) => one.joint?.id === joint.id)
  const isMended = own.some(({ mended }) => mended && !work.renewed.has(mended.part))
  return [
    ...(isMended ? [{ key: keys.mending(joint.id), is: ['mended'], why: 'what was lost there is new' }] : []),
    ...(own.some(({ look }) => look)
      ? [{ key: keys.look(joint.id), is: ['sound'], why: 'what it sat in was looked at' }]
      : []),
  ]
}
