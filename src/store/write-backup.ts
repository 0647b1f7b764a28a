import { headsOf } from '../job/index.ts'
import { canonicalText, digestOf, hashOf, type ZipFile, zipInParts } from '../proof/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { BackupList } from './backup-schema.ts'
import type { KeptJob } from './log-store.ts'

/** A log to be kept in a backup. @source definition */
export interface LogToKeep {
  /** Its folder within the backup; plain characters. */
  readonly dir: string
  readonly kept: KeptJob
}

/** What a backup holds, and what of it is not as it should be. @source definition */
export interface BackupWritten {
  readonly list: BackupList
  /** What could not be read any more, and is not in the backup. */
  readonly told: readonly string[]
}

/** Of the device's secret key, when it is asked for. @source definition */
export const keyName = 'keys/device.key'
/** Of the list. @source definition */
export const listName = 'manifest.json'

/**
 * Everything that is kept, as one file: logs, pinned files, photos and whatever else lies beside, each with its SHA-256 in
 * a list. What is in it does not depend on which kind of store it comes from.
 *
 * @param at when, by the device's clock
 * @param key the device's secret key, only where somebody asked for it
 * @param write takes the parts of the file, one after the other
 * @throws {Refusal} `too-much`, `strange-name`
 * @source own derivation: docs/methods/carrying.md
 */
export async function writeBackup(
  logs: readonly LogToKeep[],
  { at, key, write }: { at: string; key?: string | undefined; write: (part: Uint8Array) => void },
): Promise<BackupWritten> {
  const files: BackupList['files'] = []
  const named: BackupList['logs'] = []
  const told: string[] = []
  const zip = zipInParts(write)
  const add = (file: ZipFile) => {
    zip.add(file)
    files.push({ name: file.name, size: file.bytes.length, sha256: hashOf(file.bytes) })
  }
  const text = (said: string) => new TextEncoder().encode(said)
  for (const { dir, kept } of logs.toSorted((a, b) => (a.dir < b.dir ? -1 : 1))) {
    const { whose, entries, spoilt, told: torn } = await kept.read()
    told.push(...torn)
    for (const { line, sentence } of spoilt)
      told.push(`${dir}, line ${line} of its log: ${sentence} It is not in the backup.`)
    if (whose === null || entries.length === 0) continue
    named.push({ dir, ...whose, entries: entries.length, heads: [...headsOf(entries)] })
    add({
      name: `logs/${dir}/log.jsonl`,
      bytes: text(entries.map((entry) => `${canonicalText(entry)}\n`).join('')),
      pack: true,
    })
    for (const hash of (await kept.kept()).toSorted())
      try {
        const bytes = await kept.beside(hash)
        if (bytes) add({ name: `logs/${dir}/beside/${hash}`, bytes, pack: false })
      } catch (error) {
        if (!(error instanceof Refusal) || error.code !== 'spoilt') throw error
        told.push(`${dir}: ${error.sentence} It is not in the backup.`)
      }
    const pinned = new Map((await kept.pinned()).map((one) => [`${one.what}-${one.digest}`, one]))
    for (const [name, { what, digest, file }] of [...pinned].sort(([a], [b]) => (a < b ? -1 : 1)))
      if (digestOf(what, file) === digest)
        add({ name: `logs/${dir}/pinned/${name}.json`, bytes: text(`${canonicalText(file)}\n`), pack: true })
      else told.push(`${dir}: The pinned ${what} ${digest} was changed. It is not in the backup.`)
  }
  if (key !== undefined) add({ name: keyName, bytes: text(key), pack: false })
  const list: BackupList = { format: 1, kind: 'backup', at, logs: named, files }
  zip.add({ name: listName, bytes: text(`${canonicalText(list)}\n`), pack: true })
  zip.end()
  return { list, told }
}
