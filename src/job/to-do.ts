import type { Kit } from '../kit/index.ts'
import type { JobState } from './job-state.ts'
import type { JointRecord } from './joint-record.ts'
import type { RequiredState } from './required-state.ts'
import type { WheelName } from './wheel-name.ts'

/** Why something of a joint is still open; I with a number is an interlock. @source definition */
export type ToDoRule =
  | 'not closed'
  | 'not final'
  | 'fell'
  | 'two values'
  | 'no value'
  | 'value'
  | 'stages'
  | 'condition'
  | 'wrench'
  | 'deviation'
  | 'I2'
  | 'I7'
  | 'I8'
  | 'I9'
  | 'I21'
  | 'I22'

/** One thing that is still open at a joint, why, and what to do now. @source definition */
export interface ToDo {
  readonly rule: ToDoRule
  /** The state at which it holds the joint; null when the joint may be done and something else is due. */
  readonly holdsAt: 'run up' | 'final' | null
  /** What puts it right: undone and begun anew, tightened (on), its pin, a second look, or nothing at the joint itself. */
  readonly mend: 'begin anew' | 'tighten' | 'pin' | 'look' | 'elsewhere'
  readonly entries: readonly number[]
  readonly sentence: string
  readonly remedy: string
}

/** All that is judged of one joint at one wheel, or of one axle. */
export interface JointCase {
  /** Under whose name the log speaks of it. */
  readonly wheels: readonly WheelName[]
  readonly joint: string
  /** "Lower front pivot bolt of the front right wheel". */
  readonly called: string
  readonly kind: string
  readonly adjuster: string | null
  readonly required: RequiredState
  readonly record: JointRecord
  readonly state: JobState
  readonly kit: Kit | null
}
