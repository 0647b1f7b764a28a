import { wholeFile } from './whole-file.ts'

/**
 * Writes a file whole or not at all: beside its place, synced, then moved there.
 *
 * @param replace whether one that is there may give way
 * @param mode rights of the file; a secret is for its owner alone
 * @throws {Refusal} `there-already`; `no-room`, `read-only`
 * @source POSIX.1-2017, rename, fsync
 */
export function writeWhole(
  path: string,
  said: string | Uint8Array,
  how: { readonly replace: boolean; readonly mode?: number },
): void {
  const file = wholeFile(path, how)
  try {
    file.add(typeof said === 'string' ? new TextEncoder().encode(said) : said)
    file.settle()
  } catch (error) {
    file.undo()
    throw error
  }
}
