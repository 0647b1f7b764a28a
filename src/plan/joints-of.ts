import type { Assembly, JointNode } from './assembly.ts'

/** The joints of a part, in the order of the file. @source definition */
export const jointsOf = (
  { joints, touching }: Pick<Assembly, 'joints' | 'touching'>,
  part: string,
): readonly JointNode[] => (touching[part] ?? []).map((id) => joints[id]!)
