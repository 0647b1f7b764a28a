import type { Corner } from '../corner/index.ts'
import { checkJoint } from '../fasten/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Spec } from './spec-schema.ts'
import { tighteningJoint } from './tightening-joint.ts'

/** What the fasten room says of one value of a sheet. @source definition */
export interface TypedValueDoubt {
  readonly joint: string
  /** Refused: it cannot be meant; else a warning to read it again. */
  readonly refused: boolean
  readonly sentence: string
  readonly remedy: string
}

/**
 * The values of a sheet held against thread, class and kind of their joints, before anybody picks up a wrench. It
 * judges and never offers another value.
 *
 * @returns in the sheet's order; empty when nothing speaks against them
 * @source own derivation: docs/methods/bolt-book.md
 */
export function typedValueDoubts(spec: Spec, corner: Corner): readonly TypedValueDoubt[] {
  return Object.entries(spec.tightening?.[corner.axle] ?? {}).flatMap(
    ([joint, tightening]): TypedValueDoubt[] => {
      if (!Object.hasOwn(corner.joints, joint)) return []
      try {
        return checkJoint(tighteningJoint(corner, joint, tightening)).map((sentence) => ({
          joint,
          refused: false,
          sentence,
          remedy: 'Read value, unit and thread again in your own information.',
        }))
      } catch (refusal) {
        if (!(refusal instanceof Refusal)) throw refusal
        return [{ joint, refused: true, sentence: refusal.sentence, remedy: refusal.remedy }]
      }
    },
  )
}
