import manifest from '../../../package.json' with { type: 'json' }
import { foldJob, inCausalOrder, type SealedEntry } from '../../job/index.ts'
import { fingerprint, sealEntries, signOffEntry, verifyEntries } from '../../proof/index.ts'
import { clockNow, jobFolder } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { carried } from '../record/carried.ts'
import { deviceSigner } from '../record/device-signer.ts'
import { handAsked } from '../record/hand-asked.ts'
import { modelsPinned } from '../record/models-beside.ts'
import { troubleLines } from './merge-command.ts'

/** What `sign-off` can be told. */
export interface SignOffOptions {
  readonly person: string
  readonly remark?: string
  readonly with?: readonly string[]
}

/** `axlewright sign-off JOB`: the work is signed: all entries that are there, and the models and rules behind them. */
export async function signOffCommand(path: string, options: SignOffOptions): Promise<Outcome> {
  const job = await carried(path)
  const { whose } = job
  if (job.from !== 'folder')
    throw new BadInput([
      `${path}: Only a job that is kept in its folder can be signed off. Name the folder that "seal" or "merge" made.`,
    ])
  const given = options.with ?? []
  const signer = await deviceSigner()
  const hand = await handAsked(options.person, whose.workshop)
  const folder = jobFolder(job.path)
  const refusals: string[] = []
  const { appended, told } = await folder.change(whose, async (known) => {
    const entries = inCausalOrder(known) as readonly SealedEntry[]
    const [broken] = await verifyEntries(entries, whose)
    if (broken)
      throw new BadInput([
        `Entry ${broken.entry + 1} is not intact: ${broken.sentence} What is not intact cannot be signed.`,
      ])
    const open = foldJob(entries).troubles.filter(({ choice }) => choice !== undefined)
    if (open.length > 0) {
      refusals.push('Not signed: the log says two things, and somebody must decide first.')
      refusals.push(...troubleLines(open, entries), `"axlewright decide ${job.path}" shows what each says.`)
      return []
    }
    const models = modelsPinned(entries, job.snapshots, given)
    const absent = models.filter(({ snapshot }) => !snapshot)
    if (absent.length > 0 || models.length === 0)
      throw new BadInput([
        ...absent.map(
          ({ what, id }) =>
            `The job names the ${what} “${id}”, and it is not kept with it. Name its file with --with.`,
        ),
        ...(models.length === 0
          ? ['The job has no “opened” entry, so nobody knows which vehicle it is.']
          : []),
      ])
    for (const { snapshot } of models) await folder.pin(snapshot!)
    const file = (role: string) => models.find((one) => one.role === role)?.snapshot?.file
    const entry = signOffEntry(entries, {
      files: { front: file('front'), rear: file('rear'), spec: file('spec'), kit: file('kit') },
      engine: manifest.version,
      hand: options.person,
      ...(options.remark === undefined ? {} : { remark: options.remark }),
    })
    return sealEntries([...entries, entry], { ...whose, signer, person: options.person, ...clockNow() })
  })
  if (refusals.length > 0) return { out: `${refusals.join('\n')}\n`, code: 1 }
  const troubles = foldJob(inCausalOrder((await folder.read()).entries)).troubles.length
  const lines = [
    ...hand,
    ...told,
    `Signed off by ${options.person} with this device (${fingerprint(signer.key)}): ${appended[0]!.after.length === 1 ? 'its log' : 'all branches of its log'} up to now, in ${job.path}.`,
    ...(troubles > 0
      ? [
          `${troubles} things in it are still to be looked at: "axlewright merge ${path} --to FILE" lists them.`,
        ]
      : []),
    `Now write the proof: axlewright prove ${path}`,
  ]
  return { out: `${lines.join('\n')}\n`, code: 0 }
}
