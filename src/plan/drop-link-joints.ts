import type { Assembly, Side } from './assembly.ts'
import { jointsOf } from './joints-of.ts'

/**
 * The joints of which one, open, parts a side from its anti-roll bar; none where there is no bar.
 *
 * @source definition
 */
export function dropLinkJoints(
  assembly: Assembly,
  { axle, side }: { readonly axle: string; readonly side: Side | null },
): readonly string[] {
  const links = Object.values(assembly.parts).filter(
    (part) => part.kind === 'drop link' && part.axle === axle && (side === null || part.side === side),
  )
  const bars = Object.values(assembly.parts).filter((part) => part.kind === 'bar' && part.axle === axle)
  if (links.length > 0) return links.flatMap(({ id }) => jointsOf(assembly, id)).map(({ id }) => id)
  return bars
    .flatMap(({ id }) => jointsOf(assembly, id))
    .filter((joint) => joint.side !== null && joint.side === side)
    .filter(
      (joint) => !joint.joins.some((part) => ['body', 'sub-frame'].includes(assembly.parts[part]!.kind)),
    )
    .map(({ id }) => id)
}
