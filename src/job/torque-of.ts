import type { JobState } from './job-state.ts'

type Tightening = JobState['tightenings'][number]

/** Two texts say the same torque or angle when they differ by no more than rounding of a conversion. */
export const SAME_TORQUE = 5e-3

/**
 * What a joint received, as far as the entry says: its torque, or what was set on a wrench without an adapter.
 *
 * @returns N·m; null where it is not said
 * @source definition
 */
export function torqueOf({ torque, setting, adapter }: Tightening): number | null {
  return torque?.value ?? (adapter ? null : (setting?.value ?? null))
}
