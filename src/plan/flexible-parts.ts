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
 * and what frees each. A hose is freed at its brackets, never at its union; a lead at its plug or all its clips.
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
      const isBody = (joint: (typeof joints)[number]) => ['body', 'sub-frame'].includes(other(joint))
      const moving = held.filter((joint) => !isBody(joint) && joint.kind !== 'plug').map(({ id }) => id)
      const plugs = held.filter(({ kind }) => kind === 'plug').map(({ id }) => [id])
      const each = held.map(({ id }) => [id])
      const freedBy = part.kind === 'height-sensor rod' ? each : moving.length > 0 ? [...plugs, moving] : each
      return freedBy.length > 0 ? [{ part, freedBy }] : []
    })
}
