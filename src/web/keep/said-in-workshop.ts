import type { Entry } from '../../job/index.ts'
import { sealEntries } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { clockNow, ownWorkshop, workshopJob } from '../../store/browser/index.ts'
import type { Keeper } from './keeper.ts'

/**
 * Says something in the workshop's own log.
 *
 * @throws {Refusal} `no-workshop` while this device belongs to none; `no-room`, `read-only`
 */
export async function saidInWorkshop({ store, device }: Keeper, entry: Entry): Promise<void> {
  const own = await ownWorkshop(store)
  if (!own)
    throw new Refusal<'no-workshop'>({
      code: 'no-workshop',
      at: 'workshop',
      given: '',
      sentence: 'This device belongs to no workshop yet, so nothing can be kept for one.',
      remedy: 'Say under Workshop what it is called.',
    })
  const signer = await device()
  const whose = { workshop: own.name, job: workshopJob }
  await store
    .job(workshopJob)
    .change(whose, (known) =>
      sealEntries([...known, entry], { ...whose, signer, person: 'owner', ...clockNow() }),
    )
}
