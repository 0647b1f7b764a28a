import { moves } from '../src/adjust/index.ts'
import { demoAxle } from './demo-axle.ts'
import type { Finding } from './finding.ts'
import { quantile } from './quantile.ts'
import { repeated } from './repeated.ts'
import { timed } from './timed.ts'

const target = 20
const sets = 12

/** Moves for a full axle: two wheels, six adjusters, ten readings, the limits of the first demo. */
export function movesTime(): Finding {
  const axles = Array.from({ length: sets }, (_, i) => demoAxle(i + 1))
  const cold = timed(() => moves(axles[0]!)) / 1e6
  for (const axle of axles) moves(axle)
  let made = 0
  const times = axles.map((axle) => {
    const each = repeated(() => moves(axle), { warm: 3, runs: 9 })
    made += moves(axle).moves.length
    return each
  })
  const medians = times.map((each) => each.median)
  const value = quantile(medians, 0.5)
  const slowest = Math.max(...medians)
  const processor = Math.max(...times.map((each) => each.processor))
  return {
    id: 'moves',
    what: `Moves for a full axle (two wheels, six adjusters, ten readings, limits of the first demo), ${sets} invented sets of readings`,
    lines: [
      `${value.toFixed(1)} ms (median set; fastest set ${Math.min(...medians).toFixed(1)}, slowest ${slowest.toFixed(1)}, at most ${processor.toFixed(1)} on the processor; each the median of 9 runs), ${(made / sets).toFixed(1)} moves on average`,
      `the very first run, not yet compiled: ${cold.toFixed(0)} ms`,
    ],
    value: slowest,
    unit: 'ms, slowest set',
    target,
    held: slowest < target,
    numbers: {
      median_ms: value,
      slowest_ms: slowest,
      processor_ms: processor,
      cold_ms: cold,
      moves: made / sets,
    },
  }
}
