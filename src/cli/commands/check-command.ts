import { readFileSync } from 'node:fs'
import { type AnyFile, checkTogether, readAny } from '../../job/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { problemLines } from '../files/problem-lines.ts'

const called = { corner: 'corner model', spec: 'spec sheet', kit: 'kit', job: 'job' } as const

/** `axlewright check FILE…`: every fault of every file, and what they say against each other, in one go. */
export function checkCommand(files: readonly string[]): Outcome {
  const faults = new Map<string, readonly string[]>()
  const sound: { name: string; file: AnyFile }[] = []
  for (const name of files) {
    const text = textOf(name)
    if (text === null) {
      faults.set(name, [`${name}: it cannot be read. Check the path.`])
      continue
    }
    const reading = readAny({ name, text })
    if (reading.ok) sound.push({ name, file: reading.value })
    else faults.set(name, problemLines(name, reading.problems))
  }
  for (const { name, problems } of checkTogether(sound)) faults.set(name, problemLines(name, problems))
  const lines = files.flatMap((name) => {
    const wrong = faults.get(name)
    const format = sound.find((one) => one.name === name)?.file.format
    return wrong ?? (format ? [`${name}: fine (${called[format]}, format 1)`] : [])
  })
  const count = [...faults.values()].reduce((sum, list) => sum + list.length, 0)
  const end = count === 0 ? [] : [`${count} ${count === 1 ? 'fault' : 'faults'} to mend.`]
  return { out: `${[...lines, ...end].join('\n')}\n`, code: count === 0 ? 0 : 2 }
}

function textOf(path: string): string | null {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return null
  }
}
