import type { Corner } from '../corner/index.ts'

type Joints = Record<string, Corner['joints'][string]>

/**
 * The joints that a file does not write because they follow from a part: a spring sits in its seats, a hose is held
 * by a bracket, a lead by clips. None where the file has a joint between the two.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function impliedJoints(corner: Corner): Joints {
  const found: Joints = {}
  const written = Object.values(corner.joints)
  const add = (part: string, other: string, kind: Corner['joints'][string]['kind'], name: string) => {
    if (written.some(({ joins }) => joins.includes(part) && joins.includes(other))) return
    found[`${part}-at-${other}`] = { kind, name, joins: [part, other] }
  }
  const told = (name: string) => (corner.parts[name]?.name ?? name).replaceAll('-', ' ')
  for (const [name, part] of Object.entries(corner.parts)) {
    if (part.kind === 'spring' || part.kind === 'damper')
      for (const other of part.between) {
        const kind = part.kind === 'spring' ? 'seat' : 'bolt'
        add(name, other, kind, `${kind} of the ${told(name)} at the ${told(other)}`)
      }
    else if (part.kind === 'lead' || part.kind === 'hose')
      for (const other of part.clippedTo) {
        const kind = part.kind === 'hose' ? 'hose bracket' : 'clip'
        const what = part.kind === 'hose' ? 'bracket' : 'clip'
        add(name, other, kind, `${what} of the ${told(name)} at the ${told(other)}`)
      }
  }
  return found
}
