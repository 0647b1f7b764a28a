import type { Need } from './action.ts'
import { agrees } from './agrees.ts'
import type { JointNode } from './assembly.ts'
import { jointHabits } from './joint-habits.ts'
import { keys } from './keys.ts'
import { nodeNamed } from './node-named.ts'
import { supports } from './supports.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'

/**
 * What must be so before a joint can be reached, from its access conditions; mirrored on the right side.
 *
 * @param wheelOn the wheel stays on, so what asks for it off does not count
 * @source own derivation: docs/methods/plan.md
 */
export function accessNeeds(work: Work, joint: JointNode, wheelOn = false): readonly Need[] {
  const { assembly } = work
  const onBench = work.bench.has(joint.id)
  const found: Need[] = []
  const where = whereOf(joint)
  for (const access of joint.file.access ?? []) {
    const why = access.why ?? `the ${joint.called} ${agrees(joint.called, 'is', 'are')} not reached before`
    if (access.partOff) {
      const part = nodeNamed(assembly.parts, joint, access.partOff)
      if (part && !(wheelOn && part.kind === 'wheel'))
        found.push({ key: keys.part(part.id), is: ['off', 'hung', 'freed'], why })
    }
    if (access.jointOpen) {
      const other = nodeNamed(assembly.joints, joint, access.jointOpen)
      if (other) found.push({ key: keys.joint(other.id), is: ['open', 'started'], why })
    }
    if (onBench) continue
    if (access.steering) found.push({ key: keys.steering, is: [mirrored(access.steering, joint)], why })
    if (wheelOn) continue
    // Where a nut is cracked and finished says its kind; in between it is undone lifted.
    if (access.station && !(access.station === 'ground' && jointHabits[joint.kind].cracked))
      found.push(...stationNeeds(access.station, joint.axle, where, why))
    if (access.arm)
      found.push({
        key: keys.arm(where),
        is: access.arm === 'raised' ? ['jack under', 'raised to ride height'] : ['free', 'let down'],
        why,
      })
  }
  return found
}

function mirrored(lock: 'left lock' | 'right lock' | 'straight', { side }: JointNode): string {
  if (side !== 'right' || lock === 'straight') return lock
  return lock === 'left lock' ? 'right lock' : 'left lock'
}

function stationNeeds(
  station: 'ground' | 'hanging' | 'under the arm' | 'ride',
  axle: string,
  where: string,
  why: string,
): readonly Need[] {
  switch (station) {
    case 'ground':
      return [{ key: keys.support(axle), is: supports.onWheels, why }]
    case 'hanging':
      return [
        { key: keys.support(axle), is: supports.lifted, why },
        { key: keys.arm(where), is: ['free', 'let down'], why },
      ]
    case 'under the arm':
      return [{ key: keys.arm(where), is: ['jack under'], why }]
    case 'ride':
      return [{ key: keys.arm(where), is: ['raised to ride height'], why }]
  }
}
