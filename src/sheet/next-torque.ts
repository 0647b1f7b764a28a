import type { Joint, StatedTorque } from '../fasten/index.ts'

/**
 * The torque that is pulled next at a joint, or would be pulled first: it decides which wrench is in the hand.
 *
 * @param made stages that are made
 * @returns null where nothing is pulled
 */
export function nextTorque({ procedure }: Joint, made: number): StatedTorque | null {
  switch (procedure.kind) {
    case 'hand snug':
      return null
    case 'castle slot':
      return { torque: procedure.floor, floor: procedure.floor, ceiling: procedure.ceiling }
    case 'seat and back off':
      return { torque: made > 1 && procedure.bringUpTo !== null ? procedure.bringUpTo : procedure.seat }
    case 'torque':
    case 'torque then angle':
      return procedure.stated
    case 'stages': {
      const rest = procedure.stages.slice(made).find(({ by }) => by === 'torque')
      const last = procedure.stages.findLast(({ by }) => by === 'torque')
      const stage = rest ?? last
      return stage?.by === 'torque' ? stage : null
    }
  }
}
