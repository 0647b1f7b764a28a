import type { Assembly } from './assembly.ts'
import type { FailureKind } from './failure.ts'
import { failureKinds } from './failure-kinds.ts'
import { failureMisfit } from './failure-misfit.ts'

const nothing: ReadonlySet<string> = new Set()

/**
 * What can go wrong at a joint of its kind; nothing at a joint that the vehicle has not.
 *
 * @source common practice, no source
 */
export const failuresAt = (assembly: Assembly, joint: string): readonly FailureKind[] =>
  failureKinds.filter((what) => failureMisfit(assembly, { what, joint }, nothing) === null)
