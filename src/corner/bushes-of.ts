import type { NewtonMetrePerRadian } from '../quantity/index.ts'
import type { Corner } from './corner-schema.ts'
import { jointLetters } from './joint-letters.ts'
import { familyOf } from './layouts.ts'
import { pointNames } from './point-names.ts'

/** A rubber bush of a corner, and the bolt that clamps it. @source definition */
export interface Bush {
  /** The joint's name in the file. */
  readonly joint: string
  readonly name: string
  /** Its letter on the drawing. */
  readonly letter: string
  /** The pivot, by the linkage room's name: lowerFrontInner … */
  readonly pivot: string
  /** The part that turns: "lower-arm". */
  readonly part: string
  /** Bonded rubber is a spring in rotation; one that slips is not. */
  readonly bonded: boolean
  /** Torsional stiffness; null where the file gives none. */
  readonly stiffness: NewtonMetrePerRadian | null
  /** Relative standard uncertainty of the stiffness; null where none is given. */
  readonly stiffnessSpread: number | null
  /** The position in which its bolt is final, as the file says; null where it says nothing. */
  readonly final: string | null
  /** The adjuster on the same bolt, or null. */
  readonly adjuster: string | null
}

/**
 * The bushes of a corner model.
 *
 * @source definition
 */
export function bushesOf(corner: Corner): readonly Bush[] {
  const names = pointNames[familyOf(corner.layout)]
  const letters = jointLetters(corner)
  return Object.entries(corner.joints).flatMap(([id, joint]): Bush[] => {
    if (!joint.bush || joint.at === undefined) return []
    const turning = joint.joins.find((part) => !['body', 'sub-frame'].includes(corner.parts[part]!.kind))
    return [
      {
        joint: id,
        name: joint.name ?? id.replaceAll('-', ' '),
        letter: letters[id] ?? '',
        pivot: names[joint.at] ?? joint.at,
        part: turning ?? joint.joins[0],
        bonded: joint.bush.bonded,
        stiffness: joint.bush.stiffness ?? null,
        stiffnessSpread: joint.bush.stiffnessSpread ?? null,
        final: joint.final ?? null,
        adjuster: joint.adjuster ?? null,
      },
    ]
  })
}
