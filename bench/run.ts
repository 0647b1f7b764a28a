import { mkdirSync, writeFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { join } from 'node:path'
import { againstC } from './against-c.ts'
import { hardPointDraws } from './draws.ts'
import type { Finding, Skipped } from './finding.ts'
import { printed } from './printed.ts'
import { compileRival } from './rival.ts'
import { againstRootFinder } from './root-finder.ts'

const results: (Finding | Skipped)[] = []
const add = (...more: readonly (Finding | Skipped)[]): void => {
  for (const each of more) {
    console.log(printed(each))
    results.push(each)
  }
}

console.log(
  `Node ${process.versions.node}, ${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores`,
)
const c = compileRival()
if (typeof c === 'string') add({ id: 'against C', what: 'Poses against C', skipped: c })
else {
  console.log(`${c.compiler}, ${c.flags}, no fast-math\n`)
  add(...(await againstC()))
}
add(await againstRootFinder())
add(hardPointDraws())

const folder = join(import.meta.dirname, '..', 'test-output')
mkdirSync(folder, { recursive: true })
writeFileSync(
  join(folder, 'bench.json'),
  `${JSON.stringify({ node: process.versions.node, c, results }, null, 2)}\n`,
)
