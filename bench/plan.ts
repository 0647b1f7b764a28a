import { cpus } from 'node:os'
import { fileURLToPath } from 'node:url'
import { readSources } from '../src/cli/files/read-sources.ts'
import { type PlanOfJob, planOfJob, planSheetFrom, type SheetSources } from '../src/sheet/index.ts'
import type { Finding } from './finding.ts'
import { printed } from './printed.ts'
import { repeated } from './repeated.ts'

const mostEdit = 20
const goals = [
  ['both tie rods', ['front left tie-rod', 'front right tie-rod']],
  ['both lower arms', ['front left lower-arm', 'front right lower-arm']],
] as const

/**
 * Times two-sided jobs on the demo van: planned and proven, and one line of the order moved by hand and judged.
 *
 * @returns 0, or 1 when one of them could not be planned; a missed target is no failure
 */
export function planBench(): 0 | 1 {
  console.log(`Node ${process.versions.node}, ${cpus()[0]?.model ?? 'unknown processor'}\n`)
  const path = fileURLToPath(new URL('../examples/port-unit-12/port-unit-12.job.json', import.meta.url))
  const sources = readSources(path)
  let code: 0 | 1 = 0
  for (const [called, replace] of goals) {
    let planned: PlanOfJob | null = null
    const times = repeated(
      () => {
        planned = planOfJob(sources, { goal: { replace } })
      },
      { warm: 1, runs: 5 },
    )
    const { plan } = planned as unknown as PlanOfJob
    if (!plan) code = 1
    else console.log(printed(found(called, { sources, planned: planned as unknown as PlanOfJob, times })))
  }
  return code
}

function found(
  called: string,
  { sources, planned, times }: { sources: SheetSources; planned: PlanOfJob; times: { median: number } },
): Finding {
  const { proven, changes } = planned.plan!
  const ids = Object.keys(planned.actions)
  const from = Math.floor(ids.length / 3)
  let broken = 0
  const edits = repeated(
    () => {
      const order = ids.toSpliced(from, 1).toSpliced(from + 7, 0, ids[from]!)
      broken = planSheetFrom(sources, { planned, order }).brokenLines
    },
    { warm: 5, runs: 25 },
  )
  const how = proven
    ? 'proven'
    : `gap ${(changes.minutes - changes.bound).toFixed(1)} of ${changes.minutes.toFixed(1)} min, not proven`
  return {
    id: `plan, ${called}`,
    what: `Plan of the demo van, ${called}`,
    lines: [
      `a ${ids.length}-action two-sided job planned, ${how}, in ${times.median.toFixed(0)} ms`,
      `one edited line judged in ${edits.median.toFixed(1)} ms (quartiles ${edits.low.toFixed(1)} to ${edits.high.toFixed(1)} of ${edits.runs}); it breaks rules in ${broken} lines`,
    ],
    value: edits.median,
    unit: 'ms',
    target: mostEdit,
    held: edits.median < mostEdit,
    numbers: { actions: ids.length, planned_ms: times.median, judged_ms: edits.median },
  }
}
