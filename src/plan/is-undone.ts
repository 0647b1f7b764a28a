import type { Choice } from './choice.ts'

/** Whether a choice opens a joint, on the vehicle or on the bench. @source definition */
export const isUndone = (choice: Pick<Choice, 'open' | 'bench'>, joint: string): boolean =>
  choice.open.has(joint) || choice.bench.has(joint)
