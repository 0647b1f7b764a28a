import type { Assembly, HoldNode } from './assembly.ts'

/**
 * Whether a spring stands in its strut, captured there by the nut of the piston rod until the strut is opened.
 *
 * @source definition
 */
export const isStrutSpring = (
  { joints }: Pick<Assembly, 'joints'>,
  hold: Pick<HoldNode, 'heldBy'>,
): boolean => hold.heldBy.some((set) => set.some((joint) => joints[joint]!.kind === 'strut top nut'))
