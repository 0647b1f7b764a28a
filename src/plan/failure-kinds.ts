import type { FailureKind } from './failure.ts'

/** All that can go wrong and has a branch of its own, in the order in which it is offered. @source common practice, no source */
export const failureKinds: readonly FailureKind[] = [
  'seized sleeve',
  'snapped stud',
  'stripped thread',
  'rounded head',
  'taper will not part',
  'stud spins',
  'split boot',
  'hole not round',
  'damage found',
  'wrong part in the box',
]
