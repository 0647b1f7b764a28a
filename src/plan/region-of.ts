import type { Assembly } from './assembly.ts'

/**
 * The corner that a part, joint or hold of a choice belongs to, "front left"; null for what an axle or the vehicle has
 * once. A joint belongs to the corner of the part it joins there. A corner itself may be asked for too.
 *
 * @source definition
 */
export function regionOf({ parts, joints }: Pick<Assembly, 'parts' | 'joints'>, id: string): string | null {
  const cornerOf = (part: string) => {
    const { axle, side } = parts[part]!
    return axle && side ? `${axle} ${side}` : null
  }
  if (parts[id]) return cornerOf(id)
  const joint = joints[id]
  return joint ? (joint.joins.map(cornerOf).find((where) => where !== null) ?? null) : id
}
