import {
  foldJob,
  inCausalOrder,
  isSealed,
  photosNamed,
  type SealedEntry,
  type Trouble,
  writeJob,
} from '../../job/index.ts'
import { verifyEntries } from '../../proof/index.ts'
import { erasePrivate, jobFolder, keepPrivate, pinAll, writeWhole } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { carried } from '../record/carried.ts'
import { photosOf } from '../record/carried-photos.ts'
import { keepPhotos } from '../record/keep-photos.ts'

/** What `merge` can be told. */
export interface MergeOptions {
  readonly to: string
  readonly json?: boolean
}

/** `axlewright merge A B …`: the files of one job united into a new one; what they say against each other is listed. */
export async function mergeCommand(paths: readonly string[], options: MergeOptions): Promise<Outcome> {
  const given = await Promise.all(paths.map((path) => carried(path)))
  const [first] = given
  const { whose } = first!
  const other = given.find((one) => one.whose.job !== whose.job || one.whose.workshop !== whose.workshop)
  if (other)
    throw new BadInput([
      `${first!.path} is job ${whose.job} of “${whose.workshop}”, and ${other.path} is job ${other.whose.job} of “${other.whose.workshop}”. Only files of one job can be merged.`,
    ])
  const bare = given.find(({ entries }) => !entries.every(isSealed))
  if (bare)
    throw new BadInput([
      `${bare.path}: Some entries of it are not sealed. Seal it first: axlewright seal ${bare.path} --person …`,
    ])
  const entries = inCausalOrder(given.flatMap((one) => one.entries)) as readonly SealedEntry[]
  const told: string[] = given.flatMap((one) => [
    ...one.told,
    ...one.spoilt.map(({ line, sentence }) => `${one.path}, line ${line}: ${sentence} It is left out.`),
  ])
  const broken = await verifyEntries(entries, whose)
  if (broken.length > 0)
    return {
      out: `${[...told, ...broken.slice(0, 10).map(({ entry, sentence }) => `Entry ${entry + 1}, ${entries[entry]!.kind}: ${sentence}`), 'It is not intact, so nothing was written. Merge it with a copy that is whole.'].join('\n')}\n`,
      code: 1,
    }
  const snapshots = [
    ...new Map(given.flatMap((one) => one.snapshots).map((one) => [one.digest, one])).values(),
  ]
  const erased = new Set(given.flatMap((one) => one.erasedValues))
  const values = [
    ...new Map(given.flatMap((one) => one.values).map((one) => [one.commitment, one])).values(),
  ].filter(({ commitment, salt }) => salt !== '' && !erased.has(commitment))
  const photos = await Promise.all(given.map(photosOf))
  if (options.to.endsWith('.json')) {
    const job = { ...whose, entries, ...(values.length > 0 ? { private: values } : {}) }
    const text = `${JSON.stringify(writeJob(job), null, 2)}\n`
    writeWhole(options.to, text, { replace: false })
    const count = photosNamed(entries).size
    if (count > 0) told.push(`A job file holds no photos; ${count} stay where they are.`)
  } else {
    const folder = jobFolder(options.to)
    await folder.change(whose, () => entries)
    await keepPrivate(folder, values)
    await erasePrivate(folder, [...erased])
    await pinAll(folder, `on disk in ${options.to}`, snapshots)
    told.push(...(await keepPhotos(options.to, entries, photos)))
  }
  const { troubles } = foldJob(entries)
  if (options.json)
    return {
      out: `${JSON.stringify({ to: options.to, ...whose, entries: entries.length, told, troubles: troubles.map((one) => ({ ...one, ids: one.entries.map((i) => entries[i]!.id) })) }, null, 2)}\n`,
      code: troubles.length > 0 ? 1 : 0,
    }
  const lines = [
    ...told,
    ...given.map((one) => `${one.path}: ${one.entries.length} entries`),
    `Together ${entries.length} entries, all intact, written to ${options.to}.`,
    ...troubleLines(troubles, entries),
  ]
  return { out: `${lines.join('\n')}\n`, code: troubles.length > 0 ? 1 : 0 }
}

/** What a person must decide: each with the entries it comes from, by place and id. */
export function troubleLines(
  troubles: readonly Trouble[],
  entries: readonly SealedEntry[],
): readonly string[] {
  return troubles.flatMap((trouble) => [
    `! ${trouble.sentence}`,
    ...trouble.entries.map((i) => {
      const { kind, person, at, id } = entries[i]!
      return `    entries[${i}], ${kind}, ${person}, ${at}: ${id}`
    }),
    `    ${trouble.remedy}`,
  ])
}
