import { readFileSync } from 'node:fs'
import { readJsonText } from '../../corner/index.ts'
import { BadInput } from './outcome.ts'

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file.',
  EISDIR: 'This is a folder, not a file.',
  EACCES: 'This file may not be read by you.',
}

/** A file's plain value, or plain sentences about why there is none. */
export function readJsonFile(path: string): unknown {
  let text: string
  try {
    text = readFileSync(path, 'utf8')
  } catch (error) {
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
