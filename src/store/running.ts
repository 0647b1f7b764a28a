import { readFileSync } from 'node:fs'
import { hostname } from 'node:os'

/** A running program, so that it is told from a later one with the same number. @source definition */
export interface Running {
  readonly pid: number
  readonly host: string
  /** When it started, as the system counts; null where the system does not say. */
  readonly since: string | null
}

/** This program. @source definition */
export const thisProgram = (): Running => ({
  pid: process.pid,
  host: hostname(),
  since: startOf(process.pid),
})

/**
 * Whether a program still runs. One on another machine may: it cannot be asked.
 *
 * @source POSIX.1-2017, kill (signal 0)
 */
export function isRunning({ pid, host, since }: Running): boolean {
  if (host !== hostname()) return true
  // Within this program one waits for the other before it looks at locks.
  if (pid === process.pid) return false
  try {
    process.kill(pid, 0)
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
  return since === null || since === startOf(pid)
}

/** Which start of the machine, and when since then: Linux says it. */
function startOf(pid: number): string | null {
  try {
    const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8')
    // The name in brackets may hold anything; the 22nd field is the 20th after it.
    return `${boot} ${stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19]}`
  } catch {
    return null
  }
}
