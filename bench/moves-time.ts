import { moves } from '../src/adjust/index.ts'
import { demoAxle } from './demo-axle.ts'
import type { Finding } from './finding.ts'
import { quantile, timed } from './interleaved.ts'

const target = 20
const problems = 12
const rounds = 9

/** Moves for a full axle: two wheels, six adjusters, ten readings, the limits of the first demo. */
export function movesTime(): Finding {
  const axles = Array.from({ length: problems }, (_, i) => demoAxle(i + 1))
  const times: number[][] = axles.map(() => [])
  let touched = 0
  const cold = timed(() => moves(axles[0]!)) / 1e6
  for (let round = 0; round < rounds + 3; round++) {
    for (const [i, problem] of axles.entries()) {
      let made = 0
      const ns = timed(() => {
        made = moves(problem).moves.length
      })
      if (round < 3) continue
      times[i]!.push(ns / 1e6)
      touched += made / rounds
    }
  }
  const each = times.map((list) => quantile(list, 0.5))
  const value = quantile(each, 0.5)
  const slowest = Math.max(...each)
  return {
    id: 'moves',
    what: `Moves for a full axle (two wheels, six adjusters, ten readings, limits of the first demo), ${problems} invented sets of readings`,
    lines: [
      `${value.toFixed(1)} ms (median set; fastest set ${Math.min(...each).toFixed(1)}, slowest ${slowest.toFixed(1)}; each the median of ${rounds} runs), ${(touched / problems).toFixed(1)} moves on average; the very first run, not yet compiled, ${cold.toFixed(0)} ms`,
    ],
    value: slowest,
    unit: 'ms, slowest set',
    target,
    held: slowest < target,
    numbers: { median_ms: value, slowest_ms: slowest, cold_ms: cold, moves_on_average: touched / problems },
  }
}
