import type { Assembly, JointNode } from './assembly.ts'
import type { Choice } from './choice.ts'
import { jointsOf } from './joints-of.ts'
import { nodeNamed } from './node-named.ts'

/**
 * Whether a joint is undone before a piece of several parts comes off: it holds the piece, or it must be open before
 * what holds the piece is reached.
 *
 * @param piece parts that come off as one
 * @source own derivation: docs/methods/plan.md
 */
export function opensBefore(
  assembly: Assembly,
  choice: Choice,
  joint: JointNode,
  piece: readonly string[],
): boolean {
  if (joint.joins.some((part) => piece.includes(part))) return true
  if (piece.length < 2 || !choice.open.has(joint.id)) return false
  const before = piece.flatMap((part) => jointsOf(assembly, part)).filter(({ id }) => choice.open.has(id))
  for (const one of before)
    for (const { jointOpen } of one.file.access ?? []) {
      const other = jointOpen ? nodeNamed(assembly.joints, one, jointOpen) : undefined
      if (other?.id === joint.id) return true
      if (other && !before.includes(other)) before.push(other)
    }
  return false
}
