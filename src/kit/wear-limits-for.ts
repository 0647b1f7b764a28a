import type { Metre } from '../quantity/index.ts'
import type { Spec } from '../spec/index.ts'
import type { Kit } from './kit-schema.ts'

/** A limit of wear and whose it is. @source definition */
export interface WearLimit {
  readonly what: string
  readonly limit: Metre
  /** As typed. */
  readonly text: string
  readonly whose: 'the workshop' | 'the maker' | 'the inspection' | 'not said'
  readonly jurisdiction: string | null
  readonly source: string
}

const order: readonly WearLimit['whose'][] = ['the workshop', 'the maker', 'the inspection', 'not said']

/**
 * The limits of wear that a workshop typed for a joint, its own first: those of the kit and of the spec sheet,
 * then the maker's, then an inspection's. None is computed, and the first is the one to judge by.
 *
 * @param kind the joint's kind in the corner model
 * @returns empty where nobody typed one
 * @source definition
 */
export function wearLimitsFor({
  spec,
  kit,
  axle,
  joint,
  kind,
}: {
  readonly spec: Spec | null
  readonly kit: Kit | null
  readonly axle: 'front' | 'rear'
  readonly joint: string
  readonly kind: string
}): readonly WearLimit[] {
  const own = (kit?.thresholds?.wear ?? [])
    .filter(({ jointKind }) => jointKind === kind)
    .map(
      ({ what, limit, source }): WearLimit => ({
        what,
        limit: limit.value,
        text: limit.text,
        whose: 'the workshop',
        jurisdiction: null,
        source,
      }),
    )
  const typed = (spec?.wear ?? [])
    .filter((wear) => wear.joint === joint && (wear.axle === undefined || wear.axle === axle))
    .map(
      ({ what, limit, whose, jurisdiction, source }): WearLimit => ({
        what,
        limit: limit.value,
        text: limit.text,
        whose: whose ?? 'not said',
        jurisdiction,
        source,
      }),
    )
  // Sorting keeps the order of what stands equal.
  return [...own, ...typed].sort((a, b) => order.indexOf(a.whose) - order.indexOf(b.whose))
}
