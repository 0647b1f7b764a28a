import type { Edit } from './messages.ts'

/** A job, and the mark of the log that its edits were made on. */
export interface KeptPlace {
  readonly job: string
  readonly mark: string
}

const place = ({ job, mark }: KeptPlace) => `axlewright/1/edits/${job}/${mark}`

const isEdit = (value: unknown): value is Edit => {
  if (typeof value !== 'object' || value === null || !('kind' in value)) return false
  const edit = value as Record<string, unknown>
  return edit['kind'] === 'typed' || edit['kind'] === 'again'
    ? Number.isInteger(edit['entry']) && typeof edit['path'] === 'string' && typeof edit['text'] === 'string'
    : edit['kind'] === 'turned'
      ? typeof edit['at'] === 'string' && Array.isArray(edit['moves'])
      : edit['kind'] === 'taken' && typeof edit['at'] === 'string'
}

/** The edits of a job that this device keeps; empty when there are none or they cannot be read. */
export function keptEdits(of: KeptPlace): readonly Edit[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place(of)) ?? '[]')
    return Array.isArray(kept) && kept.every(isEdit) ? kept : []
  } catch {
    return []
  }
}

/** Keeps the edits of a job on this device. Returns false when the device refuses. */
export function keepEdits(of: KeptPlace, edits: readonly Edit[]): boolean {
  try {
    if (edits.length === 0) localStorage.removeItem(place(of))
    else localStorage.setItem(place(of), JSON.stringify(edits))
    return true
  } catch {
    return false
  }
}
