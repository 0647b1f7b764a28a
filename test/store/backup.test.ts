import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, describe, expect, test } from 'vitest'
import { headsOf } from '../../src/job/index.ts'
import {
  canonicalText,
  digestOf,
  hashOf,
  privateBytes,
  sealEntries,
  signerOf,
  zipInParts,
} from '../../src/proof/index.ts'
import { Refusal } from '../../src/quantity/index.ts'
import {
  type Backup,
  erasePrivate,
  fileStore,
  jobFolder,
  type LogToKeep,
  readBackup,
  restoreBackup,
  wholeFile,
  writeBackup,
} from '../../src/store/index.ts'
import { jpegAsTaken, picture } from '../support/photos.ts'
import { noted, whose } from './sealed-log.ts'

const top = mkdtempSync(join(tmpdir(), 'axlewright-backup-'))
afterAll(() => rmSync(top, { recursive: true, force: true }))
let count = 0
const place = () => join(top, String(count++))

const bytesOf = async (logs: readonly LogToKeep[], key?: string) => {
  const parts: Uint8Array[] = []
  const written = await writeBackup(logs, {
    at: '2026-03-14T18:00:00Z',
    key,
    write: (part) => parts.push(part),
  })
  return { ...written, bytes: Uint8Array.from(Buffer.concat(parts)) }
}
const read = (bytes: Uint8Array): Promise<Backup> =>
  readBackup({ size: bytes.length, read: (at, n) => bytes.subarray(at, at + n) })
const refusalOf = async (act: () => Promise<unknown>): Promise<Refusal | null> => {
  try {
    await act()
    return null
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
}
const secret = { salt: '5a'.repeat(32), value: 'a plate' }
const commitment = hashOf(privateBytes(secret)!)

/** A device: two jobs, photos, a pinned file, a personal value, the workshop's log. */
async function device() {
  const store = fileStore(place())
  const log = await noted(
    [],
    Array.from({ length: 30 }, (_, i) => `note ${i} `.repeat(4)),
  )
  const job = store.job(whose.job)
  await job.change(whose, () => log)
  await job.keep(jpegAsTaken('baseline'))
  await job.keep(picture('exact'))
  await job.keep(privateBytes(secret)!)
  const corner = { id: 'a', name: 'A corner' }
  await job.pin({ what: 'corner', digest: digestOf('corner', corner), file: corner })
  const other = { ...whose, job: 'a/b' }
  await store.job('a/b').change(other, async () => noted([], ['x'], { job: 'a/b', device: 2 }))
  const root = await signerOf('77'.repeat(32))
  const own = { ...whose, job: 'workshop' }
  await store.job('workshop').change(own, () =>
    sealEntries([{ kind: 'workshop made', data: { name: whose.workshop } }], {
      ...own,
      signer: root,
      person: 'root',
      at: '2026-03-14T18:00:00Z',
      offset: '+01:00',
    }),
  )
  const logs = [
    { dir: 'job-7-0412', kept: job },
    { dir: 'job-a', kept: store.job('a/b') },
    { dir: 'workshop', kept: store.job('workshop') },
  ]
  return { store, job, log, logs }
}
const into = (at: string) => {
  const store = fileStore(at)
  return {
    store,
    place: ({ whose: { job } }: { readonly whose: { readonly job: string } }) => store.job(job),
  }
}
/** All files below a folder, with their bytes. */
const files = (folder: string) =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => statSync(join(folder, name)).isFile())
      .sort()
      .map((name) => [name, readFileSync(join(folder, name), 'latin1')]),
  )

const first = await device()
const { bytes: whole, list, told } = await bytesOf(first.logs, 'secret\n')

