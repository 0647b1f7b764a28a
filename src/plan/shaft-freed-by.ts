import type { JointNode } from './assembly.ts'
import { jointsOf } from './joints-of.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'

/**
 * The joint that this work opens to free the drive shaft of a corner, the axle nut before others; null where the
 * shaft stays connected or there is none.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function shaftFreedBy(work: Work, beside: Pick<JointNode, 'axle' | 'side'>): string | null {
  const { parts } = work.assembly
  const shafts = Object.values(parts).filter(
    (part) => part.kind === 'drive shaft' && whereOf(part) === whereOf(beside),
  )
  const open = shafts
    .flatMap(({ id }) => jointsOf(work.assembly, id))
    .filter(({ id }) => work.open.has(id))
    .sort((a, b) => Number(b.kind === 'axle nut') - Number(a.kind === 'axle nut'))
  return open[0]?.id ?? null
}
