import type { NewtonMetre, Radian } from '../quantity/index.ts'
import type { Act } from './act.ts'

/** A number on a doing screen: on the scale of the wrench in the hand, with the fastener's beside it. @source definition */
export interface StepFigure {
  readonly label: 'torque' | 'floor' | 'ceiling' | 'forward' | 'back'
  /** A mark of the wrench; null where an angle is meant, or no wrench is in the hand. */
  readonly onWrench: NewtonMetre | null
  readonly atFastener: NewtonMetre | null
  readonly angle: Radian | null
}

/** One step as the person meets it. @source definition */
export interface Step {
  readonly act: Act['act']
  readonly doing: string
  /** What tells that it is reached; null where nothing does. */
  readonly hearing: string | null
  readonly recording: string
  /** What must be said here; null where nothing must. */
  readonly caution: string | null
  readonly figures: readonly StepFigure[]
}
