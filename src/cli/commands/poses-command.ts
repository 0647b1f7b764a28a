import type { Outcome } from '../files/outcome.ts'
import { readJsonFile } from '../files/read-json-file.ts'
import { posesOf } from '../poses/index.ts'

/** `axlewright poses FILE`: the exchange format for checking the geometry against other programs. */
export function posesCommand(file: string): Outcome {
  const { output, ok } = posesOf(readJsonFile(file))
  return { out: `${JSON.stringify(output)}\n`, code: ok ? 0 : 2 }
}
