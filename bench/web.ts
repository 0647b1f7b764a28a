import { cpus, loadavg } from 'node:os'
import { sealedDemo } from './sealed-demo.ts'
import { median } from './took.ts'
import { firstScripts, firstSheet, keepJob, longestTask, opened } from './web-measures.ts'
import { type Slowdown, startWeb } from './web-page.ts'

const size = 5000
const runs = 5
const slowdowns = [1, 4] as const

interface Row {
  readonly what: string
  readonly target: number
  readonly unit: 'kB' | 'ms'
  /** At the processor's own speed and slowed down; null where that changes nothing. */
  readonly values: readonly [number, number | null]
  readonly more: string
}

/**
 * What the page takes of a device: its first scripts, its first sheet, its longest task, and a long job opened; each
 * beside the same with a processor four times slower.
 *
 * @returns 0; a missed target is no failure
 */
export async function webBench(): Promise<0> {
  const web = await startWeb()
  try {
    console.log(
      `Node ${process.versions.node}, Chromium ${web.version}, ${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, load ${loadavg()[0]!.toFixed(1)}`,
    )
    const told = (what: string) => console.error(`… ${what}`)
    told('first scripts')
    const scripts = await web.inFresh(1, (page) => firstScripts(page, web.address))
    told('first sheet')
    const sheets = await both(async (slowdown) => {
      const times: number[] = []
      for (let i = 0; i < runs; i++)
        times.push(await web.inFresh(slowdown, (page) => firstSheet(page, web.address)))
      return times
    })
    told('longest task')
    const tasks = await both((slowdown) => web.inFresh(slowdown, (page) => longestTask(page, web.address)))
    told(`a job of ${size} entries`)
    const { job, text } = await sealedDemo(size)
    const places = [
      ['its row touched, until the list of its bolts is seen', null, '.bolts'],
      ['the same job, gone to its angles instead', 'angles', '.reading'],
    ] as const
    const jobs = await both((slowdown) =>
      web.inFresh(slowdown, async (page) => {
        await keepJob(page, web.address, { name: `${job}.proof.json`, text })
        const all: (readonly number[])[] = []
        for (const [, place, shows] of places) {
          const times: number[] = []
          for (let i = 0; i < runs; i++) times.push(await opened(page, web.address, { job, place, shows }))
          all.push(times)
        }
        return all
      }),
    )
    const pair = ([plain, slow]: readonly [readonly number[], readonly number[]]) =>
      [median(plain), median(slow)] as const
    const span = (list: readonly number[]) =>
      `${Math.min(...list).toFixed(0)} to ${Math.max(...list).toFixed(0)}`
    const spans = ([plain, slow]: readonly [readonly number[], readonly number[]]) =>
      `${span(plain)}; slowed down ${span(slow)}`
    const rows: readonly Row[] = [
      { what: 'first scripts, gzip', target: 250, unit: 'kB', values: [scripts, null], more: '' },
      {
        what: `first sheet, cold cache, middle of ${runs}`,
        target: 1000,
        unit: 'ms',
        values: pair(sheets),
        more: spans(sheets),
      },
      {
        what: 'longest task while typing and choosing wheels',
        target: 50,
        unit: 'ms',
        values: [tasks[0].longest, tasks[1].longest],
        more: `over 50 ms: ${tasks[0].over}; slowed down ${tasks[1].over} (0 ms: none was over 50)`,
      },
      ...places.map(([what], i): Row => {
        const times = [jobs[0][i]!, jobs[1][i]!] as const
        return {
          what: `${i === 0 ? `job of ${size} entries: ` : ''}${what}`,
          target: 300,
          unit: 'ms',
          values: pair(times),
          more: spans(times),
        }
      }),
    ]
    console.log(table(rows))
    console.log(
      'Slowed down: the main thread four times, as the browser does it; its workers, which do the sums and the storing, are not slowed down by it.',
    )
  } finally {
    await web.end()
  }
  return 0
}

const both = async <T>(measure: (slowdown: Slowdown) => Promise<T>): Promise<readonly [T, T]> => [
  await measure(slowdowns[0]),
  await measure(slowdowns[1]),
]

function table(rows: readonly Row[]): string {
  const shown = (value: number | null, { target, unit }: Row) =>
    value === null ? '' : `${value.toFixed(0)} ${unit} ${value <= target ? 'held' : 'MISSED'}`
  const lines = rows.map((row) => [
    row.what,
    `${row.target} ${row.unit}`,
    shown(row.values[0], row),
    shown(row.values[1], row),
    row.more,
  ])
  const all = [['', 'target', 'measured', 'slowed down 4×', 'least to most'], ...lines]
  const widths = all[0]!.map((_, i) => Math.max(...all.map((line) => line[i]!.length)))
  return `\n${all
    .map((line) =>
      line
        .map((cell, i) => cell.padEnd(widths[i]!))
        .join('  ')
        .trimEnd(),
    )
    .join('\n')}\n`
}
