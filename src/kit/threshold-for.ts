import type { Spec } from '../spec/index.ts'
import type { Kit } from './kit-schema.ts'

/**
 * How probable "inside" must be for this vehicle in this workshop: the sheet's where it asks for more than the kit.
 *
 * @returns share of 1 and as typed; null where neither says, so that the caller's own default counts
 * @source definition
 */
export function thresholdFor({
  spec,
  kit,
}: {
  readonly spec: Spec | null
  readonly kit: Kit | null
}): { readonly value: number; readonly text: string } | null {
  const said = [spec?.thresholds?.inside, kit?.thresholds?.inside].filter((share) => share !== undefined)
  return said.sort((a, b) => b.value - a.value)[0] ?? null
}
