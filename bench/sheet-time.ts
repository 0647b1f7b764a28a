import { fileURLToPath } from 'node:url'
import { readSources } from '../src/cli/files/read-sources.ts'
import { sheetFrom } from '../src/sheet/index.ts'
import type { Finding } from './finding.ts'
import { repeated } from './repeated.ts'
import { timed } from './timed.ts'

const jobs = ['port-unit-07', 'port-unit-12']

/** The whole sheet of each demo job, from files already read: what the page computes anew at each key. */
export function sheetTime(): Finding {
  const medians: number[] = []
  const lines = jobs.map((name) => {
    const path = fileURLToPath(new URL(`../examples/${name}/${name}.job.json`, import.meta.url))
    const sources = readSources(path)
    let readings = 0
    const run = (): void => {
      readings = sheetFrom(sources).readings.length
    }
    const cold = timed(run) / 1e6
    const times = repeated(run, { warm: 5, runs: 15 })
    medians.push(times.median)
    return `${name}: ${times.median.toFixed(1)} ms (quartiles ${times.low.toFixed(1)} to ${times.high.toFixed(1)} of ${times.runs} runs; ${times.processor.toFixed(1)} on the processor; first run ${cold.toFixed(0)}), ${readings} readings`
  })
  return {
    id: 'sheet',
    what: 'The whole sheet of each demo job: readings, moves, reach map, clamp pose',
    lines,
    value: Math.max(...medians),
    unit: 'ms',
    target: null,
    held: null,
    numbers: Object.fromEntries(jobs.map((name, i) => [`${name}_ms`, medians[i]!])),
  }
}
