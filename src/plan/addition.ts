import type { StandIn } from './assembly.ts'

/** What one alternative adds to a choice, and why. @source definition */
export interface Addition {
  readonly open?: readonly string[]
  readonly bench?: readonly string[]
  readonly off?: readonly string[]
  readonly standIn?: readonly [hold: string, standIn: StandIn]
  readonly letDown?: string
  readonly raised?: string
  readonly why: string
}
