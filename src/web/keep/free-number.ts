import type { Signer } from '../../proof/index.ts'
import type { LogStore } from '../../store/browser/index.ts'

/** Without I and O, which are read as figures. */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ'

/**
 * The next number of this device: three letters of its own, so that two devices hardly ever count the same, and a
 * count. "KTW-0007"
 */
export async function freeNumber(store: LogStore, { key }: Signer): Promise<string> {
  let rest = Number.parseInt(key.slice(0, 8), 16)
  let own = ''
  for (let i = 0; i < 3; i++) {
    own += letters[rest % letters.length]
    rest = Math.floor(rest / letters.length)
  }
  const taken = (await store.jobs()).flatMap((job) =>
    job.startsWith(`${own}-`) ? [Number(job.slice(own.length + 1)) || 0] : [],
  )
  return `${own}-${String(Math.max(0, ...taken) + 1).padStart(4, '0')}`
}
