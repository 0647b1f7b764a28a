import type { JointNode } from './assembly.ts'

/**
 * Whether a joint is made final where it was run up, lifted, before the wheels are back; an adjuster or a torsion
 * bar's anchor is not.
 *
 * @source own derivation: docs/methods/plan.md
 */
export const isHome = ({ final, adjusts, kind }: JointNode): boolean =>
  !adjusts && kind !== 'anchor bolt' && (final === 'any position' || final === 'wheels straight')
