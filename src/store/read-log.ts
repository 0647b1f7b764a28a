import type { SealedEntry } from '../job/index.ts'
import { isItself, readSealedLine } from '../proof/index.ts'
import type { SpoiltLine } from './log-store.ts'

/** What stands in a piece of a log's file. @source definition */
export interface LogPiece {
  readonly entries: readonly { readonly line: number; readonly entry: SealedEntry }[]
  readonly spoilt: readonly SpoiltLine[]
  readonly lines: number
  /** Bytes up to the end of the last whole line. */
  readonly whole: number
  /** What stands after that: nothing; a whole entry that lacks only the end of its line; or a torn one. */
  readonly tail: 'none' | 'lacks its end' | 'torn'
}

/**
 * A piece of a log's file: one sealed entry a line, each in its one spelling. Only what stands after the last end of a
 * line can be torn, since an entry is acknowledged when its line is on disk with its end.
 *
 * @param bytes from the beginning of a line
 * @param before lines that stand before it
 * @source own derivation: docs/methods/record.md
 */
export function readLog(bytes: Uint8Array, before = 0): LogPiece {
  const entries: { line: number; entry: SealedEntry }[] = []
  const spoilt: SpoiltLine[] = []
  let from = 0
  let lines = 0
  for (let to = bytes.indexOf(10); to >= 0; to = bytes.indexOf(10, from)) {
    lines++
    const entry = entryOf(bytes.subarray(from, to))
    if (entry) entries.push({ line: before + lines, entry })
    else spoilt.push({ line: before + lines, sentence: 'It is not spelled as it was written.' })
    from = to + 1
  }
  const rest = bytes.subarray(from)
  const last = rest.length === 0 ? null : entryOf(rest)
  if (!last || !isItself(last))
    return { entries, spoilt, lines, whole: from, tail: rest.length === 0 ? 'none' : 'torn' }
  entries.push({ line: before + lines + 1, entry: last })
  return { entries, spoilt, lines, whole: from, tail: 'lacks its end' }
}

const utf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })

function entryOf(line: Uint8Array): SealedEntry | null {
  try {
    return readSealedLine(utf8.decode(line))
  } catch {
    return null
  }
}
