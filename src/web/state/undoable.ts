import type { Edit, LastSealed } from './messages.ts'

/** What undo would take back. */
export interface Undoable {
  readonly label: string
  readonly wheel: string | null
  readonly joint: string | null
}

/** The last draft; where there is none, what was sealed last. */
export function undoableOf(edits: readonly Edit[], sealed: LastSealed | null): Undoable | null {
  const edit = edits[edits.length - 1]
  if (!edit) return sealed
  const [wheel, joint] = edit.kind === 'done' ? [edit.wheel, edit.joint] : [null, null]
  return { label: wordsOf(edit), wheel, joint }
}

function wordsOf(edit: Edit): string {
  if (edit.kind === 'turned') return edit.moves.length > 0 ? 'moves turned' : 'reading again'
  if (edit.kind === 'taken') return 'round taken'
  return edit.kind === 'how' ? 'box ticked' : edit.label
}
