import type { Outcome } from '../files/outcome.ts'
import { readJsonFile } from '../files/read-json-file.ts'
import { posesOf } from '../poses/index.ts'

const patience = 1000

/** `axlewright poses FILE`: the exchange format for checking the geometry against other programs. */
export function posesCommand(file: string): Outcome {
  const started = Date.now()
  const { output, ok } = posesOf(readJsonFile(file), (done, total) => {
    // only where somebody watches, and only when it takes long enough to wonder
    if (process.stderr.isTTY && Date.now() - started > patience)
      process.stderr.write(`\r${done} of ${total} answered${done === total ? '\n' : ' …'}`)
  })
  return { out: `${JSON.stringify(output)}\n`, code: ok ? 0 : 2 }
}
