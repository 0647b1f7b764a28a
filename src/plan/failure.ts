/** What may go wrong with a joint or a part and has a branch of its own. @source definition */
export type FailureKind =
  | 'seized sleeve'
  | 'snapped stud'
  | 'stripped thread'
  | 'rounded head'
  | 'taper will not part'
  | 'stud spins'
  | 'split boot'
  | 'hole not round'
  | 'damage found'
  | 'wrong part in the box'

/** A way to free what does not come undone, from gentle to rough. @source common practice, no source */
export type Rung =
  | 'soak'
  | 'lever'
  | 'clamp'
  | 'grip'
  | 'strap'
  | 'press'
  | 'impact'
  | 'puller'
  | 'extractor'
  | 'hammer'
  | 'fork'
  | 'split'
  | 'heat'
  | 'drill'
  | 'cut'

/** Something that went wrong: what, at which joint or part, and what was tried already in vain. @source definition */
export interface Failure {
  readonly what: FailureKind
  readonly joint?: string
  readonly part?: string
  readonly tried?: readonly Rung[]
  /** What the boss of a taper is made of, where somebody looked: a hammer is only for steel. */
  readonly boss?: 'steel' | 'aluminium'
}
