import type { ThreadCondition } from './friction.ts'
import type {
  CastleSlot,
  HandSnug,
  SeatAndBackOff,
  Staged,
  TorqueProcedure,
  TorqueThenAngle,
} from './procedure.ts'
import type { Thread } from './thread.ts'

/** What must hold while a joint is made final. @source common practice, no source */
export type Position = 'ride height' | 'wheels straight' | 'on the ground' | 'after the last move'

/** What every joint has, whatever its kind. @source definition */
export interface JointFacts {
  readonly name: string
  /** Null when nobody has read it: the typed value then goes unchecked. */
  readonly thread: Thread | null
  readonly strength: string | null
  /** As stated; what rubber asks for comes on top by itself. */
  readonly positions: readonly Position[]
  /** Fastener new before final. */
  readonly singleUse: boolean
  /** As stated; null when the information says nothing. */
  readonly condition: ThreadCondition | null
  /** A bonded bush is final only at ride height, a rubber-bonded tie-rod end only with wheels straight. */
  readonly rubber: 'none' | 'bonded bush' | 'tie-rod end'
}

/** A bolt, nut or stud. @source definition */
export interface BoltedJoint extends JointFacts {
  readonly kind: 'bolted'
  readonly procedure: TorqueProcedure | TorqueThenAngle | Staged | HandSnug | CastleSlot
}
/** A stud with a taper: castle nut with pin, or a nut that locks itself. @source definition */
export interface TaperedStud extends JointFacts {
  readonly kind: 'tapered stud'
  readonly procedure: TorqueProcedure | TorqueThenAngle | Staged | CastleSlot
}
/** A hub whose bearings are set by its nut. Nothing but seat and back off fits it, and that fits nothing else. @source definition */
export interface AdjustableHub extends JointFacts {
  readonly kind: 'adjustable taper-roller hub'
  readonly procedure: SeatAndBackOff
}

/** A joint's kind and procedure go together; what does not is not a `Joint`. @source definition */
export type Joint = BoltedJoint | TaperedStud | AdjustableHub

/**
 * Positions in which a joint is made final: the stated ones, and the one its rubber asks for.
 *
 * @source common practice, no source
 * @example positionsOf({ ...lowerBall, rubber: 'tie-rod end' }) // ['wheels straight']
 */
export function positionsOf({ positions, rubber }: JointFacts): readonly Position[] {
  const asked = rubberPosition[rubber]
  return asked === null || positions.includes(asked) ? positions : [...positions, asked]
}

/** What rubber asks for at every pull, not the last alone: the first one clamps it. */
export const rubberPosition: Readonly<Record<JointFacts['rubber'], Position | null>> = {
  none: null,
  'bonded bush': 'ride height',
  'tie-rod end': 'wheels straight',
}

/**
 * How a second pair of eyes proves a joint: a joint turned by angle is not pulled again.
 *
 * @source common practice, no source
 * @example secondCheckOf(lowerBall) // 'pin and slot looked at'
 */
export function secondCheckOf({
  procedure,
}: Joint):
  | 'pulled again at the same setting'
  | 'mark and record'
  | 'pin and slot looked at'
  | 'end float and pin'
  | 'felt by hand' {
  if (procedure.kind === 'castle slot') return 'pin and slot looked at'
  if (procedure.kind === 'seat and back off') return 'end float and pin'
  if (procedure.kind === 'hand snug') return 'felt by hand'
  const turned =
    procedure.kind === 'torque then angle' ||
    (procedure.kind === 'stages' && procedure.stages.some(({ by }) => by === 'turn'))
  return turned ? 'mark and record' : 'pulled again at the same setting'
}
