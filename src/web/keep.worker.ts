/// <reference lib="webworker" />

import { browserDevice, browserStore } from '../store/browser/index.ts'
import { carriedOut } from './keep/carried-out.ts'
import type { KeepAnswer, KeepAsk, KeepAsks } from './keep/keep-messages.ts'
import type { Keeper } from './keep/keeper.ts'
import { keptRows } from './keep/kept-rows.ts'
import { openedJob } from './keep/opened-job.ts'
import { codeChecked, peopleHere, personAdded } from './keep/people.ts'
import { sealedEdits } from './keep/sealed-edits.ts'
import { signedOff } from './keep/signed-off.ts'
import { takenIn } from './keep/taken-in.ts'
import { workshopBegun, workshopHere } from './keep/workshop.ts'
import { fileLookedAt, fileSaved, filesOfJob, workedWith, workshopFiles } from './keep/workshop-files.ts'
import { plainOf } from './state/plain-of.ts'

const keeper: Keeper = { store: browserStore(), device: browserDevice }
/** Other windows of the page hear that a job has changed. */
const heard = new BroadcastChannel('axlewright')

type Does = {
  readonly [K in keyof KeepAsks]: (give: KeepAsks[K]['give']) => Promise<KeepAsks[K]['back']>
}

const does: Does = {
  rows: async () => ({ rows: await keptRows(keeper.store) }),
  open: (give) => openedJob(keeper, give),
  seal: (give) => sealedEdits(keeper, give),
  signOff: (give) => signedOff(keeper, give),
  carryOut: (give) => carriedOut(keeper, give),
  takeIn: (give) => takenIn(keeper, give),
  files: () => workshopFiles(keeper),
  filesOf: (give) => filesOfJob(keeper, give),
  lookAt: (give) => fileLookedAt(give),
  saveFile: (give) => fileSaved(keeper, give),
  workWith: (give) => workedWith(keeper, give),
  keepPhoto: async ({ job, bytes }) => ({ hash: await keeper.store.job(job).keep(bytes) }),
  photo: async ({ job, hash }) => ({ bytes: await keeper.store.job(job).beside(hash) }),
  workshop: () => workshopHere(keeper),
  people: () => peopleHere(keeper),
  addPerson: (give) => personAdded(keeper, give),
  checkCode: (give) => codeChecked(keeper, give),
  begin: (give) => workshopBegun(keeper, give),
}
const reads: readonly (keyof KeepAsks)[] = [
  'rows',
  'carryOut',
  'files',
  'filesOf',
  'lookAt',
  'photo',
  'keepPhoto',
  'people',
  'checkCode',
  'workshop',
]

// One after another: what was asked first is on disk before the next is begun.
let before: Promise<unknown> = Promise.resolve()

self.onmessage = ({ data: { turn, kind, give } }: MessageEvent<KeepAsk>) => {
  before = before.then(async () => {
    const say = (answer: KeepAnswer) => self.postMessage(answer)
    try {
      const back = await (does[kind] as (given: unknown) => Promise<KeepAsks[typeof kind]['back']>)(give)
      say({ turn, back })
      if (!reads.includes(kind)) heard.postMessage('changed')
    } catch (error) {
      say({ turn, trouble: plainOf(error) })
    }
  })
}
