import { type Metre, metre } from '../quantity/index.ts'
import type { Side } from './wheel-angles.ts'

/**
 * The rack position that the corner of one side is computed with, when the vehicle's rack stands `rack` to the
 * left: the right corner is computed as its mirror image, where left is right.
 *
 * @param rack to the left positive, m
 * @returns to the left positive in the computed (left) corner, m
 * @source definition; docs/methods/signs.md
 * @example rackForSide({ side: 'right', rack: metre(0.01) }) // -0.01 m
 */
export const rackForSide = ({ side, rack }: { readonly side: Side; readonly rack: Metre }): Metre =>
  side === 'left' || rack === 0 ? rack : metre(-rack)
