import { type Joint, largestAdvance, type Step, tighteningSequence } from '../fasten/index.ts'
import { Nm, rad } from '../quantity/index.ts'
import type { DoingDrawing } from './bolt-sheet.ts'

/** Fewest fasteners that make a ring. */
const RING = 3

/**
 * What is drawn at a joint: the slots of a castle nut, the order round a ring, the turn after a torque.
 *
 * @param count of its fasteners; null where it is one
 */
export function doingDrawing(joint: Joint, step: Step | null, count: number | null): DoingDrawing | null {
  const { procedure } = joint
  if (procedure.kind === 'castle slot')
    return { kind: 'castle nut', slots: procedure.slots, pitch: largestAdvance(procedure) }
  if (step?.act === 'turn') return { kind: 'turn', angle: step.figures[0]!.angle! }
  if (step?.act === 'back off') return { kind: 'turn', angle: rad(-step.figures[0]!.angle!) }
  if (count !== null && count >= RING) {
    const { order } = tighteningSequence({ count, stages: [Nm(1)] })
    return { kind: 'ring', order: order.map((number) => number - 1), count }
  }
  return null
}
