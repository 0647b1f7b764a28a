import type { Trusted } from './log-store.ts'
import { sha256 } from './sha-256.ts'

/** What was made out of a log, with the log it was made of. @source definition */
export interface Note extends Trusted {
  /** By which rules. */
  readonly rules: string
  readonly body: string
  readonly bodyDigest: string
}

/**
 * A note in words: its head on the first line, then its body.
 *
 * @source own derivation: docs/methods/record.md
 */
export const noteText = async (
  { rules, bytes, digest }: Trusted & { readonly rules: string },
  body: string,
): Promise<string> =>
  `${JSON.stringify({ note: 1, rules, bytes, digest, body: await sha256(body) })}\n${body}`

/**
 * A note that was kept; null where it cannot be read. Whether its body is whole, its digest says.
 *
 * @source own derivation: docs/methods/record.md
 */
export function readNote(text: string | null): Note | null {
  const end = text?.indexOf('\n') ?? -1
  if (text === null || end < 0) return null
  try {
    const { note, rules, bytes, digest, body } = JSON.parse(text.slice(0, end)) as Record<string, unknown>
    return note === 1 &&
      typeof rules === 'string' &&
      typeof digest === 'string' &&
      typeof body === 'string' &&
      Number.isInteger(bytes)
      ? { rules, bytes: bytes as number, digest, bodyDigest: body, body: text.slice(end + 1) }
      : null
  } catch {
    return null
  }
}
