import type { LogSoFar } from './log-so-far.ts'
import type { KeptLog } from './log-store.ts'

/**
 * A log that was read, as a store gives it.
 *
 * @param told what concerns a person
 * @source definition
 */
export function keptLog({ entries, last, spoilt }: LogSoFar, told: readonly string[]): KeptLog {
  const all = last ? [...entries, last] : entries
  const [first] = all
  return { whose: first ? { workshop: first.workshop, job: first.job } : null, entries: all, spoilt, told }
}
