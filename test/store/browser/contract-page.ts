// Runs in a page and in a worker: the contract's cases against the browser's own database.
import { browserStore } from '../../../src/store/browser/index.ts'
import { contractCases } from '../log-store-contract.ts'

const place = () => {
  const name = `place ${crypto.randomUUID()}`
  return { open: () => browserStore(name) }
}

async function holds(name: string): Promise<string | null> {
  try {
    await contractCases.find((one) => one.name === name)!.holds(place)
    return null
  } catch (error) {
    return error instanceof Error ? `${error.message}\n${error.stack}` : String(error)
  }
}

const isPage = 'document' in globalThis
if (isPage) {
  const worker = new Worker('/script.js', { type: 'module' })
  const inWorker = (name: string) =>
    new Promise<string | null>((resolve, reject) => {
      worker.onmessage = ({ data }) => resolve(data)
      worker.onerror = ({ message }) => reject(new Error(message))
      worker.postMessage(name)
    })
  Object.assign(globalThis, { calls: { holds, inWorker } })
} else globalThis.onmessage = async ({ data }) => globalThis.postMessage(await holds(data))
