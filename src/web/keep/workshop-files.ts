import { type Problem, readCorner } from '../../corner/index.ts'
import { readKit } from '../../kit/index.ts'
import { digestOf, modelsOfLog, sealEntries } from '../../proof/index.ts'
import { readSpec } from '../../spec/index.ts'
import { clockNow, ownWorkshop, workshopJob } from '../../store/browser/index.ts'
import { fileNamed } from './file-named.ts'
import type { KeepAsks, KeptFile } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'
import { rowOf } from './kept-rows.ts'
import { saidInWorkshop } from './said-in-workshop.ts'

const readers = { corner: readCorner, spec: readSpec, kit: readKit } as const

/** The newest version of every file of the workshop. */
export async function workshopFiles({ store }: Keeper): Promise<KeepAsks['files']['back']> {
  const own = await ownWorkshop(store)
  if (!own) return { files: [] }
  const pinned = await store.job(workshopJob).pinned()
  const files = own.state.files.flatMap(({ what, id, digest }): readonly KeptFile[] => {
    const found = pinned.find((one) => one.digest === digest)
    return found ? [{ what, id, digest, file: found.file }] : []
  })
  return { files }
}

/**
 * Keeps a new version of a file and says so in the workshop's log. A file with a fault is not kept: its faults come back.
 *
 * @throws {Refusal} `no-workshop` while there is none to keep it for; `no-room`, `read-only`
 */
export async function fileSaved(
  keeper: Keeper,
  { what, file }: KeepAsks['saveFile']['give'],
): Promise<KeepAsks['saveFile']['back']> {
  const problems = faults(what, file)
  if (problems.length > 0) return { saved: null, problems }
  const { id } = file as { readonly id: string }
  const digest = digestOf(what, file)
  // The file comes first: the log never names what is not there.
  await keeper.store.job(workshopJob).pin({ what, digest, file })
  await saidInWorkshop(keeper, { kind: 'file kept', data: { what, id, digest } })
  return { saved: { what, id, digest, file }, problems: [] }
}

/** The files by which a job is worked, in the version that counts. */
export async function filesOfJob(
  { store }: Keeper,
  { job }: KeepAsks['filesOf']['give'],
): Promise<KeepAsks['filesOf']['back']> {
  const kept = store.job(job)
  const [{ entries }, pinned] = await Promise.all([kept.read(), kept.pinned()])
  const files = modelsOfLog(entries, pinned).flatMap(({ role, what, id, snapshot }) =>
    snapshot ? [{ role, what, id, digest: snapshot.digest, file: snapshot.file }] : [],
  )
  return { files }
}

/** Every fault of a file, without keeping it. */
export async function fileLookedAt({
  what,
  file,
}: KeepAsks['lookAt']['give']): Promise<KeepAsks['lookAt']['back']> {
  return { problems: faults(what, file) }
}

function faults(what: KeptFile['what'], file: unknown): readonly Problem[] {
  const reading = readers[what](file)
  return reading.ok ? [] : reading.problems
}

/** Says in a job's log that it is worked by the newest version of a file from now on. */
export async function workedWith(
  { store, device }: Keeper,
  { job, role, id, hand }: KeepAsks['workWith']['give'],
): Promise<KeepAsks['workWith']['back']> {
  const what = role === 'front' || role === 'rear' ? 'corner' : role
  const file = await fileNamed(store, what, id)
  const kept = store.job(job)
  const { whose } = await kept.read()
  if (!whose) throw new Error(`Job ${job} holds nothing to write on.`)
  const signer = await device()
  await kept.pin(file)
  await kept.change(whose, (known) =>
    sealEntries(
      [
        ...known,
        {
          kind: 'works with',
          data: { role, id: (file.file as { readonly id: string }).id, digest: file.digest },
        },
      ],
      { ...whose, signer, person: hand, ...clockNow() },
    ),
  )
  return { row: await rowOf(store, job) }
}
