import { readFileSync } from 'node:fs'
import highsLoader from 'highs'
import type { OrderProblem } from '../src/plan/index.ts'

/** What the general solver came to. */
export interface SolverAnswer {
  readonly cost: number | null
  readonly lowerBound: number
  readonly proven: boolean
}

const packageFile = new URL('../node_modules/highs/package.json', import.meta.url)

/** The general mixed-integer solver of the registry, ready; its version stands beside what it finds. */
export async function mixedInteger(): Promise<{
  readonly version: string
  readonly solve: (problem: OrderProblem, seconds: number) => SolverAnswer
}> {
  const { version } = JSON.parse(readFileSync(packageFile, 'utf8')) as { version: string }
  const highs = await highsLoader()
  return {
    version,
    solve(problem, seconds) {
      const text = modelOf(problem)
      return highs.withModel({ format: 'lp', data: text }, (model) => {
        // Ended by processor time, as ours is; the clock only ends what does not ask in between.
        const before = process.cpuUsage()
        model.options.set({ output_flag: false, time_limit: 6 * seconds, mip_rel_gap: 0, mip_abs_gap: 1e-6 })
        model.run({
          [highs.constants.callbackType.mipInterrupt](event) {
            if (process.cpuUsage(before).user > seconds * 1e6) event.interrupt()
          },
        })
        const proven = model.getModelStatus() === highs.constants.modelStatus.optimal
        const has = model.info.get('primal_solution_status') === 2
        return {
          cost: has ? Number(model.info.get('objective_function_value')) : null,
          lowerBound: Math.max(0, Number(model.info.get('mip_dual_bound'))),
          proven,
        }
      })
    },
  }
}

/**
 * The textbook model: x_i_j is 1 where j comes straight after i (s and e are the ends), u_i is the place of i. Every action is
 * come to and left once; places rise along the steps taken (Miller, Tucker and Zemlin 1960, lifted as by Desrochers and
 * Laporte 1991) and along the pairs. Steps that no order can take are left out, and places lie where the pairs leave room.
 */
function modelOf({ size, cost, start, end, before }: OrderProblem): string {
  const actions = Array.from({ length: size }, (_, i) => i)
  const later = actions.map(() => new Set<number>())
  for (const [a, b] of before) later[a]!.add(b)
  for (const k of actions)
    for (const a of actions) if (later[a]!.has(k)) for (const b of later[k]!) later[a]!.add(b)
  const earlier = actions.map((b) => actions.filter((a) => later[a]!.has(b)))
  const follows = (i: number, j: number) =>
    i !== j && !later[j]!.has(i) && !earlier[j]!.some((k) => later[i]!.has(k))
  const steps = actions.flatMap((i) => actions.filter((j) => follows(i, j)).map((j) => [i, j] as const))
  const first = actions.filter((j) => earlier[j]!.length === 0)
  const last = actions.filter((i) => later[i]!.size === 0)
  const x = (i: number, j: number) => `x_${i}_${j}`
  const sum = (names: readonly string[]) => (names.length > 0 ? names.join(' + ') : '0 u_0')
  const objective = [
    ...first.map((j) => `${start?.[j] ?? 0} s_${j}`),
    ...last.map((i) => `${end?.[i] ?? 0} e_${i}`),
    ...steps.map(([i, j]) => `${cost[size * i + j]} ${x(i, j)}`),
  ]
  const into = actions.map((j) => [
    ...(first.includes(j) ? [`s_${j}`] : []),
    ...steps.filter(([, b]) => b === j).map(([a]) => x(a, j)),
  ])
  const out = actions.map((i) => [
    ...(last.includes(i) ? [`e_${i}`] : []),
    ...steps.filter(([a]) => a === i).map(([, b]) => x(i, b)),
  ])
  const rows = [
    `${sum(first.map((j) => `s_${j}`))} = 1`,
    `${sum(last.map((i) => `e_${i}`))} = 1`,
    ...into.map((names) => `${sum(names)} = 1`),
    ...out.map((names) => `${sum(names)} = 1`),
    ...steps.map(([i, j]) => {
      const back = follows(j, i) ? ` + ${size - 2} ${x(j, i)}` : ''
      return `u_${i} - u_${j} + ${size} ${x(i, j)}${back} <= ${size - 1}`
    }),
    ...before.map(([a, b]) => `u_${b} - u_${a} >= 1`),
  ]
  const lines = (all: readonly string[], between: string) =>
    all.map((each, k) => (k > 0 && k % 8 === 0 ? `\n ${each}` : each)).join(between)
  return [
    `Minimize\n obj: ${lines(objective, ' + ')}`,
    `Subject To\n${rows.map((row, k) => ` r${k}: ${row.replace(/((?:[^+]*\+){8})/g, '$1\n ')}`).join('\n')}`,
    `Bounds\n${actions.map((i) => ` ${earlier[i]!.length} <= u_${i} <= ${size - 1 - later[i]!.size}`).join('\n')}`,
    `Binaries\n ${lines([...first.map((j) => `s_${j}`), ...last.map((i) => `e_${i}`), ...steps.map(([i, j]) => x(i, j))], ' ')}`,
    'End\n',
  ].join('\n')
}
