import type { JobState } from './job-state.ts'

/** What can be cleared. */
export const clearable: readonly string[] = ['deviation', 'follow-up', 'not road-ready']

/**
 * The entry that cleared a deviation, a follow-up or a "not road-ready".
 *
 * @param entry place of the deviation in the log
 * @returns null while it is open
 * @source definition
 * @example clearedBy({ cleared: [] }, 4) // null
 */
export function clearedBy({ cleared }: Pick<JobState, 'cleared'>, entry: number): number | null {
  return cleared.find(({ of }) => of === entry)?.entry ?? null
}
