import type { Assembly, JointNode } from './assembly.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { jointsOf } from './joints-of.ts'

/**
 * What must part for a seat within a strut to be open: itself, and for the seat on the strut the other as well, for
 * the spring leaves its strut only at that end. None for a seat that is not within a strut.
 *
 * @returns ids of joints, undone on the bench
 * @source common practice, no source
 */
export function seatsInStrut(assembly: Assembly, seat: JointNode): readonly string[] {
  const spring = seat.kind === 'seat' ? seat.joins.find((part) => assembly.holds[part]) : undefined
  if (!spring || !isStrutSpring(assembly, assembly.holds[spring]!)) return []
  const isOnStrut = seat.joins.some((part) => assembly.parts[part]!.kind === 'strut')
  return jointsOf(assembly, spring)
    .filter(({ id, kind }) => id === seat.id || (isOnStrut && kind === 'seat'))
    .map(({ id }) => id)
}
