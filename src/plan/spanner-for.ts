import { inMillimetres } from '../quantity/index.ts'
import type { JointNode } from './assembly.ts'
import { jointHabits } from './joint-habits.ts'

/**
 * What turns a joint's fastener, as a tool's name: "spanner 24 mm"; null where nothing is turned.
 *
 * @source definition
 */
export function spannerFor({ kind, file }: Pick<JointNode, 'kind' | 'file'>): string | null {
  const size = file.spanner === undefined ? null : `${Number(inMillimetres(file.spanner).toFixed(1))} mm`
  if (kind === 'wheel nuts') return size ? `socket ${size}` : 'wheel nut socket'
  if (size) return `spanner ${size}`
  if (!jointHabits[kind].threaded && kind !== 'spline' && kind !== 'press fit') return null
  return file.thread ? `spanner for ${file.thread}` : 'spanner'
}
