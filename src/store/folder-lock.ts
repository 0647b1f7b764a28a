import {
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  rmdirSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { fileTrouble } from './file-trouble.ts'
import { refused } from './refused.ts'
import { isRunning, type Running, thisProgram } from './running.ts'

/** A lock is written, and taken over, in less than this, ms. @source own choice */
const takingOver = 2_000

/**
 * Holds a folder for one program while it works in it. A lock that a program left when it was killed is taken over.
 *
 * @param patience how long another program is waited for, ms
 * @throws {Refusal} `busy`; `no-room`, `read-only`
 * @source own derivation: docs/methods/record.md
 */
export async function whileLocked<T>(folder: string, patience: number, work: () => Promise<T>): Promise<T> {
  const lock = join(folder, 'lock')
  const until = Date.now() + patience
  while (!taken(lock)) {
    const holder = heldBy(lock)
    if (!holder) continue
    if (holder.gone) takeOver(lock, holder.text)
    else if (Date.now() > until)
      throw refused(
        'busy',
        holder.text,
        `${folder}: Another program (process ${holder.running?.pid ?? 'unknown'} on ${holder.running?.host ?? 'this machine'}) is writing here.`,
        `Wait until it is done. If it runs no more, delete the file ${lock}.`,
      )
    await pause(10)
  }
  try {
    return await work()
  } finally {
    rmSync(lock, { force: true })
  }
}

function taken(lock: string): boolean {
  let file: number
  try {
    file = openSync(lock, 'wx')
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false
    throw fileTrouble(lock, error)
  }
  try {
    writeSync(file, `${JSON.stringify(thisProgram())}\n`)
    fsyncSync(file)
    return true
  } catch (error) {
    rmSync(lock, { force: true })
    throw fileTrouble(lock, error)
  } finally {
    closeSync(file)
  }
}

interface Holder {
  readonly text: string
  /** Null where the lock does not say: it is being written, or the power failed while it was. */
  readonly running: Running | null
  readonly gone: boolean
}

function heldBy(lock: string): Holder | null {
  try {
    const text = readFileSync(lock, 'utf8')
    const running = text.endsWith('\n') ? runningOf(text) : null
    const gone = running ? !isRunning(running) : Date.now() - statSync(lock).mtimeMs > takingOver
    return { text, running, gone }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw fileTrouble(lock, error)
  }
}

function runningOf(text: string): Running | null {
  try {
    const { pid, host, since = null } = JSON.parse(text) as Partial<Running>
    return Number.isInteger(pid) && typeof host === 'string' ? { pid: pid as number, host, since } : null
  } catch {
    return null
  }
}

/** One at a time looks once more whether the lock is still the dead one's, and takes it away. */
function takeOver(lock: string, seen: string): void {
  const guard = `${lock}.taking`
  try {
    mkdirSync(guard)
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code !== 'EEXIST') throw fileTrouble(guard, error)
    if (Date.now() - (statSync(guard, { throwIfNoEntry: false })?.mtimeMs ?? Date.now()) > takingOver)
      rmdirSync(guard)
    return
  }
  try {
    if (heldBy(lock)?.text === seen) rmSync(lock, { force: true })
  } finally {
    rmdirSync(guard)
  }
}
