import type * as z from 'zod'
import { canonicalText } from './canonical-text.ts'
import { newerProof } from './newer-proof.ts'
import type { Proof } from './proof.ts'
import type { ProofList, ReadProof, SpoiltPlace } from './proof-reading.ts'
import { privateShape, proofHead, sealedShape, snapshotShape } from './proof-shape-schema.ts'
import { proofText } from './proof-text.ts'

const opens: Readonly<Record<string, ProofList>> = {
  '{"entries":[': 'entries',
  '"private":[': 'private',
  '"snapshots":[': 'snapshots',
  '"workshop":[': 'workshop',
}
const closes: readonly string[] = ['],', ']}']
const shapes: Readonly<Record<ProofList, z.ZodType>> = {
  entries: sealedShape,
  workshop: sealedShape,
  private: privateShape,
  snapshots: snapshotShape,
}
/** Shorter than this no entry and no snapshot can be: the line was one of the frame. */
const shortest = 60

/**
 * A proof out of the bytes of its file, which has one spelling: each line canonical, nothing besides. It is read line by
 * line, so that a byte that was changed is found, and found where it is.
 *
 * @source own derivation: docs/methods/record.md
 */
export function readProof(bytes: Uint8Array): ReadProof {
  const spoilt: SpoiltPlace[] = []
  const lists: Record<ProofList, unknown[]> = { entries: [], private: [], snapshots: [], workshop: [] }
  let head: unknown
  let list: ProofList | null = null
  const lines = linesOf(bytes)
  const newer = newerProof(lines)
  if (newer) return newer
  const framed = (sentence: string) => spoilt.push({ list: null, at: 0, sentence })
  for (const [i, line] of lines.entries()) {
    const isLast = i === lines.length - 1
    if (line !== null && opens[line]) list = opens[line]
    else if (line !== null && closes.includes(line)) list = null
    else if (isLast && line === '') break
    else if (list !== null && (line === null || line.length >= shortest)) {
      const ends = closes.includes(lines[i + 1] ?? '')
      const text = ends ? line : line?.endsWith(',') ? line.slice(0, -1) : null
      const value = parsed(text, shapes[list])
      const at = lists[list].push(value) - 1
      if (value === null) spoilt.push({ list, at, sentence: 'It is not spelled as it was written.' })
    } else if (line?.startsWith('"head":') && line.endsWith(',')) {
      head = parsed(line.slice(7, -1), proofHead)
      if (head === null) framed('The head is not spelled as it was written.')
    } else framed('The frame around the entries is not as it was written.')
  }
  if (head === undefined) framed('The head is missing.')
  if (spoilt.length > 0) return { proof: null, spoilt }
  const { private: values, ...others } = lists
  const proof = { head, ...others, ...(values.length > 0 ? { private: values } : {}) } as unknown as Proof
  if (proofText(proof) === lines.join('\n')) return { proof, spoilt }
  return {
    proof: null,
    spoilt: [{ list: null, at: 0, sentence: 'The frame around the entries is not as it was written.' }],
  }
}

/** The lines of a file; null for one that is no UTF-8. */
function linesOf(bytes: Uint8Array): readonly (string | null)[] {
  const utf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
  const lines: (string | null)[] = []
  let from = 0
  for (let to = bytes.indexOf(10); ; to = bytes.indexOf(10, from)) {
    const line = bytes.subarray(from, to < 0 ? undefined : to)
    try {
      lines.push(utf8.decode(line))
    } catch {
      lines.push(null)
    }
    if (to < 0) return lines
    from = to + 1
  }
}

/** A line's value; null where it is not canonical or has another shape. */
function parsed(text: string | null | undefined, shape: z.ZodType): unknown {
  try {
    const value: unknown = JSON.parse(text ?? '')
    return canonicalText(value) === text && shape.safeParse(value).success ? value : null
  } catch {
    return null
  }
}
