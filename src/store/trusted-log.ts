import type { SealedEntry } from '../job/index.ts'
import { keptLog } from './kept-log.ts'
import { type LogSoFar, logSoFar } from './log-so-far.ts'
import type { ReopenedLog, Trusted } from './log-store.ts'
import { readLog } from './read-log.ts'
import { sha256 } from './sha-256.ts'

/**
 * Reads a log whose beginning may have been looked through before. Where that is as it was, to the bit, it is not looked
 * through again; else all of it is.
 *
 * @param told says what of it concerns a person
 * @source own derivation: docs/methods/record.md
 */
export async function trustedLog(
  bytes: Uint8Array,
  trusted: Trusted | null,
  told: (log: LogSoFar) => readonly string[] = () => [],
): Promise<ReopenedLog> {
  const base =
    trusted && (await isAsItWas(bytes, trusted)) ? unlooked(bytes.subarray(0, trusted.bytes)) : null
  const log = logSoFar(base, readLog(bytes.subarray(base?.whole ?? 0), base?.lines))
  const isNew = trusted === null || log.whole !== base?.whole
  return {
    ...keptLog(log, told(log)),
    before: base?.entries.length ?? 0,
    whole: { entries: log.entries.length, bytes: log.whole },
    digest: isNew ? await sha256(bytes.subarray(0, log.whole)) : trusted.digest,
  }
}

async function isAsItWas(bytes: Uint8Array, { bytes: size, digest }: Trusted): Promise<boolean> {
  return size > 0 && size <= bytes.length && (await sha256(bytes.subarray(0, size))) === digest
}

/** Its spelling was looked at before: no end of a line stands within an entry. */
function unlooked(bytes: Uint8Array): LogSoFar {
  const text = new TextDecoder().decode(bytes)
  const entries = JSON.parse(`[${text.slice(0, -1).replaceAll('\n', ',')}]`) as readonly SealedEntry[]
  return {
    whole: bytes.length,
    lines: entries.length,
    entries,
    ids: new Set(entries.map(({ id }) => id)),
    spoilt: [],
    tail: 'none',
    last: null,
  }
}
