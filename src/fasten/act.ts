import type { Metre, NewtonMetre, Radian } from '../quantity/index.ts'
import type { ThreadCondition } from './friction.ts'
import type { Position } from './joint.ts'
import type { WrenchInHand } from './torque-received.ts'

/** One thing done to a joint. @source definition */
export type Act =
  | { readonly act: 'fit'; readonly fastener: 'new' | 'used' }
  | { readonly act: 'run up' }
  | { readonly act: 'snug' }
  /** A torque stage, or a castle nut's floor. */
  | { readonly act: 'pull'; readonly with: WrenchInHand }
  /** A stage by angle; forward is +. */
  | { readonly act: 'turn'; readonly angle: Radian }
  /** Castle nut: the wrench stands on the ceiling while it turns; forward is +. */
  | {
      readonly act: 'to slot'
      readonly with: WrenchInHand
      readonly angle: Radian
      readonly clicked: boolean
    }
  | { readonly act: 'pin'; readonly pin: 'new' | 'used' }
  /** Hub: seated while it turns. */
  | { readonly act: 'seat'; readonly with: WrenchInHand; readonly turning: boolean }
  | { readonly act: 'back off'; readonly angle: Radian }
  /** Hub: brought up again after backing off. */
  | { readonly act: 'bring up'; readonly with: WrenchInHand }
  | { readonly act: 'end float'; readonly read: Metre }
  | { readonly act: 'undo'; readonly tool: 'torque wrench' | 'other tool' }

/** The moment of an act. @source definition */
export interface Now {
  /** What holds, as recorded. */
  readonly positions: readonly Position[]
  /** The thread as found; null when nobody looked. */
  readonly condition: ThreadCondition | null
  /** "2026-11-25" */
  readonly today: string
  readonly uncalibrated?: 'refuse' | 'warn' | undefined
}

/** What an act leaves in the record. @source definition */
export interface ActRecord {
  readonly act: Act['act']
  readonly today: string
  readonly wrench: string | null
  readonly adapter: string | null
  /** On the wrench, and what the fastener received by it. */
  readonly setting: NewtonMetre | null
  readonly torque: NewtonMetre | null
  readonly angle: Radian | null
}

/** How far a joint is. @source definition */
export interface JointState {
  readonly stage:
    | 'open'
    | 'run up'
    | 'part made'
    | 'at floor'
    | 'stopped'
    | 'in slot'
    | 'seated'
    | 'backed off'
    | 'brought up'
    | 'float read'
    | 'final'
  /** Stages made. */
  readonly made: number
  readonly fastener: 'unknown' | 'new' | 'used'
  readonly records: readonly ActRecord[]
  readonly warnings: readonly string[]
}

/** Nothing done yet. @source definition */
export const openJoint: JointState = {
  stage: 'open',
  made: 0,
  fastener: 'unknown',
  records: [],
  warnings: [],
}
