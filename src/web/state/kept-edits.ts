import type { Edit } from './messages.ts'

const place = (job: string) => `axlewright/1/edits/${job}`

const isEdit = (value: unknown): value is Edit => {
  if (typeof value !== 'object' || value === null || !('kind' in value)) return false
  const edit = value as Record<string, unknown>
  return edit['kind'] === 'typed'
    ? Number.isInteger(edit['entry']) && typeof edit['path'] === 'string' && typeof edit['text'] === 'string'
    : edit['kind'] === 'turned' && typeof edit['at'] === 'string' && Array.isArray(edit['moves'])
}

/** The edits of a job that this device keeps; empty when there are none or they cannot be read. */
export function keptEdits(job: string): readonly Edit[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place(job)) ?? '[]')
    return Array.isArray(kept) && kept.every(isEdit) ? kept : []
  } catch {
    return []
  }
}

/** Keeps the edits of a job on this device. Returns false when the device refuses. */
export function keepEdits(job: string, edits: readonly Edit[]): boolean {
  try {
    if (edits.length === 0) localStorage.removeItem(place(job))
    else localStorage.setItem(place(job), JSON.stringify(edits))
    return true
  } catch {
    return false
  }
}
