import { mkdirSync, writeFileSync } from 'node:fs'
import { cpus, loadavg } from 'node:os'
import { join } from 'node:path'
import { againstC } from './against-c.ts'
import { hardPointDraws } from './draws.ts'
import type { Finding, Skipped } from './finding.ts'
import { fourWheelsTime } from './four-wheels-time.ts'
import { movesTime } from './moves-time.ts'
import { pageSize } from './page-size.ts'
import { printed } from './printed.ts'
import { compileRival } from './rival.ts'
import { againstRootFinder } from './root-finder.ts'
import { sheetTime } from './sheet-time.ts'

type Work = readonly [string, () => Finding | Promise<Finding | readonly Finding[]>]

/**
 * Runs everything that is timed, prints it as it comes, and writes test-output/bench.json.
 *
 * @param page builds the first page and says in which folder it lies
 * @returns 0, or 1 when something could not run; a missed target is no failure
 */
export async function bench({ page }: { page: () => string }): Promise<0 | 1> {
  console.log(
    `Node ${process.versions.node}, ${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores`,
  )
  const load = loadavg()[0]!
  if (load > 0.75 * cpus().length)
    console.log(
      `Load ${load.toFixed(1)} on ${cpus().length} cores: the machine is busy. Ratios stand; milliseconds are longer than they need be.`,
    )
  const c = compileRival()
  console.log(typeof c === 'string' ? `${c}\n` : `${c.compiler}, ${c.flags}, no fast-math\n`)
  const work: Work[] = [
    ['poses against a general solver', againstRootFinder],
    ['draws', hardPointDraws],
    ['moves', movesTime],
    ['moves for four wheels', fourWheelsTime],
    ['sheet', sheetTime],
    ['first page', () => pageSize(page())],
  ]
  if (typeof c !== 'string') work.unshift(['poses against C', () => againstC(c)])
  const results: (Finding | Skipped)[] =
    typeof c === 'string' ? [{ what: 'poses against C', skipped: c }] : []
  let code: 0 | 1 = 0
  for (const [what, run] of work) {
    try {
      const found = [await run()].flat()
      for (const each of found) console.log(printed(each))
      results.push(...found)
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error)
      console.log(`${what}: could not run. ${why}\n`)
      results.push({ what, skipped: why })
      code = 1
    }
  }
  const judged = results.flatMap((each) => ('held' in each && each.held !== null ? [each] : []))
  const missed = judged.filter((each) => !each.held)
  console.log(
    `${judged.length - missed.length} of ${judged.length} targets held${missed.length > 0 ? `; missed: ${missed.map((each) => each.id).join(', ')}` : ''}`,
  )
  const folder = join(import.meta.dirname, '..', 'test-output')
  mkdirSync(folder, { recursive: true })
  const told = {
    node: process.versions.node,
    processor: cpus()[0]?.model ?? null,
    load,
    c: typeof c === 'string' ? c : `${c.compiler}, ${c.flags}`,
    results,
  }
  writeFileSync(join(folder, 'bench.json'), `${JSON.stringify(told, null, 2)}\n`)
  return code
}
