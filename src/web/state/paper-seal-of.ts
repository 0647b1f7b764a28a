import { inCausalOrder, isSealed, type Job, type SealedEntry } from '../../job/index.ts'
import { type PaperSeal, paperSeal, type Snapshot, verdictOf } from '../../proof/index.ts'
import { browserStore, ownWorkshop, privateBeside } from '../../store/browser/index.ts'

/**
 * What the paper says of the proof itself: looked through as it is kept here, or not sealed at all.
 *
 * @param job as it is shown: what of it is not sealed is counted
 */
export async function paperSealOf(id: string, job: Job, isKept: boolean): Promise<PaperSeal> {
  const whose = { workshop: job.workshop, job: job.job }
  if (!isKept) {
    const head = { format: 1, kind: 'proof', ...whose, root: null } as const
    const verdict = await verdictOf({ head, entries: [], snapshots: [], workshop: [] })
    return paperSeal({ verdict, entries: [], root: null, bare: job.entries.length })
  }
  const store = browserStore()
  const kept = store.job(id)
  const [{ entries }, pinned, own] = await Promise.all([kept.read(), kept.pinned(), ownWorkshop(store)])
  const sealed = inCausalOrder(entries) as readonly SealedEntry[]
  const workshop = own?.name === job.workshop ? own : null
  const root = workshop?.root ?? null
  const { values } = await privateBeside(kept, entries)
  const verdict = await verdictOf(
    {
      head: { format: 1, kind: 'proof', ...whose, root },
      entries: sealed,
      ...(values.length > 0 ? { private: values } : {}),
      snapshots: pinned as readonly Snapshot[],
      workshop: workshop?.log ?? [],
    },
    root === null ? {} : { trusted: root },
  )
  return paperSeal({
    verdict,
    entries: sealed,
    root,
    bare: job.entries.filter((one) => !isSealed(one)).length,
  })
}
