import type { Edit, Plain, Units } from './messages.ts'

/** What a job can be put on: paper, a page, or a calendar. */
export type PaperKind = 'pdf' | 'html' | 'ics'

/** What is asked of the part that makes papers; one question each. */
export interface PaperAsk {
  readonly as: PaperKind
  readonly job: string
  readonly version: string
  readonly edits: readonly Edit[]
  readonly units: Units
}

/** A file, or why there is none. */
export type PaperAnswer =
  | { readonly name: string; readonly type: string; readonly bytes: Uint8Array }
  | { readonly trouble: Plain }
