import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { BadInput } from '../files/outcome.ts'

/** The job folders at a place: itself where it is one, else those that stand in it. */
export function jobFoldersAt(place: string): readonly string[] {
  const hasLog = (folder: string) =>
    (statSync(join(folder, 'log.jsonl'), { throwIfNoEntry: false })?.size ?? 0) > 0
  try {
    if (hasLog(place)) return [place]
    return readdirSync(place, { withFileTypes: true })
      .filter((one) => one.isDirectory() && hasLog(join(place, one.name)))
      .map((one) => join(place, one.name))
      .sort()
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    throw new BadInput([
      `${place}: ${code === 'ENOENT' ? 'There is no such folder.' : `It cannot be read (${code}).`} Name the folder in which the job folders stand.`,
    ])
  }
}