describe('CA9 backed up, wiped, restored: everything is as it was', () => {
  test('nothing was left out, and the list has every file with its SHA-256', () => {
    expect(told).toEqual([])
    expect(list.files.map(({ name }) => name.replace(/[0-9a-f]{64}/, '#'))).toEqual([
      'logs/job-7-0412/log.jsonl',
      ...Array.from({ length: 3 }, () => 'logs/job-7-0412/beside/#'),
      'logs/job-7-0412/pinned/corner-#.json',
      'logs/job-a/log.jsonl',
      'logs/workshop/log.jsonl',
      'keys/device.key',
    ])
    for (const { name, sha256 } of list.files.filter((one) => one.name.includes('/beside/')))
      expect(sha256).toBe(name.slice(-64))
  })

  test('heads, entries, pinned files and photos come back', async () => {
    const { store, place: where } = into(place())
    const done = await restoreBackup(await read(whole), where)
    expect(done.flatMap((one) => one.told)).toEqual([])
    for (const [name, from] of [
      ['7-0412', first.job],
      ['a/b', first.store.job('a/b')],
      ['workshop', first.store.job('workshop')],
    ] as const) {
      const [was, is] = [await from.read(), await store.job(name).read()]
      expect(headsOf(is.entries)).toEqual(headsOf(was.entries))
      expect(is.entries).toEqual(was.entries)
      expect(await store.job(name).pinned()).toEqual(await from.pinned())
      expect(await store.job(name).kept()).toEqual(await from.kept())
      for (const hash of await from.kept())
        expect(await store.job(name).beside(hash)).toEqual(await from.beside(hash))
    }
    expect(done.map(({ heads }) => heads)).toEqual(list.logs.map(({ heads }) => heads))
    // A backup of what was restored is the same file.
    const again = await bytesOf(
      [
        { dir: 'job-7-0412', kept: store.job('7-0412') },
        { dir: 'job-a', kept: store.job('a/b') },
        { dir: 'workshop', kept: store.job('workshop') },
      ],
      'secret\n',
    )
    expect(Buffer.from(again.bytes).equals(whole)).toBe(true)
  })

  test('a key is in it only where it was asked for', async () => {
    expect((await read(whole)).key).toBe('secret\n')
    const without = await bytesOf(first.logs)
    expect((await read(without.bytes)).key).toBe(null)
    expect(Buffer.from(without.bytes).includes('secret\n')).toBe(false)
  })
})

describe('CA10 a flipped or cut backup is refused, with the file in which it is', () => {
  test('200 random flips, each found', async () => {
    const view = new DataView(whole.buffer)
    const begins: (readonly [at: number, name: string])[] = []
    let at = 0
    for (; view.getUint32(at, true) === 0x04034b50; ) {
      const name = Buffer.from(whole.subarray(at + 30, at + 30 + view.getUint16(at + 26, true))).toString()
      begins.push([at, name])
      at += 30 + name.length + view.getUint32(at + 18, true)
    }
    const listAt = at
    let [named, framed] = [0, 0]
    await fc.assert(
      fc.asyncProperty(fc.nat({ max: whole.length * 8 - 1 }), async (bit) => {
        const bytes = whole.slice()
        bytes[bit >> 3]! ^= 1 << (bit & 7)
        const refusal = await refusalOf(() => read(bytes))
        expect(refusal).not.toBe(null)
        if (bit >> 3 >= listAt || bit >> 3 < 4) framed++
        else {
          named++
          const [, name] = begins.findLast(([from]) => from <= bit >> 3)!
          expect(refusal!.sentence).toContain(name)
        }
      }),
      { seed: 20261125, numRuns: 200 },
    )
    // The rest are in the frame: the ZIP's list of its files, or its end.
    expect(named + framed).toBe(200)
    expect(named).toBeGreaterThan(100)
  })
  test('cut anywhere', async () => {
    for (let to = 0; to < whole.length; to += 331)
      expect((await refusalOf(() => read(whole.slice(0, to))))?.code).toBe(
        to < 4 ? 'no-carried-file' : 'cut-off',
      )
  })
  test('what is packed anew with other things in it is found by its list', async () => {
    const contents = list.files.map(({ name }) => name)
    const packed = (change: (name: string, bytes: Uint8Array) => Uint8Array | null, extra = false) => {
      const parts: Uint8Array[] = []
      const zip = zipInParts((part) => parts.push(part))
      const source = new Map<string, Uint8Array>()
      for (const name of [...contents, 'manifest.json']) source.set(name, fileIn(name))
      for (const [name, bytes] of source) {
        const changed = change(name, bytes)
        if (changed) zip.add({ name, bytes: changed, pack: false })
      }
      if (extra) zip.add({ name: 'logs/workshop/beside/more', bytes: new Uint8Array(1), pack: false })
      zip.end()
      return Uint8Array.from(Buffer.concat(parts))
    }
    expect(await refusalOf(() => read(packed((_, bytes) => bytes)))).toBe(null)
    const [photo] = contents.filter((name) => name.includes('/beside/'))
    for (const [bytes, said] of [
      [packed((name, bytes) => (name === photo ? picture('gray') : bytes)), photo!],
      [packed((name, bytes) => (name === photo ? null : bytes)), photo!],
      [packed((_, bytes) => bytes, true), 'logs/workshop/beside/more'],
      [packed((name, bytes) => (name === 'manifest.json' ? null : bytes)), 'no list'],
      [packed((name, bytes) => (name === 'manifest.json' ? bytes.slice(1) : bytes)), 'list of this backup'],
      [
        packed((name, bytes) => (name.endsWith('job-a/log.jsonl') ? bytes.slice(0, -1) : bytes)),
        'job-a/log.jsonl',
      ],
    ] as const) {
      const refusal = await refusalOf(() => read(bytes))
      expect(refusal?.sentence).toContain(said)
    }
  })
})

