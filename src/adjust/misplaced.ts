import { Refusal } from '../quantity/index.ts'
import type { Adjuster, AdjustRefusal } from './adjuster.ts'

/** An adjuster in the wrong set. */
export const misplaced = (adjuster: Adjuster, atWheel: boolean): Refusal<AdjustRefusal> =>
  new Refusal<AdjustRefusal>({
    code: 'wrong-place',
    at: adjuster.id,
    given: adjuster.kind,
    sentence: atWheel
      ? `"${adjuster.name}" sits at one wheel, but is named among what acts on both.`
      : `"${adjuster.name}" acts on both wheels, but is named at one of them.`,
    remedy: atWheel ? 'Name it at the left or at the right wheel.' : 'Name it among what both wheels share.',
  })
