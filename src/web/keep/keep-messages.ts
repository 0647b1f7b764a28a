import type { Problem } from '../../corner/index.ts'
import type { Edit, JobRow, Plain } from '../state/messages.ts'

/** What a new job is opened with. */
export interface NewJob {
  readonly vehicle: string
  readonly complaint: string
  /** Corner models by id: layouts to start from, or models of the workshop. */
  readonly corners: { readonly front: string; readonly rear: string | null }
  readonly spec: string | null
  readonly kit: string | null
  /** The old job that it follows: it came back. */
  readonly follows: { readonly job: string; readonly mileage: string } | null
  readonly hand: string
}

/** What can be asked of the part that keeps jobs, each with what comes back. */
export interface KeepAsks {
  /** Every kept job, the one written on last first. */
  rows: { give: null; back: { readonly rows: readonly JobRow[] } }
  open: { give: NewJob; back: { readonly row: JobRow } }
  /** Seals what of the edits can be sealed. */
  seal: {
    give: { readonly job: string; readonly edits: readonly Edit[]; readonly hand: string }
    back: { readonly row: JobRow; readonly rest: readonly Edit[] }
  }
  signOff: {
    give: { readonly job: string; readonly hand: string; readonly remark: string | null }
    back: { readonly row: JobRow }
  }
  /** The job as one file that anybody can verify. */
  carryOut: { give: { readonly job: string }; back: { readonly name: string; readonly bytes: Uint8Array } }
  /** Takes a file of a job in: a new one, or what is new in it. */
  takeIn: {
    give: { readonly name: string; readonly bytes: Uint8Array }
    back: { readonly row: JobRow; readonly told: readonly string[] }
  }
  /** The newest version of every file of the workshop. */
  files: { give: null; back: { readonly files: readonly KeptFile[] } }
  /** The files by which a job is worked. */
  filesOf: {
    give: { readonly job: string }
    back: {
      readonly files: readonly (KeptFile & { readonly role: 'front' | 'rear' | 'spec' | 'kit' })[]
    }
  }
  /** Looks a file through without keeping it. */
  lookAt: {
    give: { readonly what: KeptFile['what']; readonly file: unknown }
    back: { readonly problems: readonly Problem[] }
  }
  /** Keeps a new version of a file, once it is read without a fault. */
  saveFile: {
    give: { readonly what: KeptFile['what']; readonly file: unknown }
    back: { readonly saved: KeptFile | null; readonly problems: readonly Problem[] }
  }
  /** From here on a job is worked by the newest version of a file. */
  workWith: {
    give: {
      readonly job: string
      readonly role: 'front' | 'rear' | 'spec' | 'kit'
      readonly id: string
      readonly hand: string
    }
    back: { readonly row: JobRow }
  }
  /** Keeps a photo beside a job; it is named by whatever is noted with its hash. */
  keepPhoto: {
    give: { readonly job: string; readonly bytes: Uint8Array }
    back: { readonly hash: string }
  }
  photo: {
    give: { readonly job: string; readonly hash: string }
    back: { readonly bytes: Uint8Array | null }
  }
  /** The workshop that this device belongs to. */
  workshop: { give: null; back: { readonly workshop: Workshop | null } }
  /** The people of the workshop, by their signs. */
  people: { give: null; back: { readonly people: readonly Person[] } }
  /** Gets to know a person, or gives one another code. */
  addPerson: {
    give: { readonly sign: string; readonly code: string; readonly role: 'owner' | 'technician' }
    back: { readonly people: readonly Person[] }
  }
  /** Whether a code is a person's; `waits` is how long the next one must wait, ms. */
  checkCode: {
    give: { readonly sign: string; readonly code: string }
    back: { readonly isTheirs: boolean; readonly waits: number }
  }
  /** Makes one; its root's secret is given once, to be written on paper. */
  begin: {
    give: { readonly name: string; readonly device: string }
    back: { readonly workshop: Workshop; readonly paper: readonly string[] }
  }
}

/** A file of the workshop in its newest version. */
export interface KeptFile {
  readonly what: 'corner' | 'spec' | 'kit'
  readonly id: string
  readonly digest: string
  readonly file: unknown
}

/** A person of the workshop. */
export interface Person {
  readonly sign: string
  readonly role: string
}

/** The workshop as the page shows it. */
export interface Workshop {
  readonly name: string
  readonly fingerprint: string
  readonly device: string
}

/** A question to the part that keeps jobs. */
export type KeepAsk = {
  [K in keyof KeepAsks]: { readonly turn: number; readonly kind: K; readonly give: KeepAsks[K]['give'] }
}[keyof KeepAsks]

/** What comes back: the answer, or why not. */
export type KeepAnswer =
  | { readonly turn: number; readonly back: KeepAsks[keyof KeepAsks]['back'] }
  | { readonly turn: number; readonly trouble: Plain }
