import type { JointIs } from './state.ts'

const stages: readonly JointIs[] = [
  'closed',
  'cracked',
  'retained',
  'open',
  'started',
  'run up',
  'final',
  'checked',
]

/**
 * How far a joint has come on its way there and back: 0 closed, 3 open, 7 checked.
 *
 * @source definition
 * @example jointStageOf('open') // 3
 */
export const jointStageOf = (is: string): number => stages.indexOf(is as JointIs)
