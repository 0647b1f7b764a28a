import { headsOf, inCausalOrder, type SealedEntry } from '../job/index.ts'
import {
  type CarryRefusal,
  canonicalText,
  digestOf,
  hashOf,
  readSealedLine,
  readZip,
  type Snapshot,
  verifyEntries,
  type ZipContent,
  type ZipSource,
} from '../proof/index.ts'
import { Refusal } from '../quantity/index.ts'
import { type BackupList, backupSchema } from './backup-schema.ts'
import type { Whose } from './log-store.ts'
import { keyName, listName } from './write-backup.ts'

/** A log in a backup, looked through. @source definition */
export interface BackedUpLog {
  readonly dir: string
  readonly whose: Whose
  /** In causal order. */
  readonly entries: readonly SealedEntry[]
  /** What is not intact about it, as it was not when it was backed up; null when all of it is. */
  readonly broken: string | null
  readonly pinned: () => readonly Snapshot[]
  readonly beside: readonly string[]
  readonly bytes: (hash: string) => Uint8Array
}

/** A backup, of which all was looked through. @source definition */
export interface Backup {
  readonly list: BackupList
  readonly logs: readonly BackedUpLog[]
  /** The secret key of the device that wrote it, where it was asked for. */
  readonly key: string | null
}

const giga = 1024 ** 3
const limits = { files: 65_534, each: giga / 2, all: 16 * giga }

/**
 * A backup, looked through from end to end before anything of it is used: no bit of the file was changed and nothing was
 * cut off; the list names every file with its SHA-256; logs are spelled as they were sealed and belong together; what lies
 * under a hash has it.
 *
 * @throws {Refusal} `no-carried-file`; `cut-off`; `changed`; `too-much`; `strange-name`
 * @source own derivation: docs/methods/carrying.md
 */
export async function readBackup(source: ZipSource): Promise<Backup> {
  const contents = new Map(readZip(source, limits).map((one) => [one.name, one]))
  const list = listOf(contents.get(listName))
  const names = list.files.map(({ name }) => name)
  const strange = [...contents.keys()].find((name) => name !== listName && !names.includes(name))
  if (strange !== undefined) throw refusal('changed', strange, `“${strange}” is in it and not in its list.`)
  for (const { name, size, sha256 } of list.files) {
    const content = contents.get(name)
    if (!content) throw refusal('changed', name, `“${name}” is in its list and not in it.`)
    if (content.size !== size || hashOf(content.bytes()) !== sha256)
      throw refusal('changed', name, `“${name}” is not what its list says.`)
    if (name !== keyName && !isPlaced(name, list))
      throw refusal('strange-name', name, `“${name}” belongs to no log.`)
  }
  const logs: BackedUpLog[] = []
  for (const log of list.logs) logs.push(await logOf(log, contents))
  const key = contents.get(keyName)
  return { list, logs, key: key ? decoded(key.bytes()) : null }
}

const refusal = (code: CarryRefusal, given: string, sentence: string) =>
  new Refusal<CarryRefusal>({
    code,
    at: 'file',
    given,
    sentence: `The backup is not as it was written: ${sentence} Nothing was taken in.`,
    remedy: 'Take another copy of it, or another backup.',
  })

function listOf(content: ZipContent | undefined): BackupList {
  const text = content ? decoded(content.bytes()) : ''
  try {
    const value: unknown = JSON.parse(text)
    const read = backupSchema.safeParse(value)
    if (read.success && `${canonicalText(value)}\n` === text) return read.data
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
  }
  throw new Refusal<CarryRefusal>({
    code: 'no-carried-file',
    at: 'file',
    given: listName,
    sentence: content
      ? 'The list of this backup cannot be read: a newer version may have made it.'
      : 'This is no backup: there is no list in it.',
    remedy: 'Name a file that "backup" wrote, or take the newest version of the program.',
  })
}

const place =
  /^logs\/([^/]+)\/(?:log\.jsonl|pinned\/(?:corner|spec|kit)-[0-9a-f]{64}\.json|beside\/[0-9a-f]{64})$/

const isPlaced = (name: string, { logs }: BackupList): boolean => {
  const dir = place.exec(name)?.[1]
  return dir !== undefined && logs.some((one) => one.dir === dir)
}

async function logOf(
  { dir, workshop, job, entries: count, heads }: BackupList['logs'][number],
  contents: ReadonlyMap<string, ZipContent>,
): Promise<BackedUpLog> {
  const name = `logs/${dir}/log.jsonl`
  const lines = decoded(contents.get(name)?.bytes() ?? new Uint8Array())
    .split('\n')
    .slice(0, -1)
  const read = lines.map(readSealedLine)
  const bad = read.indexOf(null)
  if (bad >= 0)
    throw refusal('changed', name, `line ${bad + 1} of “${name}” is not spelled as it was sealed.`)
  const whose = { workshop, job }
  const entries = inCausalOrder(read as readonly SealedEntry[]) as readonly SealedEntry[]
  const isAll = entries.length === count && canonicalText(headsOf(entries)) === canonicalText(heads)
  if (!isAll) throw refusal('changed', name, `“${name}” does not end where its list says.`)
  const [broken] = await verifyEntries(entries, whose)
  const within = (folder: string) =>
    [...contents.keys()].filter((one) => one.startsWith(`logs/${dir}/${folder}/`))
  for (const one of within('beside'))
    if (hashOf(contents.get(one)!.bytes()) !== one.slice(-64))
      throw refusal('changed', one, `“${one}” is not what its name says.`)
  const pinned = () =>
    within('pinned').map((one): Snapshot => {
      const [, what, digest] = /(corner|spec|kit)-([0-9a-f]{64})\.json$/.exec(one)!
      const file: unknown = JSON.parse(decoded(contents.get(one)!.bytes()))
      if (digestOf(what as Snapshot['what'], file) !== digest)
        throw refusal('changed', one, `“${one}” is not what its name says.`)
      return { what: what as Snapshot['what'], digest, file }
    })
  pinned()
  return {
    dir,
    whose,
    entries,
    broken: broken ? `entry ${broken.entry + 1}: ${broken.sentence}` : null,
    pinned,
    beside: within('beside').map((one) => one.slice(-64)),
    bytes: (hash) => contents.get(`logs/${dir}/beside/${hash}`)!.bytes(),
  }
}

const decoded = (bytes: Uint8Array): string => new TextDecoder('utf-8').decode(bytes)
