/** The answer to one question, with what it stands on. */
interface SumAnswer {
  /** One line each. */
  readonly answer: readonly string[]
  readonly formula: string
  readonly source: string
  /** What was assumed, and the cautions that belong to it. */
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