/** A file of the whole backup. */
function fileIn(name: string): Uint8Array {
  if (!unpacked.has(name)) throw new Error(name)
  return unpacked.get(name)!
}
const { unzipSync } = await import('fflate')
const unpacked = new Map(Object.entries(unzipSync(whole)))

describe('CA11 nothing that is there is written over', () => {
  test('work done since stays, and what is in the backup comes to it', async () => {
    const { store, place: where } = into(place())
    const later = await noted(first.log.slice(0, 20), ['done since'], { device: 3 })
    await store.job(whose.job).change(whose, () => later)
    const [done] = await restoreBackup(await read(whole), where)
    const { entries } = await store.job(whose.job).read()
    const ids = new Set(entries.map(({ id }) => id))
    for (const { id } of [...first.log, ...later]) expect(ids.has(id)).toBe(true)
    expect(entries).toHaveLength(31)
    expect([done!.entries, done!.heads.length]).toEqual([10, 2])
    const [again] = await restoreBackup(await read(whole), where)
    expect([again!.entries, again!.files]).toEqual([0, 0])
  })

  test('another job at its place: refused before anything is written', async () => {
    const at = place()
    const { store, place: where } = into(at)
    const strange = await noted([], ['strange'], { job: 'z' })
    await jobFolder(join(at, 'workshop')).change({ ...whose, job: 'z' }, () => strange)
    const before = files(at)
    expect((await refusalOf(async () => restoreBackup(await read(whole), where)))?.code).toBe('other-job')
    expect(files(at)).toEqual(before)
    expect(await store.job(whose.job).kept()).toEqual([])
  })

  test('a file under a hash that is another one by now is told, and left', async () => {
    const at = place()
    const { store, place: where } = into(at)
    await restoreBackup(await read(whole), where)
    const hash = (await store.job(whose.job).kept())[0]!
    writeFileSync(join(at, '7-0412', 'beside', hash), 'spoilt')
    const [done] = await restoreBackup(await read(whole), where)
    expect(done!.told[0]).toContain('left as it is')
    expect(readFileSync(join(at, '7-0412', 'beside', hash), 'utf8')).toBe('spoilt')
  })
})

describe('CA12 what was erased stays erased', () => {
  test('an older backup does not bring it back', async () => {
    const { store, place: where } = into(place())
    await restoreBackup(await read(whole), where)
    const job = store.job(whose.job)
    expect(await job.beside(commitment)).not.toBe(null)
    await erasePrivate(job, [commitment])
    await restoreBackup(await read(whole), where)
    expect(await job.beside(commitment)).toBe(null)
    for (const photo of [hashOf(picture('exact')), hashOf(jpegAsTaken('baseline'))]) {
      await erasePrivate(job, [photo])
      await restoreBackup(await read(whole), where)
      expect(await job.beside(photo)).toBe(null)
    }
    // And a newer backup takes it out where it still is, as a merge does.
    const newer = await bytesOf([{ dir: 'job-7-0412', kept: job }])
    const old = into(place())
    await restoreBackup(await read(whole), old.place)
    await restoreBackup(await read(newer.bytes), old.place)
    for (const hash of [commitment, hashOf(picture('exact')), hashOf(jpegAsTaken('baseline'))])
      expect(await old.store.job(whose.job).beside(hash)).toBe(null)
    // A folder over which an older copy was laid holds both: the mark counts.
    await old.store.job(whose.job).keep(picture('exact'))
    const laid = await bytesOf([{ dir: 'job-7-0412', kept: old.store.job(whose.job) }])
    const fresh = into(place())
    await restoreBackup(await read(laid.bytes), fresh.place)
    expect(await fresh.store.job(whose.job).beside(hashOf(picture('exact')))).toBe(null)
  })
})

