/** Nanoseconds that `work` takes by the wall clock. */
export function timed(work: () => void): number {
  const before = process.hrtime.bigint()
  work()
  return Number(process.hrtime.bigint() - before)
}
