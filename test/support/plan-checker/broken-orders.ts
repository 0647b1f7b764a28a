import type { Corner } from '../../../src/corner/index.ts'
import type { Action, Goal } from '../../../src/plan/index.ts'
import { brokenElsewhere } from './broken-elsewhere.ts'
import { brokenOnTheBus } from './broken-on-the-bus.ts'

/** An order that breaks one rule. Each is an order of the trade with one thing done wrong. */
export interface BrokenOrder {
  readonly rule: string
  readonly name: string
  readonly corner: Corner
  readonly aim: Goal
  readonly order: readonly Action[]
}

export const brokenOrders: readonly BrokenOrder[] = [...brokenOnTheBus, ...brokenElsewhere]
