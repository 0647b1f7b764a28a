import type { Assembly, PartNode } from './assembly.ts'
import { jointsOf } from './joints-of.ts'

const always: readonly PartNode['kind'][] = [
  'rack',
  'steering box',
  'drop arm',
  'idler arm',
  'centre link',
  'steering shaft',
]
const carries: readonly PartNode['kind'][] = ['rod', 'ball joint']

/**
 * Whether a part belongs to the steering: rack, box, drop arm, centre link, shaft, and the rods and their ends that go
 * to one of them or from knuckle to knuckle.
 *
 * @source definition
 */
export function isSteeringPart(
  assembly: Pick<Assembly, 'parts' | 'joints' | 'touching'>,
  id: string,
): boolean {
  const kindOf = (part: string) => assembly.parts[part]!.kind
  if (always.includes(kindOf(id))) return true
  if (!carries.includes(kindOf(id))) return false
  const chain = [id]
  const ends = new Set<string>()
  for (const part of chain)
    for (const { joins } of jointsOf(assembly, part))
      for (const other of joins) {
        if (chain.includes(other)) continue
        if (carries.includes(kindOf(other))) chain.push(other)
        else ends.add(other)
      }
  const knuckles = [...ends].filter((part) => kindOf(part) === 'knuckle')
  return knuckles.length > 1 || [...ends].some((part) => always.includes(kindOf(part)))
}
