import type { Need } from './action.ts'
import type { PartNode } from './assembly.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/** A coil goes in while its arm is down and what it stands between is there. @source common practice, no source */
export function looseFitNeeds(work: Work, spring: PartNode): readonly Need[] {
  const { assembly } = work
  const ends: readonly string[] = spring.file.kind === 'spring' ? spring.file.between : []
  const stands = jointsOf(assembly, spring.id)
    .flatMap(({ joins }) => joins)
    .filter((part) => part !== spring.id && ends.includes(assembly.parts[part]!.name))
  return [
    ...(work.standIns[spring.id] === 'jack under the arm' ? assembly.holds[spring.id]!.jackPath : [])
      .filter((joint) => work.open.has(joint))
      .map((joint) => ({
        key: keys.joint(joint),
        is: ['run up', 'final', 'checked'],
        why: 'its arm hangs on its pivots again',
        custom: true as const,
      })),
    ...stands
      .filter((part) => assembly.parts[part]!.kind !== 'body')
      .map((part) => ({ key: keys.part(part), is: ['fitted', 'new'], why: 'it stands on it' })),
    {
      key: keys.energy(spring.id),
      is: ['let down', 'in the compressor'],
      why: 'it goes in slack or captured',
      rule: 'I3' as const,
    },
  ]
}
