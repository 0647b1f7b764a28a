/** One thing that was measured. */
export interface Finding {
  readonly id: string
  readonly what: string
  /** Lines of detail, as printed. */
  readonly lines: readonly string[]
  /** What is held against the target. */
  readonly value: number
  readonly unit: string
  readonly target: number | null
  /** null where there is no target. */
  readonly held: boolean | null
  /** Everything measured. */
  readonly numbers: Readonly<Record<string, number | string>>
}

/** Something that was not measured, and why. */
export interface Skipped {
  readonly what: string
  readonly skipped: string
}
