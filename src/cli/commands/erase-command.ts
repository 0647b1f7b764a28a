import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { inCausalOrder, type PersonalPlace, photosNamed } from '../../job/index.ts'
import { personalDue, proofText, revealed } from '../../proof/index.ts'
import { clockNow, erasePrivate, jobFolder, strayPrivate, writeWhole } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { type Carried, carried } from '../record/carried.ts'
import { carriedJobIn } from '../record/carried-job-in.ts'
import { ownWorkshop } from '../record/own-workshop.ts'

/** What `erase` can be told. */
export interface EraseOptions {
  readonly due?: boolean
  readonly json?: boolean
}

/** What was erased of one job. */
interface Erased {
  readonly path: string
  readonly job: string
  readonly erased: number
  readonly gone: number
  readonly inClear: readonly PersonalPlace[]
}

/** `axlewright erase JOB [FIELD…]`: what is personal is taken out of a job’s folder or its proof; the log stays as it is. */
export async function eraseCommand(
  path: string,
  fields: readonly string[],
  options: EraseOptions,
): Promise<Outcome> {
  const done = options.due ? await erasedDue(path, fields) : [await erasedOf(await carried(path), fields)]
  if (options.json) return { out: `${JSON.stringify(done, null, 2)}\n`, code: codeOf(done) }
  const lines = done.flatMap(({ path: where, job, erased, gone, inClear }) => [
    `${where}: job ${job}, ${count(erased, 'value')} erased${gone > 0 ? `, ${gone} were erased before` : ''}. No entry was changed.`,
    ...(inClear.length > 0
      ? [
          `  ${count(inClear.length, 'value stands', 'values stand')} in clear in sealed entries (${[...new Set(inClear.map(nameOf))].join(', ')}): they were sealed before this could be done, and cannot be taken out without breaking the seal.`,
        ]
      : []),
  ])
  const none = options.due ? [`Nothing under ${path} is due yet.`] : []
  const rest = [
    'What others hold is theirs to erase: the job file that was typed, copies on sticks, proofs and papers that were handed out, backups.',
  ]
  return {
    out: `${[...(done.length > 0 ? [...lines, ...rest] : none)].join('\n')}\n`,
    code: codeOf(done),
  }
}

const codeOf = (done: readonly Erased[]) => (done.some(({ inClear }) => inClear.length > 0) ? 1 : 0)
const count = (n: number, one: string, more = `${one}s`) => `${n} ${n === 1 ? one : more}`
const nameOf = ({ kind, member }: PersonalPlace) => `${kind}.${member}`

async function erasedOf(job: Carried, fields: readonly string[]): Promise<Erased> {
  const { path, from, entries, values, proof } = job
  if (from === 'job file')
    throw new BadInput([
      `${path}: Nothing in a job file is kept apart. Write "erased" over what is personal in it yourself, or delete the file; for what was sealed from it name the job’s folder.`,
    ])
  if (proof && carriedJobIn(path))
    throw new BadInput([
      `${path}: A file for carrying is not changed. Take it in, erase in the folder, and carry that.`,
    ])
  const photos = photosAsked(job, fields)
  const shown = revealed(entries, values)
  const places = [...shown.there, ...shown.erased, ...shown.amiss, ...shown.inClear]
  const strange = fields.filter((field) => !isPhoto(field) && !places.some((place) => isNamed(place, field)))
  if (strange.length > 0)
    throw new BadInput([
      `${path}: Nothing personal in this job is called “${strange.join('”, “')}”. ${places.length > 0 ? `There is: ${[...new Set(places.map(nameOf))].sort().join(', ')}.` : 'There is nothing personal in it.'}`,
    ])
  const asked = (place: PersonalPlace) => fields.length === 0 || fields.some((field) => isNamed(place, field))
  const named = new Set(shown.there.filter(asked).map(({ commitment }) => commitment))
  const whose = { path, job: job.whose.job, gone: shown.erased.filter(asked).length }
  const inClear = shown.inClear.filter(asked)
  if (proof) {
    if (proof.beyond) throw new BadInput([`${path}: A newer version made this proof; erase with that one.`])
    const left = values.filter(({ commitment }) => !named.has(commitment))
    writeWhole(path, proofText({ ...proof, private: left }), { replace: true })
    return { ...whose, erased: named.size, inClear }
  }
  const folder = jobFolder(path)
  const rest = fields.length === 0 ? [...(await strayPrivate(folder, entries)), ...job.lostValues] : []
  const erased = await erasePrivate(folder, [...named, ...rest, ...photos])
  return { ...whose, erased, inClear }
}

const isPhoto = (field: string): boolean => field === 'photos' || field.startsWith('photo:')

/** Photos that are to go: all with "photos", one with "photo:" and the beginning of its hash. */
function photosAsked({ path, from, entries }: Carried, fields: readonly string[]): readonly string[] {
  const asked = fields.filter(isPhoto)
  if (asked.length > 0 && from !== 'folder')
    throw new BadInput([`${path}: Photos lie in the job’s folder. Name that.`])
  const all = [...photosNamed(inCausalOrder(entries)).keys()]
  return asked.flatMap((field) => {
    const begins = field === 'photos' ? '' : field.slice('photo:'.length).toLowerCase()
    const found = all.filter((hash) => hash.startsWith(begins))
    if (found.length === 0 || (field !== 'photos' && (begins.length < 6 || found.length > 1)))
      throw new BadInput([
        `${path}: “${field}” names no one photo of this job. ${all.length > 0 ? `There are: ${all.map((hash) => `photo:${hash.slice(0, 12)}`).join(', ')}.` : 'It has none.'}`,
      ])
    return found
  })
}

/** "vin", "consent.by", "arrival.vin". */
const isNamed = (place: PersonalPlace, field: string): boolean =>
  [nameOf(place), place.member, place.member.split('.').at(-1)].includes(field.trim())

/** Every job folder of a place that is due by what the workshop said of how long it keeps what is personal. */
async function erasedDue(place: string, fields: readonly string[]): Promise<readonly Erased[]> {
  const months = (await ownWorkshop())?.state.keepsMonths ?? null
  if (months === null)
    throw new BadInput([
      'Nobody said how long what is personal is kept. An owner says it: axlewright workshop keeps MONTHS.',
    ])
  const today = clockNow().at.slice(0, 10)
  const done: Erased[] = []
  for (const path of jobFoldersIn(place)) {
    const job = await carried(path)
    const due = personalDue(inCausalOrder(job.entries), months)
    if (due === null || due > today) continue
    const named = fields.filter((field) => hasField(job, field))
    if (fields.length > 0 && named.length === 0) continue
    const one = await erasedOf(job, named)
    if (one.erased > 0 || one.inClear.length > 0) done.push(one)
  }
  return done
}

const hasField = ({ entries, values }: Carried, field: string): boolean => {
  const { there, erased, amiss, inClear } = revealed(entries, values)
  return [...there, ...erased, ...amiss, ...inClear].some((one) => isNamed(one, field))
}

function jobFoldersIn(place: string): readonly string[] {
  const isJob = (path: string) =>
    statSync(join(path, 'log.jsonl'), { throwIfNoEntry: false })?.isFile() ?? false
  try {
    if (isJob(place)) return [place]
    return readdirSync(place, { withFileTypes: true })
      .filter((one) => one.isDirectory())
      .map(({ name }) => join(place, name))
      .filter(isJob)
  } catch {
    throw new BadInput([`${place}: There is no such folder. Name the one in which the job folders stand.`])
  }
}
