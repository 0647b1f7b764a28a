import type { Edit } from './messages.ts'

/** Edits with one more typing. Typing on in the same field goes on with the same edit, so that undo takes back a field, not a letter. */
export function withTyped(
  edits: readonly Edit[],
  kind: 'typed' | 'again',
  { entry, path, label }: { readonly entry: number; readonly path: string; readonly label: string },
  text: string,
): readonly Edit[] {
  const last = edits[edits.length - 1]
  const goesOn = last?.kind === kind && last.entry === entry && last.path === path
  return [...(goesOn ? edits.slice(0, -1) : edits), { kind, entry, path, label, text }]
}
