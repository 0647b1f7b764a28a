import type { Need } from './action.ts'
import type { PartNode } from './assembly.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/** A piece of several parts goes in as one when what joins them on the bench is done up. */
export function joinedOnBench(work: Work, piece: readonly PartNode[]): readonly Need[] {
  const ids = piece.map(({ id }) => id)
  const within = piece
    .flatMap(({ id }) => jointsOf(work.assembly, id))
    .filter((joint) => work.bench.has(joint.id) && joint.joins.every((one) => ids.includes(one)))
  return [...new Set(within.map(({ id }) => id))].map((id) => ({
    key: keys.joint(id),
    is: ['run up', 'final', 'checked'],
    why: 'else a part of it stays behind on the bench',
  }))
}
