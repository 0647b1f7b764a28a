import type { StandIn } from './assembly.ts'

/** What is undone: one way to reach the goal. @source definition */
export interface Choice {
  /** Joints opened on the vehicle. */
  readonly open: ReadonlySet<string>
  /** Joints opened on the bench. */
  readonly bench: ReadonlySet<string>
  /** Parts that come off. */
  readonly off: ReadonlySet<string>
  readonly standIns: Readonly<Record<string, StandIn>>
  /** Springs that are let down to nothing or taken out. */
  readonly letDown: ReadonlySet<string>
  /** Corners that are raised to ride height by a jack, because a bush bolt is not reached with the wheel on. */
  readonly raised: ReadonlySet<string>
  /** Why each of them is in it. */
  readonly why: Readonly<Record<string, string>>
}
