import { readFileSync } from 'node:fs'
import { type Corner, readCorner, readJsonText } from '../../../src/corner/index.ts'

/** A file of the examples as a plain value, fresh each time so that a test may spoil it. */
export function demo(path: string): Record<string, unknown> {
  const read = readJsonText(readFileSync(new URL(`../../../examples/${path}`, import.meta.url), 'utf8'))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value as Record<string, unknown>
}

/** The corner model of a demo vehicle. */
export function demoCorner(unit: '07' | '12'): Corner {
  const read = readCorner(demo(`port-unit-${unit}/front.corner.json`))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

/** Changes one member of a file's value; `undefined` takes it out. */
export function spoil(
  file: Record<string, unknown>,
  path: readonly (string | number)[],
  value: unknown,
): Record<string, unknown> {
  let there = file as Record<string | number, unknown>
  for (const step of path.slice(0, -1)) there = there[step] as Record<string | number, unknown>
  const last = path.at(-1)!
  if (value === undefined) delete there[last]
  else there[last] = value
  return file
}
