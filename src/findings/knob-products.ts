/** What every integral of a story has in common: its adjusters against each other and against the residual. */
export interface KnobProducts {
  readonly precision: Float64Array
  readonly pull: Float64Array
  /** Log density at no effect and no knob, over the box of the adjusters. */
  readonly constant: number
}
