import { dirname, join } from 'node:path'
import { fingerprint } from '../../proof/index.ts'
import { folderName, jobFolder, pinAll, takeIn } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { carried } from '../record/carried.ts'
import { deviceSigner } from '../record/device-signer.ts'
import { handAsked } from '../record/hand-asked.ts'
import { modelsBeside } from '../record/models-beside.ts'
import { ownWorkshop } from '../record/own-workshop.ts'

/** What `seal` can be told. */
export interface SealOptions {
  readonly person: string
  readonly in?: string
  readonly with?: readonly string[]
  readonly add?: boolean
  readonly json?: boolean
}

/** `axlewright seal JOB`: what a job file says is sealed by this device and kept in the job's folder. */
export async function sealCommand(path: string, options: SealOptions): Promise<Outcome> {
  const file = await carried(path)
  const { whose, entries } = file
  if (file.from !== 'job file')
    throw new BadInput([
      `${path}: All of it is sealed already. Write what is new into a job file, and seal that.`,
    ])
  const folder = join(options.in ?? dirname(path), folderName(whose.job))
  const models = modelsBeside(path, entries, options.with ?? [])
  const signer = await deviceSigner()
  const hand = await handAsked(options.person, whose.workshop)
  const workshop = await ownWorkshop()
  const kept = jobFolder(folder)
  const { appended, told } = await takeIn(
    kept,
    { path, whose, entries, values: file.values },
    { signer, person: options.person, add: options.add ?? false, saying: 'say --add' },
  )
  await pinAll(
    kept,
    `on disk in ${folder}`,
    models.flatMap(({ snapshot }) => (snapshot ? [snapshot] : [])),
  )
  const mine = appended.filter(({ device }) => device === signer.key).length
  const absent = models.filter(({ snapshot }) => !snapshot)
  if (options.json)
    return {
      out: `${JSON.stringify({ folder, ...whose, appended: appended.map(({ id }) => id), device: signer.key, absent: absent.map(({ what, id }) => ({ what, id })), told }, null, 2)}\n`,
      code: 0,
    }
  const lines = [
    ...hand,
    ...told,
    mine > 0
      ? `${mine} ${mine === 1 ? 'entry' : 'entries'} sealed by this device (${fingerprint(signer.key)}), and on disk in ${folder}.`
      : `Nothing new to seal: all of it is in ${folder}.`,
    ...(appended.length > mine ? [`${appended.length - mine} taken in as others sealed them.`] : []),
    ...absent.map(
      ({ what, id }) =>
        `The ${what} file “${id}” is not beside the job, so it is not kept with it; seal again when it is, or name it with --with.`,
    ),
    ...strange(whose.workshop, workshop?.name ?? null),
  ]
  return { out: `${lines.join('\n')}\n`, code: 0 }
}

function strange(workshop: string, own: string | null): readonly string[] {
  if (own === workshop) return []
  return [
    own === null
      ? 'This device belongs to no workshop yet, so others cannot tell whose hand it is: "axlewright workshop --help".'
      : `The job is of “${workshop}”, and this device belongs to “${own}”: its hand will not be known there.`,
  ]
}
