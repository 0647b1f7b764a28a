import type { Assembly, JointNode, PartNode } from './assembly.ts'
import { jointsOf } from './joints-of.ts'

type Kind = PartNode['kind']
const studded: readonly Kind[] = ['ball joint', 'drop link', 'rod', 'centre link', 'arm']
const bushed: readonly Kind[] = ['arm', 'rod', 'spring', 'drop link', 'shackle', 'axle beam', 'bar', 'damper']
const fixed: readonly Kind[] = ['body', 'sub-frame']

const ranked = (kinds: readonly Kind[], joins: readonly PartNode[]): PartNode => {
  const rank = ({ kind }: PartNode) => (kinds.includes(kind) ? kinds.indexOf(kind) : kinds.length)
  return joins.reduce((best, one) => (rank(one) < rank(best) ? one : best))
}
const joinedBy = ({ parts }: Assembly, joint: JointNode) => joint.joins.map((id) => parts[id]!)
const other = (assembly: Assembly, joint: JointNode, part: PartNode): PartNode =>
  joinedBy(assembly, joint).find(({ id }) => id !== part.id)!

/** The part whose stud goes through a taper; of any other joint, the part that its thread goes with. */
function withStud(assembly: Assembly, joint: JointNode): PartNode {
  const joins = joinedBy(assembly, joint)
  if (joint.kind.startsWith('tapered')) return ranked(studded, joins)
  if (joint.kind === 'axle nut') return joins.find(({ kind }) => kind === 'drive shaft') ?? joins[0]!
  if (joint.kind === 'adjustable taper-roller hub')
    return joins.find(({ kind }) => kind === 'knuckle') ?? joins[0]!
  if (joint.kind === 'stud nuts' && joins.some(({ kind }) => kind === 'drop arm'))
    return joins.find(({ kind }) => kind !== 'drop arm')!
  return joins.find(({ kind }) => !fixed.includes(kind)) ?? joins[0]!
}

/** The part whose bush a bolt goes through. */
const withBush = (assembly: Assembly, joint: JointNode): PartNode => ranked(bushed, joinedBy(assembly, joint))

/** The part whose hole a stud or a bolt sits in. */
const withHole = (assembly: Assembly, joint: JointNode): PartNode =>
  other(assembly, joint, joint.file.bush ? withBush(assembly, joint) : withStud(assembly, joint))

/** The boot of a joint as a part of its own, else the part that it sits on. */
function withBoot(assembly: Assembly, joint: JointNode): PartNode {
  const stud = withStud(assembly, joint)
  const near = joint.joins.flatMap((id) => jointsOf(assembly, id)).flatMap(({ joins }) => joins)
  const boots = [...joint.joins, ...near]
    .map((id) => assembly.parts[id]!)
    .filter(({ kind }) => kind === 'boot')
  return joint.kind.startsWith('tapered') ? stud : (boots[0] ?? stud)
}

/**
 * Which part of a joint has its stud, its bush, its hole, its boot. The corner model does not say; the kinds do.
 *
 * @source common practice, no source
 */
export const failureParts = { joinedBy, other, withStud, withBush, withHole, withBoot } as const
