import type { JointNode } from './assembly.ts'

/** Whether a joint is closed by a pin. @source definition */
export const hasPin = ({ kind, file }: Pick<JointNode, 'kind' | 'file'>): boolean =>
  kind === 'tapered stud, castle nut' || file.pin !== undefined || file.reuse === 'new pin'
