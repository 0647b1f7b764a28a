import type { AxleEnd, Side } from '../linkage/index.ts'
import type { SuspectKind } from './suspect-kind.ts'

/**
 * One thing that may be wrong. Two suspects are the same when all four members are.
 *
 * @source definition
 */
export interface Suspect {
  readonly kind: SuspectKind
  /** Null for what belongs to no axle: a gauge, the floor. */
  readonly axle: AxleEnd | null
  /** Null for what both wheels of an axle share, or the whole vehicle. */
  readonly side: Side | null
  /**
   * Which of several of its kind: a bush, ball joint or kingpin by its joint in the corner model, an eccentric or slipped
   * adjuster by its adjuster, a link or a wrong part by its part, a gauge by its name ("camber gauge"); else null.
   */
  readonly at: string | null
}
