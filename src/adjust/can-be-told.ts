import type { Axis } from './axis.ts'

/**
 * Whether moves can be told for an adjuster as it stands: what a turn of a sleeve does, and which wedge is in the way
 * of another, nobody can say who does not know how it is fitted now.
 *
 * @source definition
 */
export const canBeTold = ({ adjuster, known }: Axis): boolean =>
  known || !(adjuster.kind === 'offset sleeve' || adjuster.kind === 'wedge')
