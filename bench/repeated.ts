import { quantile } from './quantile.ts'
import { timed } from './timed.ts'

/** Repeated runs of one piece of work, ms. */
export interface Repeated {
  readonly median: number
  readonly low: number
  readonly high: number
  /** Mean time on the processor, all threads of this process; below the wall's where the machine is busy. */
  readonly processor: number
  readonly runs: number
}

/** Times `work` by the wall clock, after some runs that do not count. */
export function repeated(work: () => void, { warm, runs }: { warm: number; runs: number }): Repeated {
  for (let i = 0; i < warm; i++) work()
  const before = process.cpuUsage()
  const times = Array.from({ length: runs }, () => timed(work) / 1e6)
  const { user, system } = process.cpuUsage(before)
  return {
    median: quantile(times, 0.5),
    low: quantile(times, 0.25),
    high: quantile(times, 0.75),
    processor: (user + system) / 1000 / runs,
    runs,
  }
}
