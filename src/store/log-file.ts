import { closeSync, fstatSync, fsyncSync, ftruncateSync, openSync, readSync, statSync } from 'node:fs'
import { appendSynced } from './append-synced.ts'
import { fileTrouble } from './file-trouble.ts'
import { type LogSoFar, logSoFar } from './log-so-far.ts'
import { readLog } from './read-log.ts'
import { refused } from './refused.ts'

/** No log comes near it, bytes. @source own choice */
const most = 256 * 1024 * 1024

/** A log's file as far as it was read; what is appended later is read alone. @source definition */
export interface LogFile extends LogSoFar {
  readonly ino: number
  readonly size: number
}

/**
 * Reads a log's file, or what was appended since it was read before.
 *
 * @throws {Refusal} `no-job`, `no-folder`, `read-only`, `unreadable`
 * @source own derivation: docs/methods/record.md
 */
export const logFile = (path: string, before: LogFile | null): LogFile =>
  inFile(path, (file, { ino, size }) => {
    const base = before && before.ino === ino && before.whole <= size ? before : null
    const bytes = bytesFrom(file, base?.whole ?? 0, size)
    return { ino, size, ...logSoFar(base, readLog(bytes, base?.lines)) }
  })

/**
 * All bytes of a log's file.
 *
 * @throws {Refusal} `no-job`, `no-folder`, `read-only`, `unreadable`
 * @source own derivation: docs/methods/record.md
 */
export const logBytes = (path: string): Uint8Array =>
  inFile(path, (file, { size }) => bytesFrom(file, 0, size))

function inFile<T>(path: string, read: (file: number, stat: { ino: number; size: number }) => T): T {
  try {
    // Asked before it is opened: opening a pipe would wait for whoever writes into it.
    const stat = statSync(path)
    if (!stat.isFile() || stat.size > most)
      throw refused(
        'unreadable',
        `${stat.size} bytes`,
        `${path}: This is no log of a job: it is ${stat.isFile() ? 'too long' : 'no file'}.`,
        'Name the folder of a job.',
      )
    const file = openSync(path, 'r')
    try {
      return read(file, fstatSync(file))
    } finally {
      closeSync(file)
    }
  } catch (error) {
    throw fileTrouble(path, error)
  }
}

function bytesFrom(file: number, from: number, size: number): Uint8Array {
  const bytes = new Uint8Array(size - from)
  let at = 0
  for (let got = -1; at < bytes.length && got !== 0; at += got)
    got = readSync(file, bytes, at, bytes.length - at, from + at)
  return bytes.subarray(0, at)
}

/**
 * Puts the end of a log right: a torn last line is cut off, an entry that lacks only its end is given it. Nothing else is
 * ever touched.
 *
 * @throws {Refusal} `no-room`, `read-only`
 * @source own derivation: docs/methods/record.md
 */
export function mendEnd(path: string, { tail, whole, size }: LogFile): void {
  if (tail === 'lacks its end') appendSynced(path, size, Uint8Array.of(10))
  if (tail !== 'torn') return
  try {
    const file = openSync(path, 'r+')
    try {
      ftruncateSync(file, whole)
      fsyncSync(file)
    } finally {
      closeSync(file)
    }
  } catch (error) {
    throw fileTrouble(path, error)
  }
}
