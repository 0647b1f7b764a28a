import type { Edit } from './messages.ts'
import type { RoundHow } from './with-how.ts'

/** The boxes of the round that is being read, as they stand: none is ticked when a round is opened or taken. */
export function howOf(edits: readonly Edit[]): RoundHow {
  const last = edits.findLast(({ kind }) => kind === 'how' || kind === 'turned' || kind === 'taken')
  if (last?.kind === 'how') return { settled: last.settled, proving: last.proving }
  return { settled: false, proving: last?.kind === 'turned' && last.proving === true }
}
