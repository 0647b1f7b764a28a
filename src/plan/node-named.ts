import type { AxleName, Side } from './assembly.ts'

interface Placed {
  readonly name: string
  readonly axle: AxleName | null
  readonly side: Side | null
}

/**
 * The part or joint that a corner model's name means beside another one: on the same side, else the axle's own.
 *
 * @source definition
 */
export function nodeNamed<T extends Placed>(
  nodes: Readonly<Record<string, T>>,
  beside: Pick<Placed, 'axle' | 'side'>,
  name: string,
): T | undefined {
  const known = nodes[`${beside.axle} ${beside.side} ${name}`] ?? nodes[`${beside.axle} ${name}`]
  if (known) return known
  const all = Object.values(nodes).filter(
    (node) => node.name === name && (node.axle === beside.axle || node.axle === null),
  )
  return all.find((node) => node.side === beside.side) ?? all.find((node) => node.side === null) ?? all[0]
}
