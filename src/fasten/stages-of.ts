import type { Joint } from './joint.ts'
import type { Stage } from './procedure.ts'

/** A procedure without pin or hub as its stages in order; none for the others. */
export function stagesOf({ procedure }: Joint): readonly Stage[] {
  if (procedure.kind === 'torque') return [{ by: 'torque', ...procedure.stated }]
  if (procedure.kind === 'torque then angle')
    return [
      { by: 'torque', ...procedure.stated },
      { by: 'turn', ...procedure.turn },
    ]
  return procedure.kind === 'stages' ? procedure.stages : []
}
