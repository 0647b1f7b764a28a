/** A device that signed, and whether the workshop knows it. @source definition */
export interface SignerVerdict {
  readonly key: string
  /** To be compared by eye. */
  readonly fingerprint: string
  /** How many entries of the job it signed. */
  readonly entries: number
  /** Known: certified by the root that is trusted. Revoked: it was, and is no more. */
  readonly hand: 'known' | 'revoked' | 'unknown'
  /** How the workshop calls it. */
  readonly name: string | null
}

/** One sign-off, and what it covers. @source definition */
export interface SignOffVerdict {
  /** Place in the log. */
  readonly entry: number
  readonly at: string
  readonly hand: string
  readonly key: string
  readonly covers: number
  /** Places of entries that it does not cover. */
  readonly late: readonly number[]
  /**
   * Whether the state that is signed comes out again: by other rules of folding it cannot be said. */
  readonly state: 'comes out again' | 'does not come out' | 'made by other rules'
  /** Files that it pins and that are not beside it, or are others. */
  readonly filesAmiss: readonly string[]
  readonly engine: string
}

/** What can be said of a proof. @source own derivation: docs/methods/record.md */
export interface ProofVerdict {
  readonly workshop: string
  readonly job: string
  readonly entries: number
  /** Nobody changed it since it was sealed. */
  readonly intact: boolean
  /** What is broken, the first one first. */
  readonly broken: readonly {
    readonly where: string
    readonly entry: number | null
    readonly sentence: string
  }[]
  readonly signers: readonly SignerVerdict[]
  /** Fingerprint of the root that the file names; null where it names none. */
  readonly root: string | null
  /** Whether that is the root that was asked for; null where nobody said which to trust. */
  readonly rootTrusted: boolean | null
  readonly signOffs: readonly SignOffVerdict[]
  /** Personal values that its entries name: how many are with it, and how many were erased. */
  readonly personal: { readonly there: number; readonly erased: number }
  /** Entries whose clock cannot be right. */
  readonly backDated: readonly number[]
}
