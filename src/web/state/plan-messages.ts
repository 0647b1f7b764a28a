import type { PlanSheet } from '../../sheet/index.ts'
import type { Edit, Plain } from './messages.ts'

/** What a person chose about a plan; kept beside the job's edits. */
export interface PlanChoice {
  /** What is replaced, by the assembly's ids; null for what the log says. */
  readonly goal: readonly string[] | null
  /** What carries the vehicle; null for what the kit has. */
  readonly support: 'lift' | 'jack and stands' | null
  /** The actions in the person's own order; null for ours. */
  readonly order: readonly string[] | null
  /** Leave it so that it can stand or roll, instead of finishing. */
  readonly make: 'safe to stand' | 'safe to roll' | null
  /** Look longer for a shorter order. */
  readonly longer: boolean
}

/** A plan as nobody has chosen anything. */
export const noChoice: PlanChoice = { goal: null, support: null, order: null, make: null, longer: false }

/** What the page asks about a job's plan. */
export interface PlanAsk {
  readonly turn: number
  readonly job: string
  /** Of the log, as its row has it. */
  readonly version: string
  readonly edits: readonly Edit[]
  readonly choice: PlanChoice
}

/** What comes back. */
export interface PlanAnswer {
  readonly turn: number
  readonly sheet: PlanSheet | null
  readonly trouble: Plain | null
}
