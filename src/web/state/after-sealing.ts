import type { Edit } from './messages.ts'

/**
 * The edits once some were sealed: what of them stays a draft, then what was typed meanwhile. A field that was typed on
 * while it was sealed keeps its newer text.
 *
 * @param now edits as they stand, beginning as those that were sent did
 */
export function afterSealing(
  now: readonly Edit[],
  sent: readonly Edit[],
  rest: readonly Edit[],
): readonly Edit[] {
  const same = now.findIndex((edit, i) => edit !== sent[i])
  return [...rest, ...(same < 0 ? [] : now.slice(same))]
}
