// Runs in a page: appends to a job in the browser's database until it is refused, or until the browser is killed.
import { headsOf, inCausalOrder, readJob, type SealedEntry, writeJob } from '../../../src/job/index.ts'
import { sealEntries, signerOf, verifyEntries } from '../../../src/proof/index.ts'
import { Refusal } from '../../../src/quantity/index.ts'
import {
  browserDevice,
  browserStore,
  type LogStore,
  openJob,
  takeIn,
} from '../../../src/store/browser/index.ts'
import { whose } from '../sealed-log.ts'

const job = (name: string) => browserStore(name).job(whose.job)

const stores = new Map<string, LogStore>()

/** One store for as long as the window lives, as a page has it. */
function held(name: string): LogStore {
  const store = stores.get(name) ?? browserStore(name)
  stores.set(name, store)
  return store
}

/** What the browser’s database cannot press together. */
const noise = () =>
  Array.from(crypto.getRandomValues(new Uint8Array(950)), (byte) => byte.toString(36).padStart(2, '0')).join(
    '',
  )

/** Notes of 2 kB each, sealed after a log. */
async function longer(log: readonly SealedEntry[], count: number): Promise<readonly SealedEntry[]> {
  const notes = Array.from({ length: count }, (_, i) => ({
    kind: 'note',
    data: { text: `note ${log.length + i} ${noise()}` },
  }))
  return sealEntries([...log, ...notes], {
    ...whose,
    signer: await signerOf('01'.repeat(32)),
    person: 'KB',
    at: '2026-03-14T18:00:00Z',
    offset: '+01:00',
  })
}

async function refusedWith(work: () => Promise<unknown>): Promise<{ code: string; sentence: string } | null> {
  try {
    await work()
    return null
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return { code: error.code, sentence: error.sentence }
  }
}

Object.assign(globalThis, {
  calls: {
    /** Changes of so many entries each; what was acknowledged, and why it ended. */
    fill: async (name: string, count: number, most: number) => {
      const acknowledged: string[] = []
      const ended = await refusedWith(async () => {
        for (let i = 0; i < most; i++) {
          const { appended } = await job(name).change(whose, (known) => longer(known, count))
          acknowledged.push(...appended.map(({ id }) => id))
        }
      })
      return { acknowledged, ended }
    },
    keep: (name: string, bytes: number) => refusedWith(() => job(name).keep(new Uint8Array(bytes).fill(7))),
    kept: (name: string) => job(name).kept(),
    read: async (name: string) => {
      const { entries, spoilt } = await browserStore(name).job(whose.job).read()
      return { ids: entries.map(({ id }) => id), spoilt, broken: await verifyEntries(entries, whose) }
    },
    /** Changes at once with other windows; the count of what this one appended. */
    race: async (name: string, changes: number) => {
      for (let i = 0; i < changes; i++) await job(name).change(whose, (known) => longer(known, 1))
    },
    chain: async (name: string) => {
      const { entries } = await browserStore(name).job(whose.job).read()
      return entries.map(({ seq, id, after }) => ({ seq, id, after }))
    },
    /** The job as a file, and its heads. */
    exported: async (name: string) => {
      const { entries } = await held(name).job(whose.job).read()
      return { text: JSON.stringify(writeJob({ ...whose, entries })), heads: headsOf(inCausalOrder(entries)) }
    },
    /** What is told of it, and why nothing is added to it. */
    spoilt: async (name: string) => {
      const job = browserStore(name).job(whose.job)
      const { spoilt, entries } = await job.read()
      const opened = await openJob(job, { engine: '1', least: 1 })
      return {
        lines: spoilt.map(({ line }) => line),
        opened: opened.spoilt.map(({ line }) => line),
        entries: entries.length,
        refused: (await refusedWith(() => job.change(whose, (known) => longer(known, 1))))?.code,
      }
    },
    jobs: (name: string) => held(name).jobs(),
    refused: (name: string) => refusedWith(() => held(name).job(whose.job).read()),
    broughtIn: async (name: string, text: string) => {
      const file = readJob(JSON.parse(text))
      if (!file.ok) throw new Error(JSON.stringify(file.problems))
      const { workshop, job, entries } = file.value
      const signer = await browserDevice(name)
      const given = { path: 'exported', whose: { workshop, job }, entries }
      await takeIn(held(name).job(job), given, { signer, person: 'KB' })
    },
    /** Says each id once it is acknowledged. */
    forever: async (name: string, say: string) => {
      const told = (globalThis as unknown as Record<string, (id: string) => Promise<void>>)[say]!
      const mine = job(name)
      for (;;) {
        const { appended } = await mine.change(whose, (known) => longer(known, 1))
        await told(appended[0]!.id)
      }
    },
  },
})
