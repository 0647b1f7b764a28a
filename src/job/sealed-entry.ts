import type { Entry } from './entry.ts'

/**
 * An entry that a device has sealed: whose it is, what the device knew when it was written, its hash and its signature.
 *
 * @source own derivation: docs/decisions/0014-a-log-is-a-set-of-sealed-entries.md
 */
export interface SealedEntry extends Entry {
  readonly format: number
  readonly workshop: string
  readonly job: string
  /** The device's Ed25519 public key, 64 hexadecimal digits. */
  readonly device: string
  /** Counts the device's entries of this job from 1, without gaps. */
  readonly seq: number
  /** Ids of the heads that the device knew, in ascending order. */
  readonly after: readonly string[]
  readonly at: string
  /** The device's offset from UTC when it was sealed: "+01:00". */
  readonly offset: string
  /** Whose hand: initials or a sign. */
  readonly person: string
  /** SHA-256, 64 hexadecimal digits. */
  readonly id: string
  /** Ed25519 over the 32 bytes of the id, 128 hexadecimal digits. */
  readonly signature: string
}

/** Whether an entry carries a seal; whether that holds is the proof room's to say. @source definition */
export const isSealed = (entry: Entry): entry is SealedEntry => 'id' in entry
