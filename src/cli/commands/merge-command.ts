import {
  foldJob,
  inCausalOrder,
  isSealed,
  type SealedEntry,
  type Trouble,
  writeJob,
} from '../../job/index.ts'
import { verifyEntries } from '../../proof/index.ts'
import { jobFolder, pinAll, writeWhole } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { carried } from '../record/carried.ts'

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
  const told = given.flatMap((one) => [
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
  if (options.to.endsWith('.json')) {
    const text = `${JSON.stringify(writeJob({ ...whose, entries }), null, 2)}\n`
    writeWhole(options.to, text, { replace: false })
  } else {
    const folder = jobFolder(options.to)
    await folder.change(whose, () => entries)
    await pinAll(folder, `on disk in ${options.to}`, snapshots)
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
