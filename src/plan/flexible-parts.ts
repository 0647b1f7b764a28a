import type { Assembly, PartNode } from './assembly.ts'
import { jointsOf } from './joints-of.ts'

/** A hose or lead between a corner and the body, and the sets of joints of which one frees it. */
interface FlexiblePart {
  readonly part: PartNode
  /** Any one of these, with all its joints open, frees it. */
  readonly freedBy: readonly (readonly string[])[]
}

const kinds: readonly PartNode['kind'][] = ['hose', 'lead', 'height-sensor rod']

/**
 * What reaches only so far while the knuckle moves: hoses, leads and height-sensor rods of a corner,
 * and what frees each. A hose is freed at its brackets, never at its union; a lead so
 * that it stays on the wheel carrier, on the strut or on the rest only.
 *
 * @param where side and axle of the corner
 * @source own derivation: docs/methods/plan.md
 */
export function flexibleParts(
  assembly: Assembly,
  where: { readonly axle: string; readonly side: string | null },
): readonly FlexiblePart[] {
  return Object.values(assembly.parts)
    .filter(
      (part) =>
        kinds.includes(part.kind) &&
        part.axle === where.axle &&
        (part.side === null || where.side === null || part.side === where.side),
    )
    .flatMap((part) => {
      const joints = jointsOf(assembly, part.id)
      const other = (joint: (typeof joints)[number]) =>
        assembly.parts[joint.joins.find((one) => one !== part.id)!]!.kind
      const held = joints.filter(({ kind }) => kind !== 'hydraulic union' && kind !== 'air union')
      const each = held.map(({ id }) => [id])
      if (part.kind === 'height-sensor rod') return each.length > 0 ? [{ part, freedBy: each }] : []
      const ids = (joints: typeof held) => joints.map(({ id }) => id)
      if (part.kind === 'hose') {
        // Its end goes with the caliper: the brackets between there and the body give it its length.
        const brackets = held.filter((joint) => !['body', 'sub-frame'].includes(other(joint)))
        return brackets.length > 0
          ? [{ part, freedBy: [ids(brackets)] }]
          : each.length > 0
            ? [{ part, freedBy: each }]
            : []
      }
      // What stays on one of them only, ties nothing: wheel carrier, strut, or all the rest.
      const clusterOf = (joint: (typeof held)[number]) =>
        isCarrier(assembly, part, other(joint)) ? 'carrier' : other(joint) === 'strut' ? 'strut' : 'rest'
      const clusters = [...new Set(held.map(clusterOf))]
      const freedBy =
        clusters.length > 1
          ? clusters.map((kept) => ids(held.filter((joint) => clusterOf(joint) !== kept)))
          : []
      return freedBy.length > 0 ? [{ part, freedBy }] : []
    })
}

const carriers: readonly PartNode['kind'][] = [
  'knuckle',
  'hub',
  'bearing',
  'caliper',
  'brake carrier',
  'backing plate',
]

/** Whether a part goes with the wheel: the knuckle and what sits on it, else what carries the hub. */
function isCarrier(assembly: Assembly, beside: PartNode, kind: PartNode['kind']): boolean {
  if (carriers.includes(kind)) return true
  if (kind !== 'arm' && kind !== 'axle beam') return false
  const hasKnuckle = Object.values(assembly.parts).some(
    (part) => part.kind === 'knuckle' && part.axle === beside.axle,
  )
  return !hasKnuckle
}
