import { bad, good, type Problem, type Reading, readFile } from '../corner/index.ts'
import { inCausalOrder } from './causal-order.ts'
import { effectiveData } from './effective-data.ts'
import type { Entry, Job } from './entry.ts'
import { jobFileSchema } from './job-schema.ts'
import { numbered } from './numbered.ts'
import { readEntry, readSealed } from './read-entry.ts'
import { references } from './references.ts'
import { isSealed } from './sealed-entry.ts'
import { sealNames } from './sealed-schema.ts'

/**
 * A job out of a file's value: the log with its texts as typed, or every fault of the file at once. Each bare
 * entry is looked at as it was written and as it reads after all corrections; a sealed one is kept whatever it
 * says, since nobody may change it: the fold tells what is wrong with it. Sealed entries come in causal order.
 *
 * @param json plain value, as `readJsonText` gives it
 * @source own derivation: docs/methods/formats.md
 * @example readJob({ format: 1 }).ok // false
 */
export function readJob(json: unknown): Reading<Job> {
  const written = (json as { entries?: unknown } | null)?.entries
  const list: readonly unknown[] = Array.isArray(written) ? written : []
  const head = readFile(
    list.some(isKept) ? { ...(json as object), entries: list.map((e) => (isKept(e) ? stand : e)) } : json,
    jobFileSchema,
    'job',
  )
  // The entries that can be read by themselves are still looked at, so that one round shows every fault.
  if (!head.ok) return bad([...head.problems, ...list.flatMap(loneFaults)])
  const { workshop, job, private: values } = head.value
  const entries = inCausalOrder(list as readonly Entry[])
  const halves = list.flatMap(halfSealed)
  const problems = halves.length > 0 ? halves : logFaults(numbered(entries))
  return problems.length > 0
    ? bad(problems)
    : good({ workshop, job, entries, ...(values ? { private: values } : {}) })
}

/**
 * A sealed entry: kept as it is, whatever it says and whichever version made it, since nobody may change it. What is needed
 * to order and to show it must be there.
 */
function isKept(entry: unknown): boolean {
  if (typeof entry !== 'object' || entry === null) return false
  const { format, seq, after, data, ...said } = entry as Readonly<Record<string, unknown>>
  const isCount = (n: unknown) => typeof n === 'number' && Number.isSafeInteger(n) && n >= 1
  const isHex = (text: unknown, digits: number) =>
    typeof text === 'string' && text.length === digits && /^[0-9a-f]*$/.test(text)
  return (
    isCount(format) &&
    isCount(seq) &&
    Array.isArray(after) &&
    after.every((id) => isHex(id, 64)) &&
    typeof data === 'object' &&
    data !== null &&
    !Array.isArray(data) &&
    isHex(said['id'], 64) &&
    isHex(said['device'], 64) &&
    isHex(said['signature'], 128) &&
    ['workshop', 'job', 'at', 'offset', 'person', 'kind'].every((name) => typeof said[name] === 'string')
  )
}
const stand = { kind: 'sealed', data: {} }

function halfSealed(entry: unknown, i: number): readonly Problem[] {
  if (isKept(entry)) return []
  const lacking = [...sealNames, 'at'].filter((name) => !(name in (entry as object)))
  if (lacking.length === 0 || lacking.length >= sealNames.length) return []
  return [
    {
      field: `entries[${i}]`,
      wrong: `The seal of this entry is not whole: it lacks ${lacking.map((name) => `"${name}"`).join(', ')}.`,
      right: 'the entry as the device sealed it, or a bare one with kind, data and at',
    },
  ]
}

function loneFaults(entry: unknown, i: number): readonly Problem[] {
  const { kind, data } = (entry ?? {}) as { kind?: unknown; data?: unknown }
  if (typeof kind !== 'string' || typeof data !== 'object' || data === null || 'id' in (entry as object))
    return []
  const read = readEntry(kind, data, ['entries', i, 'data'])
  return read.kind === 'faulty' ? read.problems : []
}

function logFaults(entries: readonly Entry[]): readonly Problem[] {
  const found = entries.flatMap(loneFaults)
  if (found.length > 0) return found
  return effectiveData(entries).flatMap(({ data, correctedBy }, i) => {
    if (isSealed(entries[i]!)) return spoiltBy(entries, i, data, correctedBy)
    const wrong = references(entries[i]!.kind, data).filter(({ of }) => typeof of !== 'number' || of >= i)
    if (wrong.length > 0)
      return wrong.map(({ path, of }) => ({
        field: `entries[${i}].data.${path}`,
        wrong: `Entry ${String(of)} does not stand before this one.`,
        right: `the number of an earlier entry, 0 to ${i - 1}`,
      }))
    if (correctedBy.length === 0) return []
    const read = readEntry(entries[i]!.kind, data, ['entries', i, 'data'])
    return read.kind === 'faulty' ? asCorrected(read.problems, correctedBy) : []
  })
}

const asCorrected = (problems: readonly Problem[], by: readonly number[]): readonly Problem[] =>
  problems.map((p) => ({
    ...p,
    field: `${p.field}, as corrected by ${by.map((k) => `entries[${k}]`).join(', ')}`,
  }))

/** What bare corrections make of a sealed entry that could be read without them: those can still be refused. */
function spoiltBy(
  entries: readonly Entry[],
  i: number,
  data: Entry['data'],
  correctedBy: readonly number[],
): readonly Problem[] {
  const bare = correctedBy.filter((k) => !isSealed(entries[k]!))
  const entry = entries[i]!
  if (bare.length === 0 || !isSealed(entry)) return []
  const path = ['entries', i, 'data']
  const read = readSealed(entry, data, path)
  if (read.kind !== 'faulty') return []
  // Bare entries stand behind the sealed ones: what is left keeps its place.
  const before = effectiveData(entries.slice(0, bare[0]!))[i]!
  return readSealed(entry, before.data, path).kind === 'faulty' ? [] : asCorrected(read.problems, bare)
}
