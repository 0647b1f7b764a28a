import { fingerprint, type Signer, sealEntries, signerOf } from '../proof/index.ts'
import { clockNow } from './clock-now.ts'
import type { LogStore } from './log-store.ts'
import { ownWorkshop, workshopJob } from './own-workshop.ts'
import { randomSeed } from './random-seed.ts'
import { refused } from './refused.ts'
import { rootPaper } from './root-paper.ts'

/** A workshop that was just made. @source definition */
export interface BegunWorkshop {
  readonly name: string
  /** The root's secret in lines, to be written on paper: it is kept nowhere. */
  readonly paper: readonly string[]
  /** The root as people compare it; no secret. */
  readonly fingerprint: string
}

/**
 * Makes a workshop with its root, and the device that makes it as its owner.
 *
 * @param store where the device keeps its logs
 * @param workshop its name, how the device is called, and the device's signer
 * @throws {Refusal} `has-workshop`; `no-room`, `read-only`
 * @source own derivation: docs/methods/record.md
 */
export async function beginWorkshop(
  store: Pick<LogStore, 'job'>,
  { name, called, device }: { readonly name: string; readonly called: string; readonly device: Signer },
): Promise<BegunWorkshop> {
  const own = await ownWorkshop(store)
  if (own) throw belongs(own.name)
  const secret = randomSeed()
  const root = await signerOf(secret)
  const whose = { workshop: name, job: workshopJob }
  await store.job(workshopJob).change(whose, (known) => {
    // Another window may have been first.
    if (known.length > 0) throw belongs(name)
    return sealEntries(
      [
        { kind: 'workshop made', data: { name } },
        { kind: 'device certified', data: { device: device.key, name: called, owner: true } },
      ],
      { ...whose, signer: root, person: 'root', ...clockNow() },
    )
  })
  return { name, paper: rootPaper(secret), fingerprint: fingerprint(root.key) }
}

const belongs = (name: string) =>
  refused(
    'has-workshop',
    name,
    `This device belongs to “${name}” already. A device belongs to one workshop.`,
    'Make the other workshop on another device.',
  )
