import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { basename, join } from 'node:path'
import { bestOrder, type OrderProblem } from '../src/plan/index.ts'
import { inventedWork } from './invented-work.ts'
import { mixedInteger, type SolverAnswer } from './mixed-integer.ts'
import { readSop } from './read-sop.ts'
import { sopKnown } from './sop-known.ts'

const ourSeconds = 30

interface Row {
  readonly name: string
  readonly problem: OrderProblem
  readonly known: number | null
}

/**
 * Orders every instance of a folder (TSPLIB 95, `*.sop`) and some invented two-sided work, in turn by our search and by a
 * general mixed-integer solver, and prints what both reached. `best-known.json` in the folder goes before the published values.
 *
 * @param theirSeconds processor time for the general solver on each
 * @returns 0; 1 where the two contradict each other, or an answer its proof
 */
export async function sopBench(folder = process.env['SOP_FOLDER'], theirSeconds = 60): Promise<0 | 1> {
  const rows = [...(folder === undefined ? [] : instancesOf(folder)), ...inventedRows()]
  if (folder === undefined)
    console.log(
      'No folder of instances was given (npm run bench -- sop FOLDER [SECONDS]): only invented work is ordered.',
    )
  const solver = await mixedInteger()
  console.log(
    `Node ${process.versions.node}, ${cpus()[0]?.model ?? 'unknown processor'}. Ours: at most ${ourSeconds} s.\n` +
      `highs ${solver.version}, a general mixed-integer solver (one thread): places and steps, lifted; at most ${theirSeconds} s.\nSeconds are processor time.\n`,
  )
  const heads = [
    'instance',
    'size',
    'pairs',
    'known',
    'found',
    'bound',
    'gap',
    'proven',
    's',
    '|',
    'highs found',
    'bound',
    'gap',
    'proven',
    's',
  ]
  const widths = [13, 5, 6, 7, 8, 9, 8, 7, 7, 2, 12, 9, 8, 7, 7]
  const line = (cells: readonly string[]) =>
    console.log(
      cells.map((cell, k) => (k === 0 ? cell.padEnd(widths[k]!) : cell.padStart(widths[k]!))).join(''),
    )
  line(heads)
  let code: 0 | 1 = 0
  const told = rows.map(({ name, problem, known }) => {
    const ours = onProcessor(() => {
      const before = process.cpuUsage()
      const keepGoing = () => process.cpuUsage(before).user < ourSeconds * 1e6
      return bestOrder(problem, { keepGoing, budget: Number.POSITIVE_INFINITY })
    })
    const theirs = onProcessor((): SolverAnswer | string => {
      try {
        return solver.solve(problem, theirSeconds)
      } catch (error) {
        return error instanceof Error ? error.message : String(error)
      }
    })
    const a = ours.answer
    const b = theirs.answer
    line([
      ...[name, String(problem.size), String(problem.before.length), known === null ? '' : String(known)],
      ...cells(a),
      ours.seconds.toFixed(1),
      '|',
      ...(typeof b === 'string' ? ['failed', '', '', ''] : cells(b)),
      theirs.seconds.toFixed(1),
    ])
    const wrong = contradictions(a, typeof b === 'string' ? null : b, known)
    for (const each of wrong) console.log(`  ${name}: ${each}`)
    if (typeof b === 'string') console.log(`  ${name}: the general solver failed: ${b}`)
    if (wrong.length > 0) code = 1
    const { order: _, ...kept } = a
    return {
      name,
      size: problem.size,
      known,
      ours: { ...kept, seconds: ours.seconds },
      theirs: b,
      theirSeconds: theirs.seconds,
    }
  })
  const proven = told.filter(({ ours }) => ours.proven).length
  const provenByThem = told.filter(({ theirs }) => typeof theirs !== 'string' && theirs.proven).length
  console.log(`\nproven: ours ${proven} of ${told.length}, highs ${provenByThem} of ${told.length}`)
  const out = join(import.meta.dirname, '..', 'test-output')
  mkdirSync(out, { recursive: true })
  writeFileSync(
    join(out, 'bench-sop.json'),
    `${JSON.stringify({ highs: solver.version, ourSeconds, theirSeconds, rows: told }, null, 2)}\n`,
  )
  return code
}

function instancesOf(folder: string): Row[] {
  const beside = join(folder, 'best-known.json')
  const known: Record<string, number> = {
    ...sopKnown,
    ...(existsSync(beside) ? JSON.parse(readFileSync(beside, 'utf8')) : {}),
  }
  return readdirSync(folder)
    .filter((file) => file.endsWith('.sop'))
    .sort()
    .map((file) => {
      const name = basename(file, '.sop')
      return { name, problem: readSop(readFileSync(join(folder, file), 'utf8')), known: known[name] ?? null }
    })
}

const inventedRows = (): Row[] =>
  [40, 60, 80].flatMap((actions) =>
    [1, 2].map((seed) => ({
      name: `work ${actions}/${seed}`,
      problem: inventedWork({ actions, seed }),
      known: null,
    })),
  )

function onProcessor<T>(work: () => T): { answer: T; seconds: number } {
  const before = process.cpuUsage()
  const answer = work()
  return { answer, seconds: process.cpuUsage(before).user / 1e6 }
}

function cells({ cost, lowerBound, proven }: SolverAnswer): string[] {
  const gap =
    cost === null ? '' : cost === 0 ? '0.0 %' : `${((100 * (cost - lowerBound)) / cost).toFixed(1)} %`
  return [cost === null ? 'none' : cost.toFixed(0), lowerBound.toFixed(0), gap, proven ? 'yes' : 'no']
}

/** Where one says that something cannot be, which another has found. */
function contradictions(ours: SolverAnswer, theirs: SolverAnswer | null, known: number | null): string[] {
  const wrong: string[] = []
  const above = (bound: number, cost: number) => bound > cost * (1 + 1e-6) + 1e-6
  if (known !== null && above(ours.lowerBound, known)) wrong.push('our bound lies above the best known.')
  if (known !== null && ours.proven && above(known, ours.cost!))
    wrong.push('proven cheaper than the best known: one of the two is wrong.')
  if (theirs?.cost !== undefined && theirs.cost !== null && above(ours.lowerBound, theirs.cost))
    wrong.push('our bound lies above what the general solver found.')
  if (theirs && above(theirs.lowerBound, ours.cost!))
    wrong.push('the general solver’s bound lies above what we found.')
  return wrong
}
