import { readFileSync, statSync } from 'node:fs'
import { BadInput } from './outcome.ts'

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file.',
  EISDIR: 'This is a folder, not a file.',
  EACCES: 'This file may not be read by you.',
}

/**
 * A file's bytes, or plain sentences about why there are none.
 *
 * @param most bytes; a larger file is not read at all
 * @param instead what to do about one that is too large
 */
export function readBytes(path: string, most: number, instead: string): Uint8Array {
  try {
    const { size } = statSync(path)
    const mega = (bytes: number) => Math.ceil(bytes / 1024 / 1024)
    if (size > most)
      throw new BadInput([
        `${path}: This file has ${mega(size)} MB, and more than ${mega(most)} MB is not taken. ${instead}`,
      ])
    return readFileSync(path)
  } catch (error) {
    if (error instanceof BadInput) throw error
    const code = (error as NodeJS.ErrnoException).code ?? ''
    throw new BadInput([
      `${path}: ${reasons[code] ?? `It cannot be read (${code}).`} Check the path and try again.`,
    ])
  }
}
