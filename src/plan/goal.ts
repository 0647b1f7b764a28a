/** What is to be done: parts to replace and joints to open, by their ids. @source definition */
export interface Goal {
  readonly replace: readonly string[]
  readonly open?: readonly string[]
}
