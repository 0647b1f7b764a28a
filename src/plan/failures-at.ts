import type { Assembly } from './assembly.ts'
import type { FailureKind } from './failure.ts'
import { failureMisfit } from './failure-misfit.ts'

const kinds: readonly FailureKind[] = [
  'seized sleeve',
  'snapped stud',
  'stripped thread',
  'rounded head',
  'taper will not part',
  'stud spins',
  'split boot',
  'hole not round',
  'damage found',
]
const nothing: ReadonlySet<string> = new Set()

/**
 * What can go wrong at a joint of its kind; nothing at a joint that the vehicle has not.
 *
 * @source common practice, no source
 */
export const failuresAt = (assembly: Assembly, joint: string): readonly FailureKind[] =>
  kinds.filter((what) => failureMisfit(assembly, { what, joint }, nothing) === null)
