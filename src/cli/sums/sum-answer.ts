/** A number of an answer, for programs. */
export interface SumNumber {
  readonly name: string
  /** In `unit`, not rounded. */
  readonly value: number
  /** Half of the 95 % interval, in `unit`; 0 where nothing was read. */
  readonly within: number
  readonly unit: string
}

/** The answer to one question, with what it stands on. */
export interface SumAnswer {
  /** One line each. */
  readonly answer: readonly string[]
  readonly numbers: readonly SumNumber[]
  readonly formula: string
  readonly source: string
  /** What each reading was taken to be within, and who says so; or why there is no spread. Never empty. */
  readonly spread: readonly string[]
  /** What was assumed besides, and the cautions that belong to it. */
  readonly notes: readonly string[]
}

/** One question that can be asked without a job. */
export interface SumTopic {
  readonly name: string
  /** "wrench setting through an adapter" */
  readonly about: string
  /** Words that must be given, and those that may be. */
  readonly needs: readonly string[]
  readonly may: readonly string[]
  readonly example: string
  readonly work: (words: ReadonlyMap<string, string>) => SumAnswer
}
