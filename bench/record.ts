import { appendFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { foldJob, inCausalOrder, type SealedEntry } from '../src/job/index.ts'
import { canonicalText, proofOf, proofText, verifyProof } from '../src/proof/index.ts'
import { jobFolder } from '../src/store/index.ts'
import type { Finding } from './finding.ts'
import { longLog, more, whose } from './long-log.ts'
import { printed } from './printed.ts'
import { at, median, took } from './took.ts'

const size = 5000
const appends = 200

/**
 * A job of 5,000 entries: verified, appended to, opened; beside what a plainer way of keeping it takes in the same run.
 *
 * @returns 0; a missed target is no failure
 */
export async function recordBench(): Promise<0> {
  console.log(
    `Node ${process.versions.node}, ${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores\n`,
  )
  const place = mkdtempSync(join(tmpdir(), 'axlewright-record-'))
  try {
    const log = await longLog(size)
    for (const finding of [await verified(log), ...(await appended(log, place)), await opened(log, place)])
      console.log(printed(finding))
  } finally {
    rmSync(place, { recursive: true, force: true })
  }
  return 0
}

async function verified(log: readonly SealedEntry[]): Promise<Finding> {
  const bytes = new TextEncoder().encode(
    proofText(proofOf({ ...whose, entries: log, files: [], root: null, workshopLog: [] })),
  )
  const times: number[] = []
  for (let i = 0; i < 5; i++) {
    const before = performance.now()
    const { intact } = await verifyProof(bytes)
    if (!intact) throw new Error('The proof of the bench is not intact.')
    times.push(performance.now() - before)
  }
  return finding('record.verify', `verify a job of ${size} entries entirely`, median(times), 2000, [
    `median ${median(times).toFixed(0)} ms of ${times.length}, worst ${Math.max(...times).toFixed(0)} ms; ${(bytes.length / 1e6).toFixed(1)} MB`,
  ])
}

async function appended(log: readonly SealedEntry[], place: string): Promise<readonly Finding[]> {
  const job = jobFolder(join(place, 'job'))
  await job.change(whose, () => log)
  const entries = await more(log, appends)
  const own: number[] = []
  const plain: number[] = []
  const rewrite: number[] = []
  const whole = [...log]
  // One after the other in turn, so that what else the machine does falls on all three.
  for (const entry of entries) {
    own.push(await took(() => job.change(whose, () => [entry])))
    plain.push(await took(() => appendFileSync(join(place, 'plain.jsonl'), `${canonicalText(entry)}\n`)))
    whole.push(entry)
    if (rewrite.length < 20)
      rewrite.push(await took(() => writeFileSync(join(place, 'whole.json'), JSON.stringify(whole))))
  }
  return [
    finding(
      'record.append',
      `append one entry to ${size}, synced before it is acknowledged`,
      median(own),
      10,
      [
        `median ${median(own).toFixed(2)} ms of ${own.length}, 99 of 100 within ${at(own, 0.99).toFixed(2)} ms`,
        `beside: a line appended without any sync ${median(plain).toFixed(3)} ms; the whole job written anew as JSON, without sync, ${median(rewrite).toFixed(1)} ms`,
      ],
    ),
  ]
}

async function opened(log: readonly SealedEntry[], place: string): Promise<Finding> {
  const folder = join(place, 'job')
  const read: number[] = []
  const folded: number[] = []
  for (let i = 0; i < 5; i++) {
    let entries: readonly SealedEntry[] = log
    read.push(
      await took(async () => {
        entries = (await jobFolder(folder).read()).entries
      }),
    )
    folded.push(await took(() => foldJob(inCausalOrder(entries))))
  }
  return finding(
    'record.open',
    `open a job of ${size} entries without a checkpoint`,
    median(read) + median(folded),
    null,
    [
      `read ${median(read).toFixed(0)} ms, order and fold ${median(folded).toFixed(0)} ms (medians of ${read.length})`,
    ],
  )
}

const finding = (
  id: string,
  what: string,
  value: number,
  target: number | null,
  lines: readonly string[],
): Finding => ({
  id,
  what,
  lines,
  value,
  unit: 'ms',
  target,
  held: target === null ? null : value < target,
  numbers: { [id]: value },
})
