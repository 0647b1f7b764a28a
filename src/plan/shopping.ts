/** What to have before lifting. @source definition */
export interface Shopping {
  readonly parts: readonly string[]
  /** Fasteners and pins that are used once. */
  readonly singleUse: readonly string[]
  readonly consumables: readonly string[]
}
