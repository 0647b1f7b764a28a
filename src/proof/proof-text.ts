import { canonicalText } from './canonical-text.ts'
import type { Proof } from './proof.ts'

/**
 * The one spelling of a proof: canonical JSON, but with each entry and snapshot on a line of its own, so that what is
 * broken can be found at its line. One of a newer version is written as it was read.
 *
 * @throws {Refusal} `not-json`
 * @source own derivation: docs/methods/record.md
 */
export function proofText({
  head,
  entries,
  private: values = [],
  snapshots,
  workshop,
  beyond,
}: Proof): string {
  if (beyond) return beyond.text
  const list = (name: string, items: readonly unknown[]) =>
    `"${name}":[\n${items.map(canonicalText).join(',\n')}${items.length > 0 ? '\n' : ''}]`
  const parts = [
    list('entries', entries),
    `"head":${canonicalText(head)}`,
    ...(values.length > 0 ? [list('private', values)] : []),
    list('snapshots', snapshots),
    list('workshop', workshop),
  ]
  return `{${parts.join(',\n')}}\n`
}
