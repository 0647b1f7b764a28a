import type { Edges } from './boxed-integral.ts'
import type { EvidenceRow } from './evidence-rows.ts'
import type { KnobProducts } from './knob-products.ts'

/**
 * What may have happened to the adjusters: somebody set the angles inside before it happened, or after it, or they stand
 * anywhere.
 */
export type Story = 'set before' | 'set after' | 'anywhere'

/** A further reading as one story foresees it. */
export interface Foreseen {
  /** What it says by itself, before effects of a hypothesis on it. */
  readonly expected: number
  /** What the residual of the other rows adds to that, in units of their errors. */
  readonly drawn: Float64Array
  readonly variance: number
}

/**
 * Readings and limits in one story: residuals and effects are columns in units of their joint errors, limits first.
 *
 * @source own derivation: docs/methods/findings.md
 */
export interface History {
  readonly story: Story
  /** An effect in those units; what it does to what was set goes by the story. */
  readonly column: (now: Float64Array) => Float64Array
  /** The same of an effect that came after the setting in every story. */
  readonly lately: (now: Float64Array) => Float64Array
  /** An adjuster that stood half its range lower when the angles were set. */
  readonly since: (knob: number) => Float64Array
  /** Adjusters that nobody saw, per half range. */
  readonly knobs: readonly Float64Array[]
  /** What one half range of each of them does to the vehicle now. */
  readonly knobsNow: readonly Float64Array[]
  /** Where their ends are, in half ranges. */
  readonly low: Float64Array
  readonly high: Float64Array
  readonly residual: Float64Array
  readonly products: KnobProducts
  /** What stands in for those ends when nothing is at fault: where other integrals start. */
  readonly edges: Edges
  /** How many of the first rows are limits. */
  readonly limits: number
  /** Log density of the rows at no effect and no knob, less its squares. */
  readonly logScale: number
  /** Log of the chance of the limits alone, over all places of the adjusters: what the rest is divided by. */
  readonly logSet: number
  /** How far each reading stands off what all the others say, in standard deviations, of a residual in units. */
  readonly standing: (residual: Float64Array) => Float64Array
  readonly further: (row: EvidenceRow) => Foreseen
}
