import { writeFileSync } from 'node:fs'
import { BadInput } from './outcome.ts'

/**
 * Writes a file, or says why it cannot.
 *
 * @param replace whether one that exists may be overwritten
 */
export function writeTextFile(path: string, text: string, { replace }: { readonly replace: boolean }): void {
  try {
    writeFileSync(path, text, { flag: replace ? 'w' : 'wx' })
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    throw new BadInput([
      code === 'EEXIST'
        ? `${path} is there already, and was left as it is. Name another file, or say --overwrite.`
        : `${path} cannot be written (${code}). Name a file in a folder that exists.`,
    ])
  }
}
