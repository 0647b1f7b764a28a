import type { SheetInput } from '../../sheet/index.ts'
import type { Edit } from './messages.ts'

/** Edits with one more typing. Typing on in the same field goes on with the same edit, so that undo takes back a field, not a letter. */
export function withTyped(edits: readonly Edit[], input: SheetInput, text: string): readonly Edit[] {
  const { entry, path, label } = input
  const last = edits[edits.length - 1]
  const goesOn = last?.kind === 'typed' && last.entry === entry && last.path === path
  return [...(goesOn ? edits.slice(0, -1) : edits), { kind: 'typed', entry, path, label, text }]
}
