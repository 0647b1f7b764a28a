import type { SealedEntry } from '../job/index.ts'
import type { SpoiltLine } from './log-store.ts'
import type { LogPiece } from './read-log.ts'

/** A log as far as it was read. @source definition */
export interface LogSoFar {
  /** Bytes and number of its whole lines, and what they hold. */
  readonly whole: number
  readonly lines: number
  readonly entries: readonly SealedEntry[]
  readonly ids: ReadonlySet<string>
  readonly spoilt: readonly SpoiltLine[]
  readonly tail: LogPiece['tail']
  /** A last entry that lacks only the end of its line. */
  readonly last: SealedEntry | null
}

/**
 * A log with one more piece read behind what was read of it before.
 *
 * @source own derivation: docs/methods/record.md
 */
export function logSoFar(base: LogSoFar | null, piece: LogPiece): LogSoFar {
  const isOpen = piece.tail === 'lacks its end'
  const settled = isOpen ? piece.entries.slice(0, -1) : piece.entries
  const entries = [...(base?.entries ?? [])]
  const ids = new Set(base?.ids)
  const spoilt = [...(base?.spoilt ?? []), ...piece.spoilt]
  for (const { line, entry } of settled) {
    const first = entries[0] ?? entry
    if (ids.has(entry.id)) spoilt.push({ line, sentence: 'It stands here a second time.' })
    else if (entry.workshop !== first.workshop || entry.job !== first.job)
      spoilt.push({ line, sentence: 'It belongs to another job, or to another workshop.' })
    else {
      ids.add(entry.id)
      entries.push(entry)
    }
  }
  return {
    whole: (base?.whole ?? 0) + piece.whole,
    lines: (base?.lines ?? 0) + piece.lines,
    entries,
    ids,
    spoilt: spoilt.sort((a, b) => a.line - b.line),
    tail: piece.tail,
    last: isOpen ? piece.entries.at(-1)!.entry : null,
  }
}
