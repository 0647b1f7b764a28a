import { fileURLToPath } from 'node:url'
import { readSources } from '../src/cli/files/read-sources.ts'
import { sheetFrom } from '../src/sheet/index.ts'
import type { Finding } from './finding.ts'
import { quantile, timed } from './interleaved.ts'

const rounds = 15
const jobs = ['port-unit-07', 'port-unit-12']

/** The whole sheet of each demo job, from files already read: what the page computes anew at each key. */
export function sheetTime(): Finding {
  const medians: number[] = []
  const lines = jobs.map((name) => {
    const path = fileURLToPath(new URL(`../examples/${name}/${name}.job.json`, import.meta.url))
    const sources = readSources(path)
    let readings = 0
    const run = () => timed(() => (readings = sheetFrom(sources).readings.length)) / 1e6
    const cold = run()
    for (let i = 0; i < 3; i++) run()
    const times = Array.from({ length: rounds }, run)
    const median = quantile(times, 0.5)
    medians.push(median)
    return `${name}: ${median.toFixed(1)} ms (quartiles ${quantile(times, 0.25).toFixed(1)} to ${quantile(times, 0.75).toFixed(1)} of ${rounds} runs; first run ${cold.toFixed(0)} ms), ${readings} readings`
  })
  const value = Math.max(...medians)
  return {
    id: 'sheet',
    what: 'The whole sheet of each demo job: readings, moves, reach map, clamp pose',
    lines,
    value,
    unit: 'ms',
    target: null,
    held: null,
    numbers: Object.fromEntries(jobs.map((name, i) => [`${name}_ms`, medians[i]!])),
  }
}
