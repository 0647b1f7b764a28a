import type { Action } from './action.ts'
import type { Place } from './assembly.ts'
import type { Consequence } from './consequence.ts'
import type { NeededActions } from './needed-actions.ts'
import type { RuleId } from './rule-id.ts'
import type { Shopping } from './shopping.ts'
import type { MissingTool } from './tools-against-kit.ts'

/** One line of a plan: one action, with what it waits for. @source definition */
export interface PlanLine {
  readonly action: Action
  /** The joint's letter on the drawing. */
  readonly letter: string | null
  readonly tool: string | null
  readonly place: Place
  /** The joint whose value of the sheet belongs here; null where nothing is tightened to a value. */
  readonly value: string | null
  readonly cautions: readonly string[]
  readonly why: string
  readonly waitsFor: readonly PlanWait[]
  readonly waitedForBy: readonly string[]
}

/** Another action that must come first, and why. @source definition */
export interface PlanWait {
  readonly action: string
  readonly why: string
  readonly rule: RuleId | null
}

/** Lines that are done while the vehicle stands as it stands. @source definition */
export interface PlanBand {
  /** "on its wheels", "front on stands, wheels hanging", "jack under the front left arm". */
  readonly station: string
  readonly lines: readonly PlanLine[]
}

/** A plan: bands of lines, its time, what proves that no order is shorter, what follows, what to have. @source definition */
export interface Plan {
  readonly bands: readonly PlanBand[]
  readonly needed: NeededActions
  /** Minutes; expected minutes of changing tool, place and side are in them. */
  readonly minutes: { readonly p50: number; readonly p90: number }
  /** Minutes of changes between actions in this order, and the least that any order can have. */
  readonly changes: { readonly minutes: number; readonly bound: number }
  readonly proven: boolean
  readonly consequences: readonly Consequence[]
  readonly shopping: Shopping
  readonly missing: readonly MissingTool[]
  /** What the state had behind it, in words, in the order of the whole; empty from a sound vehicle. */
  readonly done: readonly string[]
  /** What can no longer be done as it should have been, for people. */
  readonly troubles: readonly string[]
}
