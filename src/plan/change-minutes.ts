import type { Action } from './action.ts'

/**
 * Minutes that go by between two actions: another tool, hands in another place, another side, another axle.
 *
 * @source from memory
 */
const each = { tool: 0.5, place: 0.5, side: 0.6, axle: 0.8 } as const

/** What a change from one action to the next is made of, minutes. @source definition */
export interface ChangeMinutes {
  readonly tool: number
  readonly place: number
  readonly side: number
  readonly axle: number
}

/**
 * What it costs to go from one action straight to the next.
 *
 * @source own derivation: docs/methods/plan.md; minutes from memory
 */
export function changeMinutes(from: Action, to: Action): ChangeMinutes {
  const moves = (a: string | null, b: string | null) => a !== null && b !== null && a !== b
  return {
    tool: to.tool !== null && from.tool !== to.tool ? each.tool : 0,
    place: from.place !== to.place ? each.place : 0,
    side: moves(from.side, to.side) ? each.side : 0,
    axle: moves(from.axle, to.axle) ? each.axle : 0,
  }
}
