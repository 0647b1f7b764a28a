import { bad, good, type Problem, type Reading, readFile } from '../corner/index.ts'
import { effectiveData } from './effective-data.ts'
import type { Entry, Job } from './entry.ts'
import { jobFileSchema } from './job-schema.ts'
import { readEntry } from './read-entry.ts'
import { references } from './references.ts'

/**
 * A job out of a file's value: the log with its texts as typed, or every fault of the file at once. Each
 * entry is looked at as it was written and as it reads after all corrections.
 *
 * @param json plain value, as `readJsonText` gives it
 * @source own derivation: docs/methods/formats.md
 * @example readJob({ format: 1 }).ok // false
 */
export function readJob(json: unknown): Reading<Job> {
  const head = readFile(json, jobFileSchema, 'job')
  if (!head.ok) {
    // The entries that can be read by themselves are still looked at, so that one round shows every fault.
    const entries = (json as { entries?: unknown } | null)?.entries
    return bad([...head.problems, ...(Array.isArray(entries) ? entries.flatMap(loneFaults) : [])])
  }
  const { workshop, job, entries } = head.value
  const problems = logFaults(entries as readonly Entry[])
  return problems.length > 0 ? bad(problems) : good({ workshop, job, entries: entries as readonly Entry[] })
}

function loneFaults(entry: unknown, i: number): readonly Problem[] {
  const { kind, data } = (entry ?? {}) as { kind?: unknown; data?: unknown }
  if (typeof kind !== 'string' || typeof data !== 'object' || data === null) return []
  const read = readEntry(kind, data, ['entries', i, 'data'])
  return read.kind === 'faulty' ? read.problems : []
}

function logFaults(entries: readonly Entry[]): readonly Problem[] {
  const found = entries.flatMap(loneFaults)
  if (found.length > 0) return found
  return effectiveData(entries).flatMap(({ data, correctedBy }, i) => {
    const wrong = references(entries[i]!.kind, data).filter(({ of }) => typeof of !== 'number' || of >= i)
    if (wrong.length > 0)
      return wrong.map(({ path, of }) => ({
        field: `entries[${i}].data.${path}`,
        wrong: `Entry ${String(of)} does not stand before this one.`,
        right: `the number of an earlier entry, 0 to ${i - 1}`,
      }))
    if (correctedBy.length === 0) return []
    const read = readEntry(entries[i]!.kind, data, ['entries', i, 'data'])
    if (read.kind !== 'faulty') return []
    const by = correctedBy.map((k) => `entries[${k}]`).join(', ')
    return read.problems.map((p) => ({ ...p, field: `${p.field}, as corrected by ${by}` }))
  })
}
