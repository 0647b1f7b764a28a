import { readFileSync } from 'node:fs'
import { readAny } from '../../job/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { problemLines } from '../files/problem-lines.ts'

const called = { corner: 'corner model', spec: 'spec sheet', kit: 'kit', job: 'job' } as const

/** `axlewright check FILE…`: every fault of every file, in one go. */
export function checkCommand(files: readonly string[]): Outcome {
  const lines: string[] = []
  let faults = 0
  for (const file of files) {
    let text: string
    try {
      text = readFileSync(file, 'utf8')
    } catch (error) {
      lines.push(`${file}: it cannot be read (${(error as NodeJS.ErrnoException).code}). Check the path.`)
      faults++
      continue
    }
    const reading = readAny({ name: file, text })
    if (reading.ok) lines.push(`${file}: fine (${called[reading.value.format]}, format 1)`)
    else {
      lines.push(...problemLines(file, reading.problems))
      faults += reading.problems.length
    }
  }
  const end = faults === 0 ? [] : [`${faults} ${faults === 1 ? 'fault' : 'faults'} to mend.`]
  return { out: `${[...lines, ...end].join('\n')}\n`, code: faults === 0 ? 0 : 2 }
}
