import { canonicalText } from './canonical-text.ts'
import type { Proof } from './proof.ts'
import type { ReadProof } from './proof-reading.ts'
import { newerHead, privateShape, sealedShape, snapshotShape } from './proof-shape-schema.ts'

const opens = /^\{?"([^"\\]+)":\[$/
const member = /^\{?"([^"\\]+)":(.*?)(,|\})$/s
const known = {
  entries: sealedShape,
  private: privateShape,
  snapshots: snapshotShape,
  workshop: sealedShape,
} as const
type Known = keyof typeof known

/**
 * A proof that a newer version wrote, as far as this version knows it: its lists as lines, and the rest kept as it is.
 *
 * @param lines of the file; null for one that is no UTF-8
 * @returns null when it is of a format that this version knows, or no head says so
 * @source own derivation: docs/methods/record.md
 */
export function newerProof(lines: readonly (string | null)[]): ReadProof | null {
  const headLine = lines.find((line) => line?.replace(/^\{/, '').startsWith('"head":'))
  const head = newerHead.safeParse(canonical(headLine?.match(member)?.[2]))
  if (!head.success) return null
  const lists: Record<Known, unknown[]> = { entries: [], private: [], snapshots: [], workshop: [] }
  const parts: string[] = []
  let list: string | null = null
  for (const [i, line] of lines.entries()) {
    if (line === null) return spoilt(i)
    const opened: string | undefined = list === null ? opens.exec(line)?.[1] : undefined
    const alone: RegExpExecArray | null = list === null ? member.exec(line) : null
    if (opened !== undefined) {
      list = opened
      if (!Object.hasOwn(known, opened)) parts.push(opened)
    } else if (/^\][,}]$/.test(line)) list = null
    else if (list !== null) {
      const value = canonical(line.replace(/,$/, ''))
      if (value === undefined) return spoilt(i)
      if (!Object.hasOwn(known, list)) continue
      if (!known[list as Known].safeParse(value).success) return spoilt(i)
      lists[list as Known].push(value)
    } else if (alone) {
      if (canonical(alone[2]) === undefined) return spoilt(i)
      if (alone[1] !== 'head') parts.push(alone[1]!)
    } else if (line !== '' || i < lines.length - 1) return spoilt(i)
  }
  if (lists.entries.length === 0) return spoilt(0)
  const { format } = head.data
  return {
    proof: {
      ...lists,
      head: { ...head.data, format: 1 },
      beyond: { format, parts, text: lines.join('\n') },
    } as unknown as Proof,
    spoilt: [],
  }
}

/** A value in its one spelling; undefined for any other text. */
function canonical(text: string | undefined): unknown {
  try {
    const value: unknown = JSON.parse(text ?? '')
    return canonicalText(value) === text ? value : undefined
  } catch {
    return undefined
  }
}

const spoilt = (line: number): ReadProof => ({
  proof: null,
  spoilt: [
    {
      list: null,
      at: 0,
      sentence: `A newer version made it, and line ${line + 1} is not as this version knows such files; only that version can say whether it is intact.`,
    },
  ],
})
