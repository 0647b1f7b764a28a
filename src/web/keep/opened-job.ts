import type { Entry } from '../../job/index.ts'
import { type Snapshot, sealEntries } from '../../proof/index.ts'
import { clockNow, ownWorkshop, pinAll } from '../../store/browser/index.ts'
import { fileNamed } from './file-named.ts'
import { freeNumber } from './free-number.ts'
import type { KeepAsks, NewJob } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'
import { rowOf } from './kept-rows.ts'

/** Opens a job: what it is about, and the files by which it is worked, in the version of today. */
export async function openedJob({ store, device }: Keeper, job: NewJob): Promise<KeepAsks['open']['back']> {
  const signer = await device()
  const number = await freeNumber(store, signer)
  const workshop = (await ownWorkshop(store))?.name ?? 'not named yet'
  const { front, rear } = job.corners
  const asked = [
    ['front', 'corner', front],
    ['rear', 'corner', rear],
    ['spec', 'spec', job.spec],
    ['kit', 'kit', job.kit],
  ] as const
  const files = await Promise.all(
    asked.flatMap(([role, what, id]) =>
      id === null ? [] : [fileNamed(store, what, id).then((file): Used => ({ role, ...file }))],
    ),
  )
  const whose = { workshop, job: number }
  const kept = store.job(number)
  // The files come first: a log never names what is not there.
  await pinAll(kept, 'not written yet', files)
  await kept.change(whose, () =>
    sealEntries(entriesOf(job, number, files), { ...whose, signer, person: job.hand, ...clockNow() }),
  )
  return { row: await rowOf(store, number) }
}

/** A file by which the job is worked, under its role. */
type Used = Snapshot & { readonly role: 'front' | 'rear' | 'spec' | 'kit' }

/** What a file calls itself: a layout to start from is chosen by another name. */
const nameOf = ({ file }: Used): string => (file as { readonly id: string }).id

function entriesOf(job: NewJob, number: string, files: readonly Used[]): readonly Entry[] {
  const { vehicle, complaint, follows } = job
  const name = (role: Used['role']) => {
    const used = files.find((file) => file.role === role)
    return used && nameOf(used)
  }
  const [front, rear, spec, kit] = [name('front'), name('rear'), name('spec'), name('kit')]
  const opened: Entry = {
    kind: 'opened',
    data: {
      number,
      vehicle,
      complaint,
      corners: { front, ...(rear ? { rear } : {}) },
      ...(spec ? { spec } : {}),
      ...(kit ? { kit } : {}),
    },
  }
  const cameBack = follows && {
    kind: 'came back',
    data: { job: follows.job, complaint, ...(follows.mileage ? { mileage: follows.mileage } : {}) },
  }
  return [
    opened,
    ...(cameBack ? [cameBack] : []),
    ...files.map((used) => ({
      kind: 'works with',
      data: { role: used.role, id: nameOf(used), digest: used.digest },
    })),
  ]
}
