import { readFileSync, statSync } from 'node:fs'
import { readJsonText } from '../../corner/index.ts'
import { BadInput } from './outcome.ts'

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file.',
  EISDIR: 'This is a folder, not a file.',
  EACCES: 'This file may not be read by you.',
}

/** No job comes near it; a file beyond it would only fill the memory. Bytes. */
const most = 64 * 1024 * 1024

/** A file's plain value, or plain sentences about why there is none. */
export function readJsonFile(path: string): unknown {
  let text: string
  try {
    const { size } = statSync(path)
    if (size > most)
      throw new BadInput([
        `${path}: This file has ${Math.round(size / 1024 / 1024)} MB, and more than ${most / 1024 / 1024} MB is not read. Check that it is the file you mean.`,
      ])
    text = readFileSync(path, 'utf8')
  } catch (error) {
    if (error instanceof BadInput) throw error
    const code = (error as NodeJS.ErrnoException).code ?? ''
    throw new BadInput([
      `${path}: ${reasons[code] ?? `It cannot be read (${code}).`} Check the path and try again.`,
    ])
  }
  const reading = readJsonText(text)
  if (reading.ok) return reading.value
  throw new BadInput(
    reading.problems.map((p) => `${path}, ${p.field}: ${p.wrong} Right would be ${p.right}.`),
  )
}
