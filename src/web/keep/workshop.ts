import { fingerprint } from '../../proof/index.ts'
import { beginWorkshop, ownWorkshop } from '../../store/browser/index.ts'
import type { KeepAsks } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'

/** The workshop that this device belongs to. */
export async function workshopHere({ store, device }: Keeper): Promise<KeepAsks['workshop']['back']> {
  const own = await ownWorkshop(store)
  if (!own) return { workshop: null }
  const { key } = await device()
  return { workshop: { name: own.name, fingerprint: own.fingerprint, device: fingerprint(key) } }
}

/** Makes a workshop on this device; its root's secret is in the answer and nowhere else. */
export async function workshopBegun(
  { store, device }: Keeper,
  { name, device: called }: KeepAsks['begin']['give'],
): Promise<KeepAsks['begin']['back']> {
  const signer = await device()
  const begun = await beginWorkshop(store, { name, called, device: signer })
  return {
    workshop: { name, fingerprint: begun.fingerprint, device: fingerprint(signer.key) },
    paper: begun.paper,
  }
}
