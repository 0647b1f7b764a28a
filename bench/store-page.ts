// Runs in a page: a long log kept, opened, appended to and verified in the browser.
import { browserStore, openJob, verifyKept } from '../src/store/browser/index.ts'
import { longLog, more, whose } from './long-log.ts'
import { took } from './took.ts'

const job = () => browserStore('bench').job(whose.job)
const how = { engine: 'bench' }
const isPage = 'document' in globalThis

async function opened(from: 'checkpoint' | 'fold'): Promise<void> {
  const one = await openJob(job(), how)
  if (one.from !== from) throw new Error(`It was opened from its ${one.from}.`)
}

/** In a worker: the time, and how often it was told how far it is. */
async function verified(): Promise<{ ms: number; told: number; broken: number }> {
  let told = 0
  let broken = -1
  const ms = await took(async () => {
    const found = await verifyKept(job(), () => {
      told++
    })
    broken = found.broken.length
  })
  return { ms, told, broken }
}

if (isPage) {
  const worker = new Worker('/script.js', { type: 'module' })
  Object.assign(globalThis, {
    calls: {
      kept: async (size: number) => {
        const log = await longLog(size)
        await job().change(whose, () => log)
      },
      appended: async (count: number) => {
        const mine = job()
        const entries = await more((await mine.read()).entries, count)
        const times: number[] = []
        for (const entry of entries) times.push(await took(() => mine.change(whose, () => [entry])))
        return times
      },
      opened: async (from: 'checkpoint' | 'fold', times: number) => {
        const list: number[] = []
        for (let i = 0; i < times; i++) {
          if (from === 'fold') await job().remember('fold', '')
          list.push(await took(() => opened(from)))
        }
        return list
      },
      openedLonger: async (times: number) => {
        const list: number[] = []
        for (let i = 0; i < times; i++) {
          const { entries } = await job().read()
          const [entry] = await more(entries, 1)
          await job().change(whose, () => [entry!])
          list.push(await took(() => opened('fold')))
        }
        return list
      },
      verified: () =>
        new Promise((resolve, reject) => {
          worker.onmessage = ({ data }) => resolve(data)
          worker.onerror = ({ message }) => reject(new Error(message))
          worker.postMessage('')
        }),
    },
  })
} else globalThis.onmessage = async () => globalThis.postMessage(await verified())
