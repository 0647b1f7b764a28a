/** What a refusal carries besides its sentence. @source definition */
export interface RefusalFacts<Code extends string = string> {
  /** Closed union per room. */
  readonly code: Code
  /** Where: a field path, a point, a link. */
  readonly at: string
  /** What was given, as text. */
  readonly given?: string
  /** What is wrong, with value and limit, for the person. */
  readonly sentence: string
  /** What to do now. */
  readonly remedy: string
}

/**
 * The one way a pure room says no. Tests match `code` and `at`, never prose.
 *
 * @source definition
 */
export class Refusal<Code extends string = string> extends Error implements RefusalFacts<Code> {
  readonly code: Code
  readonly at: string
  readonly given: string
  readonly sentence: string
  readonly remedy: string

  constructor(facts: RefusalFacts<Code>) {
    super(`${facts.sentence} ${facts.remedy}`)
    this.name = 'Refusal'
    this.code = facts.code
    this.at = facts.at
    this.given = facts.given ?? ''
    this.sentence = facts.sentence
    this.remedy = facts.remedy
  }
}
