import type { Edit } from './messages.ts'

/** How the round that is being read is read. */
export interface RoundHow {
  readonly settled: boolean
  readonly proving: boolean
}

/** Edits with the boxes of the round ticked anew. Ticking on goes on with the same edit. */
export function withHow(edits: readonly Edit[], how: RoundHow): readonly Edit[] {
  const goesOn = edits[edits.length - 1]?.kind === 'how'
  return [...(goesOn ? edits.slice(0, -1) : edits), { kind: 'how', ...how }]
}
