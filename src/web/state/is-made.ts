import { foldJob, type Job } from '../../job/index.ts'

/** Whether adjusters were turned after the last readings. A round without readings is not yet one to go by. */
export function isMade({ entries }: Job): boolean {
  const last = foldJob(entries).rounds.findLast(({ readings }) => readings.length > 0)
  return (last?.moves.length ?? 0) > 0
}
