import { closestName } from '../../corner/index.ts'
import { type Entry, foldJob, inCausalOrder, type SealedEntry, wheelNames } from '../../job/index.ts'
import { hashOf, sealEntries, verifyEntries, withoutMetadata } from '../../proof/index.ts'
import { clockNow, jobFolder } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { readBytes } from '../files/read-bytes.ts'
import { type Carried, carried } from '../record/carried.ts'
import { deviceSigner } from '../record/device-signer.ts'
import { entriesAgainst } from '../record/entries-against.ts'
import { handAsked } from '../record/hand-asked.ts'

/** What `photo` can be told. */
export interface PhotoOptions {
  readonly person: string
  readonly words: string
  readonly joint?: string
  readonly wheel?: string
  readonly part?: string
  readonly shows?: string
  readonly json?: boolean
}

/** Bytes. */
const most = 20 * 1024 * 1024

/** `axlewright photo JOB FILE`: keeps a photo beside the job's log, without its place, and names it in the log. */
export async function photoCommand(path: string, file: string, options: PhotoOptions): Promise<Outcome> {
  const job = await carried(path)
  if (job.from !== 'folder')
    throw new BadInput([
      `${path}: A photo lies in the job’s folder. Name the folder that "seal" or "merge" made.`,
    ])
  const given = readBytes(file, most, 'Have the camera take smaller ones, or scale it down first.')
  const photo = withoutMetadata(given)
  const hash = hashOf(photo.bytes)
  const entry = entryOf(job, hash, options)
  const hand = await handAsked(options.person, job.whose.workshop)
  const signer = await deviceSigner()
  const folder = jobFolder(job.path)
  const whose = job.whose
  const { appended, told } = await folder.change(whose, async (known) => {
    const entries = inCausalOrder(known) as readonly SealedEntry[]
    const [broken] = await verifyEntries(entries, whose)
    if (broken)
      throw new BadInput([`Entry ${broken.entry + 1} is not intact: ${broken.sentence} Nothing was written.`])
    const again = foldJob(entries).photos.find((one) => one.hash === hash && one.of === options.words)
    if (again) return []
    // The picture first: what the log names is there.
    await folder.keep(photo.bytes)
    return sealEntries([...entries, entry], { ...whose, signer, person: options.person, ...clockNow() })
  })
  const { width, height, without, orientation } = photo
  const [across, up] = orientation > 4 ? [height, width] : [width, height]
  if (options.json)
    return {
      out: `${JSON.stringify({ hash, bytes: photo.bytes.length, width: across, height: up, without, appended: appended.map(({ id }) => id), told }, null, 2)}\n`,
      code: 0,
    }
  const lines = [
    ...hand,
    ...told,
    appended.length > 0
      ? `Kept in ${job.path}, on disk: ${across} × ${up} pixels, ${Math.ceil(photo.bytes.length / 1024)} kB, ${hash}.`
      : `It is kept in ${job.path} already, with these words: ${hash}.`,
    without.length > 0
      ? `Taken out: ${without.join(', ')}. The picture itself is as it was.`
      : 'There was nothing in it but the picture.',
    'The command cannot scale a picture; the page does that when a photo is taken there.',
    'Faces and plates that are seen in it stay in it.',
  ]
  return { out: `${lines.join('\n')}\n`, code: 0 }
}

/** The entry, looked at as every other one is: its words, and the job’s own names. */
function entryOf(job: Carried, hash: string, options: PhotoOptions): Entry {
  const { words, joint, wheel, part, shows } = options
  const entry: Entry = {
    kind: 'photo',
    data: {
      hash,
      of: words,
      ...(wheel === undefined ? {} : { wheel }),
      ...(joint === undefined ? {} : { joint }),
      ...(part === undefined ? {} : { part }),
      ...(shows === undefined ? {} : { beside: /^\d+$/.test(shows) ? Number(shows) : shows }),
    },
  }
  const problems = entriesAgainst(job, [entry])
  if (problems.length === 0) return entry
  throw new BadInput(
    problems.map(({ field, wrong, right }) => {
      const close = field.endsWith('.wheel') && wheel ? closestName(wheel, wheelNames) : null
      return `${field.replace('entries[0].data.', '--')}: ${wrong} Right would be ${close ? `"${close}"` : right}.`
    }),
  )
}
