import type { Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import { flexibleParts } from './flexible-parts.ts'
import { keys } from './keys.ts'
import { shaftFreedBy } from './shaft-freed-by.ts'
import type { Work } from './work.ts'

/**
 * What must be free before a joint that says where the knuckle is comes open: hose brackets, leads, a height-sensor rod.
 * Of the ways to free each, the one that this work takes.
 *
 * @source common practice, no source
 */
export function looseKnuckleNeeds(
  work: Work,
  joint: Pick<JointNode, 'id' | 'axle' | 'side'>,
): readonly Need[] {
  const isUndone = (id: string) => work.open.has(id) || work.bench.has(id)
  const shaft = shaftFreedBy(work, joint)
  const shaftFree: readonly Need[] =
    shaft && shaft !== joint.id
      ? [
          {
            key: keys.joint(shaft),
            is: ['open'],
            why: 'the shaft would be drawn beyond its joint',
            rule: 'I14',
          },
        ]
      : []
  const flexible = flexibleParts(work.assembly, joint).flatMap(({ part, freedBy }) => {
    const way = freedBy.find((set) => set.every(isUndone))
    if (way?.includes(joint.id)) return []
    return (way ?? []).map((id) => ({
      key: keys.joint(id),
      is: ['open'],
      why: `the knuckle moves further than the ${part.called} reaches`,
      rule: 'I6' as const,
    }))
  })
  return [...flexible, ...shaftFree]
}
