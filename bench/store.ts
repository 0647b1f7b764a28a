import { mkdtempSync, rmSync } from 'node:fs'
import { cpus, loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { jobFolder, type KeptJob, openJob, verifyKept } from '../src/store/index.ts'
import { inPage, serveScript, startBrowser } from '../test/store/browser/store-pages.ts'
import type { Finding } from './finding.ts'
import { longLog, more, whose } from './long-log.ts'
import { printed } from './printed.ts'
import { at, median, took } from './took.ts'

const size = 5000
const how = { engine: 'bench' }

/**
 * A job of 5,000 entries kept in a folder and in a browser: opened with and without its checkpoint, appended to, verified.
 *
 * @returns 0; a missed target is no failure
 */
export async function storeBench(): Promise<0> {
  console.log(
    `Node ${process.versions.node}, ${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, load ${loadavg()[0]!.toFixed(1)}\n`,
  )
  for (const finding of [...(await inFolder()), ...(await inBrowser())]) console.log(printed(finding))
  return 0
}

async function inFolder(): Promise<readonly Finding[]> {
  const place = mkdtempSync(join(tmpdir(), 'axlewright-store-bench-'))
  try {
    const job = () => jobFolder(place)
    const log = await longLog(size)
    await job().change(whose, () => log)
    const appended: number[] = []
    const mine = job()
    await mine.read()
    for (const entry of await more(log, 50))
      appended.push(await took(() => mine.change(whose, () => [entry])))
    const folded: number[] = []
    for (let i = 0; i < 5; i++) {
      await job().remember('fold', '')
      folded.push(await took(() => opened(job(), 'fold')))
    }
    const checkpoint: number[] = []
    for (let i = 0; i < 9; i++) checkpoint.push(await took(() => opened(job(), 'checkpoint')))
    const longer: number[] = []
    for (let i = 0; i < 5; i++) {
      const [entry] = await more((await job().read()).entries, 1)
      await job().change(whose, () => [entry!])
      longer.push(await took(() => opened(job(), 'fold')))
    }
    let told = 0
    const whole = await took(() => verifyKept(job(), () => told++))
    const again = await took(() => verifyKept(job()))
    return findings('file', 'a folder', { checkpoint, folded, longer, appended, whole, again, told })
  } finally {
    rmSync(place, { recursive: true, force: true })
  }
}

async function inBrowser(): Promise<readonly Finding[]> {
  const [served, browser] = await Promise.all([
    serveScript(join(import.meta.dirname, 'store-page.ts')),
    startBrowser(),
  ])
  try {
    const page = await browser.newPage()
    await page.goto(served.address)
    const times = (call: string, ...given: readonly unknown[]) =>
      inPage(page, call, ...given) as Promise<readonly number[]>
    await inPage(page, 'kept', size)
    const appended = await times('appended', 50)
    const folded = await times('opened', 'fold', 5)
    const checkpoint = await times('opened', 'checkpoint', 9)
    const longer = await times('openedLonger', 5)
    const first = (await inPage(page, 'verified')) as Verified
    const second = (await inPage(page, 'verified')) as Verified
    if (first.broken + second.broken !== 0) throw new Error('The log of the bench is not intact.')
    const verified = { whole: first.ms, again: second.ms, told: first.told }
    return findings('browser', `a browser (Chromium ${browser.version()})`, {
      ...verified,
      checkpoint,
      folded,
      longer,
      appended,
    })
  } finally {
    await browser.close()
    served.end()
  }
}

interface Verified {
  readonly ms: number
  readonly told: number
  readonly broken: number
}

interface Measured {
  readonly checkpoint: readonly number[]
  readonly folded: readonly number[]
  readonly longer: readonly number[]
  readonly appended: readonly number[]
  readonly whole: number
  readonly again: number
  readonly told: number
}

function findings(id: string, where: string, m: Measured): readonly Finding[] {
  const all = [
    ['open', `open a job of ${size} entries from its checkpoint`, m.checkpoint, 150],
    ['open-longer', 'the same with one entry more than its checkpoint has', m.longer, 150],
    ['open-folded', 'the same without a checkpoint, which is then written', m.folded, null],
    ['append', `append one entry to ${size}, on disk before it is acknowledged`, m.appended, 10],
  ] as const
  const verify = { id: `store.${id}.verify`, what: `verify all ${size} entries`, value: m.whole }
  return [
    ...all.map(([name, what, list, target]) => ({
      ...judged({ id: `store.${id}.${name}`, what: `${what}, in ${where}`, value: median(list), target }),
      lines: [
        `median ${median(list).toFixed(1)} ms of ${list.length}, 9 of 10 within ${at(list, 0.9).toFixed(1)} ms, least ${Math.min(...list).toFixed(1)} ms`,
      ],
    })),
    {
      ...judged({
        ...verify,
        what: `${verify.what}, in ${id === 'browser' ? 'a worker of ' : ''}${where}`,
        target: 2000,
      }),
      lines: [
        `${m.whole.toFixed(0)} ms, told ${m.told} times how far it is; again, when nothing is new, ${m.again.toFixed(0)} ms`,
      ],
    },
  ]
}

const judged = ({ id, what, value, target }: Pick<Finding, 'id' | 'what' | 'value' | 'target'>) => ({
  id,
  what,
  value,
  target,
  unit: 'ms',
  held: target === null ? null : value < target,
  numbers: { [id]: value },
})

async function opened(job: KeptJob, from: 'checkpoint' | 'fold'): Promise<void> {
  const one = await openJob(job, how)
  if (one.from !== from) throw new Error(`It was opened from its ${one.from}.`)
}
