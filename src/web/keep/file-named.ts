import { startingLayout, startingLayouts } from '../../corner/index.ts'
import { startingKit } from '../../kit/index.ts'
import { digestOf, type Snapshot } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { type LogStore, ownWorkshop, workshopJob } from '../../store/browser/index.ts'

/**
 * The newest version of a file of the workshop; for a corner, else a layout to start from.
 *
 * @throws {Refusal} `no-file` where there is none of that name
 */
export async function fileNamed(store: LogStore, what: Snapshot['what'], id: string): Promise<Snapshot> {
  const own = await ownWorkshop(store)
  const kept = own?.state.files.find((file) => file.what === what && file.id === id)
  if (kept) {
    const found = (await store.job(workshopJob).pinned()).find(({ digest }) => digest === kept.digest)
    if (found) return found
  }
  if (what === 'corner' && startingLayouts.some((layout) => layout.id === id)) {
    const file = await startingLayout(id)
    return { what, digest: digestOf(what, file), file }
  }
  if (what === 'kit' && id === startingKit.id)
    return { what, digest: digestOf(what, startingKit), file: startingKit }
  throw new Refusal<'no-file'>({
    code: 'no-file',
    at: what,
    given: id,
    sentence: `There is no ${what} “${id}” on this device.`,
    remedy: 'Choose another one, or bring its file in under Vehicles.',
  })
}
