import type { AxleName, Place, Side } from './assembly.ts'
import type { RuleId } from './rule-id.ts'
import type { ThreePoint } from './three-point.ts'

/** What an action does. @source definition */
export type Verb =
  | 'record heights'
  | 'set pressures'
  | 'compare'
  | 'look whether it may be driven'
  | 'test drive'
  | 'chock'
  | 'mark'
  | 'mend'
  | 'look'
  | 'wait for part'
  | 'crack'
  | 'free'
  | 'open'
  | 'take off'
  | 'hang'
  | 'fit'
  | 'start'
  | 'run up'
  | 'connect'
  | 'final'
  | 'pin'
  | 'second check'
  | 'jack up'
  | 'stands'
  | 'see loaded'
  | 'lift'
  | 'lock arms'
  | 'tail support'
  | 'lower'
  | 'drive onto ramps'
  | 'drive off ramps'
  | 'jack under arm'
  | 'let down with the jack'
  | 'raise the arm'
  | 'raise to ride height'
  | 'jack away'
  | 'compress'
  | 'release compressor'
  | 'axle on stands'
  | 'axle off stands'
  | 'unwind'
  | 'wind'
  | 'levelling off'
  | 'levelling on'
  | 'deflate'
  | 'let air in'
  | 'steer'
  | 'hold steering wheel'
  | 'make airbag safe'
  | 'bleed'
  | 'pump pedal'
  | 'look at lamp'
  | 'check level sensor'
  | 'set height'
  | 'roll and settle'
  | 'read angles'
  | 'set camber and caster'
  | 'set toe'
  | 'see clearance'
  | 'centre steering wheel'
  | 'electronics'
  | 'appoint re-tightening'
  | 'road test'
  | 'hand over'
  | 'cap line'
  | 'tie up'
  | 'tag'

/** Something that must be so before an action; with a rule's name where it is there for safety. @source definition */
export interface Need {
  readonly key: string
  /** Any of these will do. */
  readonly is: readonly string[]
  readonly why: string
  readonly rule?: RuleId
  /** Customary: the planner keeps to it, and whoever does otherwise breaks nothing. */
  readonly custom?: true
}

/** What may go wrong with it, how often, and what that costs. @source definition */
export interface Risk {
  readonly what: string
  readonly chance: number
  readonly minutes: ThreePoint
}

/**
 * One action: what it changes, what must be so before, with which tool, where the hands are, how long it takes.
 * Plain data: `afterAction` applies its effects, `judgeOrder` looks at its needs and at the interlocks.
 *
 * @source definition
 */
export interface Action {
  readonly id: string
  readonly verb: Verb
  /** For people, one sentence without a full stop. */
  readonly words: string
  readonly joint?: string
  readonly part?: string
  readonly hold?: string
  readonly axle: AxleName | null
  readonly side: Side | null
  /** The manner and what was confirmed: `{ aid: 'heat' }`, `{ target: 'the sheet' }`. */
  readonly how: Readonly<Record<string, string>>
  readonly tool: string | null
  readonly place: Place
  readonly needs: readonly Need[]
  readonly effects: Readonly<Record<string, string>>
  readonly minutes: ThreePoint
  readonly risk: Risk | null
  readonly cautions: readonly string[]
  /** What must be written down with it. */
  readonly records: readonly string[]
  /** Why it is in the plan. */
  readonly why: string
}
