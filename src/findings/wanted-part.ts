import type { Corner } from '../corner/index.ts'
import type { Suspect } from './suspect.ts'

/** The part that would have to be got if a suspect were the cause. @source definition */
export interface WantedPart {
  /** By its id in the corner model, or "bush of" and the joint. */
  readonly part: string
  /** Whether it is renewed on both sides together. */
  readonly inPairs: boolean
}

/**
 * The part that mends a suspect; null where no part does: an adjuster, a mounting that stands elsewhere, a bush that
 * was clamped hanging, a fault of measuring.
 *
 * @source common practice, no source; springs in pairs: common practice, no source
 */
export function wantedPart({ kind, at }: Suspect, corner: Corner): WantedPart | null {
  const ofKind = (...kinds: readonly string[]): string | undefined =>
    kinds
      .map((one) => Object.entries(corner.parts).find(([, part]) => part.kind === one)?.[0])
      .find((id) => id !== undefined)
  const named = (...ids: readonly string[]): string | undefined => ids.find((id) => id in corner.parts)
  const one = (part: string | undefined | null): WantedPart | null => (part ? { part, inPairs: false } : null)
  switch (kind) {
    case 'bent lower arm':
      return one(named('lower-arm', 'trailing-arm') ?? ofKind('arm'))
    case 'bent upper arm':
      return one(named('upper-arm'))
    case 'bent link':
    case 'wrong part':
      return one(at)
    case 'bent knuckle':
      return one(named('knuckle') ?? ofKind('knuckle'))
    case 'bent strut tube':
      return one(ofKind('strut'))
    case 'bent steering arm or tie rod':
      return one(named('tie-rod'))
    case 'bent axle or beam':
      return one(ofKind('axle beam'))
    case 'sagged spring': {
      const spring = ofKind('spring')
      return spring ? { part: spring, inPairs: true } : null
    }
    case 'collapsed bush':
      return at === null ? null : { part: `bush of ${at}`, inPairs: false }
    case 'worn ball joint':
      return one(jointPart(corner, at))
    case 'worn kingpin':
      return one(ofKind('kingpin'))
    case 'loose wheel bearing':
      return one(ofKind('bearing', 'hub'))
    default:
      return null
  }
}

/** The ball joint at a joint, or the arm or rod that it is one piece with. */
function jointPart(corner: Corner, at: string | null): string | undefined {
  const joins = at === null ? undefined : corner.joints[at]?.joins
  return joins?.find((id) => corner.parts[id]?.kind === 'ball joint') ?? joins?.[0]
}
