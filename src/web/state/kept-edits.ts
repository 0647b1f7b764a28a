import type { Edit } from './messages.ts'

/** A job, and the mark of the log that its edits were made on. */
export interface KeptPlace {
  readonly job: string
  readonly mark: string
}

const place = ({ job, mark }: KeptPlace) => `axlewright/1/edits/${job}/${mark}`

const isText = (value: unknown): value is string => typeof value === 'string'
const isThing = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null

const sound: { readonly [K in Edit['kind']]: (edit: Record<string, unknown>) => boolean } = {
  typed: (edit) => Number.isInteger(edit['entry']) && isText(edit['path']) && isText(edit['text']),
  again: (edit) => sound.typed(edit),
  turned: (edit) => isText(edit['at']) && Array.isArray(edit['moves']),
  taken: (edit) => isText(edit['at']),
  how: (edit) => typeof edit['settled'] === 'boolean' && typeof edit['proving'] === 'boolean',
  noted: ({ at, label, entries }) =>
    [at, label].every(isText) &&
    Array.isArray(entries) &&
    entries.every((entry) => isThing(entry) && isText(entry['kind']) && isThing(entry['data'])),
  done: ({ at, wheel, joint, label, entry }) =>
    [at, wheel, joint, label].every(isText) &&
    (entry === null || (isThing(entry) && isText(entry['kind']) && isThing(entry['data']))),
}

const isEdit = (value: unknown): value is Edit =>
  isThing(value) &&
  isText(value['kind']) &&
  Object.hasOwn(sound, value['kind']) &&
  sound[value['kind'] as Edit['kind']](value)

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