describe('CA13 what is not as it should be is told, and never taken in as if it were', () => {
  test('spoilt lines and changed photos are told when the backup is made', async () => {
    const { job, logs, store } = await device()
    const folder = join(top, String(count - 1), '7-0412')
    const lines = readFileSync(join(folder, 'log.jsonl'), 'utf8').split('\n')
    lines[29] = lines[29]!.replace('note 29', 'note 92')
    writeFileSync(join(folder, 'log.jsonl'), lines.join('\n'))
    const [photo] = (await job.kept()).filter((hash) => hash === hashOf(picture('exact')))
    writeFileSync(join(folder, 'beside', photo!), 'changed')
    const made = await bytesOf(logs)
    expect(made.told.some((one) => one.includes(photo!))).toBe(true)
    const backup = await read(made.bytes)
    const { place: where, store: fresh } = into(place())
    const done = await restoreBackup(backup, where)
    // A line that reads as an entry and is not what was sealed: the whole log is left out, and said.
    const [log] = done
    const isSpoiltLine = made.told.some((one) => one.includes('line 30'))
    if (isSpoiltLine) expect(log!.entries).toBe(29)
    else {
      expect(backup.logs[0]!.broken).toContain('entry 30')
      expect(log!.told[0]).toContain('left out')
      expect((await refusalOf(() => fresh.job(whose.job).read()))?.code).toBe('no-job')
    }
    expect((await fresh.job('a/b').read()).entries).toEqual((await store.job('a/b').read()).entries)
  })
})

describe('CA14 a backup is there whole or not at all', () => {
  test('one that was begun and given up leaves its place as it was', async () => {
    const at = place()
    writeFileSync(at, 'old')
    const file = wholeFile(at, { replace: true })
    await writeBackup(first.logs, { at: 'now', write: file.add })
    expect(readFileSync(at, 'utf8')).toBe('old')
    file.undo()
    expect(readFileSync(at, 'utf8')).toBe('old')
    expect(readdirSync(top).filter((name) => name.endsWith('.part'))).toEqual([])
    const next = wholeFile(at, { replace: true })
    await writeBackup(first.logs, { at: 'now', write: next.add })
    next.settle()
    expect((await read(Uint8Array.from(readFileSync(at)))).list.at).toBe('now')
    const other = wholeFile(at, { replace: false })
    other.add(new Uint8Array(3))
    expect(await refusalOf(async () => other.settle())).toMatchObject({ code: 'there-already' })
    other.undo()
    expect(readdirSync(top).filter((name) => name.endsWith('.part'))).toEqual([])
  })
})

describe('CA13 what cannot be in a backup is refused', () => {
  test('a name that leads elsewhere, a number of files or a size beyond what one file holds', async () => {
    const strange = () => bytesOf([{ dir: '../up', kept: first.job }])
    expect((await refusalOf(strange))?.code).toBe('strange-name')
    const zipped = (files: readonly { name: string; bytes: Uint8Array }[]) => {
      const parts: Uint8Array[] = []
      const zip = zipInParts((part) => parts.push(part))
      for (const file of files) zip.add({ ...file, pack: false })
      zip.end()
      return Uint8Array.from(Buffer.concat(parts))
    }
    const text = (said: string) => new TextEncoder().encode(said)
    const name = 'logs/workshop/more'
    const sha256 = hashOf('x')
    const said = { ...list, logs: list.logs.slice(2), files: [{ name, size: 1, sha256 }] }
    const manifest = { name: 'manifest.json', bytes: text(`${canonicalText(said)}\n`) }
    expect((await refusalOf(() => read(zipped([{ name, bytes: text('x') }, manifest]))))?.code).toBe(
      'strange-name',
    )
    // A file that says of itself that it unpacks to more than is taken in, in its head and in the list.
    const large = zipped([{ name: 'a', bytes: new Uint8Array(8) }])
    const view = new DataView(large.buffer)
    const line = Buffer.from(large).indexOf('PK\u0001\u0002')
    for (const [at, method] of [
      [22, 8],
      [line + 24, line + 10],
    ] as const) {
      view.setUint32(at, 0x30000000, true)
      view.setUint16(method, 8, true)
    }
    expect((await refusalOf(() => read(large)))?.code).toBe('too-much')
  })
  test('more files than one ZIP holds', async () => {
    const zip = zipInParts(() => undefined)
    const adding = async () => {
      for (let i = 0; i < 65_535; i++) zip.add({ name: `a${i}`, bytes: new Uint8Array(), pack: false })
    }
    expect((await refusalOf(adding))?.code).toBe('too-much')
  })
})
