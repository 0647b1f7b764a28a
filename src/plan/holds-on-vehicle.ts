import type { Corner } from '../corner/index.ts'
import type { HoldNode, JointNode, PartNode, StandIn } from './assembly.ts'

/**
 * Stored energy of an axle as it stands on the vehicle: which joints keep it in, and what may stand in for them.
 *
 * @param parts of the axle, by id
 * @param joints of the axle, by id
 * @source own derivation: docs/methods/plan.md
 */
export function holdsOnVehicle(
  corner: Corner,
  parts: Readonly<Record<string, PartNode>>,
  joints: Readonly<Record<string, JointNode>>,
): Record<string, HoldNode> {
  const { axle } = corner
  const found: Record<string, HoldNode> = {}
  for (const [name, hold] of Object.entries(corner.holds)) {
    const nodes = Object.values(parts).filter((part) => part.axle === axle && part.name === name)
    for (const node of nodes) {
      const here = (joint: string): readonly string[] =>
        Object.values(joints)
          .filter(
            ({ axle: its, name: called, side, joins }) =>
              its === axle &&
              called === joint &&
              (node.side === null ||
                side === null ||
                side === node.side ||
                joins.every((part) => parts[part]!.side === null)),
          )
          .map(({ id }) => id)
      const heldBy = hold.heldBy.map((set) => set.flatMap(here))
      const droopStop = (hold.droopStop ?? []).flatMap(here)
      found[node.id] = {
        id: node.id,
        called: node.called,
        axle,
        side: node.side,
        stores: 'stores' in node.file && node.file.stores ? node.file.stores : 'coil',
        heldBy,
        joints: [...new Set([...heldBy.flat(), ...droopStop])],
        standIns: standInsOf(hold, node),
        jackPath: jackPathOf(corner, node, heldBy, parts, joints),
        loose: node.kind === 'spring' && 'stores' in node.file && node.file.stores === 'coil',
      }
    }
  }
  return found
}

function standInsOf(hold: Corner['holds'][string], part: PartNode): readonly StandIn[] {
  const stores = 'stores' in part.file ? part.file.stores : undefined
  if (stores === 'air' || hold.letDown === 'air let out') return ['air let out']
  if (hold.standInKinds) return hold.standInKinds
  const words = (hold.standIn ?? []).join(' ')
  const found: StandIn[] = []
  if (/jack/.test(words)) found.push('jack under the arm')
  if (/compressor/.test(words)) found.push('spring compressor')
  if (found.length > 0) return found
  if (stores === 'torsion bar') return ['torsion bar unwound']
  if (stores === 'leaf') return ['axle on stands']
  return ['spring compressor']
}

/**
 * The joints that must go on holding while a jack carries the arm that the spring stands on: that arm's pivots.
 * An upper arm is not what a jack carries, so there all but the droop stop belong to it.
 */
function jackPathOf(
  corner: Corner,
  spring: PartNode,
  heldBy: readonly (readonly string[])[],
  parts: Readonly<Record<string, PartNode>>,
  joints: Readonly<Record<string, JointNode>>,
): readonly string[] {
  if (corner.layout === 'double-wishbone, coil on upper arm') return heldBy[0] ?? []
  const stands =
    spring.file.kind === 'spring' || spring.file.kind === 'damper'
      ? spring.file.between.filter((name) => !fixed(corner.parts[name]?.kind))
      : []
  return heldBy.flat().filter((id, i, all) => {
    const { joins } = joints[id]!
    return (
      all.indexOf(id) === i &&
      joins.some((part) => stands.includes(parts[part]!.name)) &&
      joins.some((part) => fixed(parts[part]!.kind))
    )
  })
}

const fixed = (kind: PartNode['kind'] | undefined) => kind === 'body' || kind === 'sub-frame'
