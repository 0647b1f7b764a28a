/** One quantity that a person typed: which entry, which field in its data, and the text. @source definition */
export interface Typing {
  readonly entry: number
  /** Path in the entry's data: `reads[0]`. */
  readonly path: string
  readonly text: string
}

/** What every fact of the state says about where it comes from. @source definition */
export interface Told {
  /** Place of the entry in the log, from 0. */
  readonly entry: number
  /** The device's clock; shown only. */
  readonly at: string | null
  /** Number of the round in which it was said; 0 before the first. */
  readonly round: number
  readonly typings: readonly Typing[]
  /** The corrections laid over it. */
  readonly correctedBy: readonly number[]
}
