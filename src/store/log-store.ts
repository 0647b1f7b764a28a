import type { SealedEntry } from '../job/index.ts'
import type { Snapshot } from '../proof/index.ts'

/** Whose a log is. @source definition */
export interface Whose {
  readonly workshop: string
  readonly job: string
}

/** A place in a kept log that is not as it was written. @source definition */
export interface SpoiltLine {
  /** Line of the file, or number of the record, from 1. */
  readonly line: number
  readonly sentence: string
}

/** A log as it is kept. @source definition */
export interface KeptLog {
  /** Null while nothing is in it. */
  readonly whose: Whose | null
  /** As they were appended; each stands after what it follows. */
  readonly entries: readonly SealedEntry[]
  readonly spoilt: readonly SpoiltLine[]
  /** What was found when it was opened and concerns a person: a torn last line. */
  readonly told: readonly string[]
}

/** A beginning of a log that was looked through before. @source definition */
export interface Trusted {
  /** Of its whole lines. */
  readonly bytes: number
  /** SHA-256 of them. */
  readonly digest: string
}

/** A log read again. @source definition */
export interface ReopenedLog extends KeptLog {
  /** Of its entries, how many stand in the beginning that is as it was. */
  readonly before: number
  /** Its whole lines: how many entries and bytes. */
  readonly whole: { readonly entries: number; readonly bytes: number }
  /** SHA-256 of its whole lines. */
  readonly digest: string
}

/** What can be made again out of a log: its state, and how far it was verified. @source definition */
type Recalled = 'fold' | 'verified'

/** What an append did; it is given only when all of it is on disk. @source definition */
export interface Appended {
  readonly appended: readonly SealedEntry[]
  /** Of those that were given, how many were there already. */
  readonly known: number
  readonly told: readonly string[]
}

/** Gives the entries to append, for those that are kept. Nobody else appends meanwhile. @source definition */
export type Writing = (
  known: readonly SealedEntry[],
) => readonly SealedEntry[] | Promise<readonly SealedEntry[]>

/** One job as it is kept, with what lies beside its log. @source definition */
export interface KeptJob {
  /**
   * @throws {Refusal} `no-job`, `no-folder`, `unreadable`
   */
  readonly read: () => Promise<KeptLog>
  /**
   * Appends what `write` gives, and answers only when it is on disk. An entry that is kept already is passed over.
   *
   * @throws {Refusal} `spoilt`, `other-job`, `not-sealed`, `lacks-before`; `busy`, `no-room`, `read-only`; then nothing is appended
   */
  readonly change: (whose: Whose, write: Writing) => Promise<Appended>
  /**
   * As `read`, for what this place alone goes by: a beginning that was looked through before, and is as it was to the
   * bit, is not looked through again.
   *
   * @throws {Refusal} `no-job`, `no-folder`, `unreadable`
   */
  readonly reopen: (trusted: Trusted | null) => Promise<ReopenedLog>
  /** What was made out of the log, to save the time next time; null where nothing is kept. */
  readonly recall: (what: Recalled) => Promise<string | null>
  /** Keeps it where that is possible; it is lost without harm. */
  readonly remember: (what: Recalled, text: string) => Promise<void>
  /** Keeps a file that the log pins. */
  readonly pin: (snapshot: Snapshot) => Promise<void>
  /** @throws {Refusal} `spoilt` where a pinned file is no JSON any more */
  readonly pinned: () => Promise<readonly Snapshot[]>
  /** Keeps bytes under their SHA-256, which is given back. */
  readonly keep: (bytes: Uint8Array) => Promise<string>
  /** The SHA-256 of all that is kept so. */
  readonly kept: () => Promise<readonly string[]>
  /** Null where nothing is kept under it. @throws {Refusal} `spoilt` where they are other bytes by now */
  readonly beside: (hash: string) => Promise<Uint8Array | null>
  /** Erases what is kept under it, and answers only when that is on disk; false where nothing was. */
  readonly forget: (hash: string) => Promise<boolean>
}

/**
 * Where logs are kept: the one contract of files, browser and database.
 *
 * @source own derivation: docs/methods/record.md
 */
export interface LogStore {
  /** Jobs of which something is kept, ascending. */
  readonly jobs: () => Promise<readonly string[]>
  /** One of them, or one that will be there with its first entry. */
  readonly job: (job: string) => KeptJob
}
