import type { Assembly } from './assembly.ts'
import { jointsOf } from './joints-of.ts'

/**
 * Whether a lead belongs to something with a warning lamp: a cable that is set by its thread has none.
 *
 * @source own derivation: docs/methods/plan.md
 */
export const hasLamp = (assembly: Assembly, part: string): boolean =>
  assembly.parts[part]!.kind === 'lead' &&
  !jointsOf(assembly, part).some(({ kind }) => kind === 'thread and lock nut')
