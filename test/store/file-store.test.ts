import { spawn, spawnSync } from 'node:child_process'
import {
  appendFileSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs'
import { hostname, tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { SealedEntry } from '../../src/job/index.ts'
import { canonicalText } from '../../src/proof/index.ts'
import { fileStore, folderName, jobFolder, writeWhole } from '../../src/store/index.ts'
import { keepsItsContract, refusal } from './log-store-contract.ts'
import { noted, whose } from './sealed-log.ts'

const top = mkdtempSync(join(tmpdir(), 'axlewright-store-'))
const fresh = () => mkdtempSync(join(top, 'place-'))
let log: readonly SealedEntry[]
let whole: Buffer

beforeAll(async () => {
  log = await noted([], ['a', 'b, é 🔧', 'c'])
  whole = Buffer.from(log.map((entry) => `${canonicalText(entry)}\n`).join(''))
})
afterAll(() => rmSync(top, { recursive: true, force: true }))

keepsItsContract('files', () => {
  const place = join(fresh(), 'not', 'there', 'yet')
  return { open: () => fileStore(place) }
})

/** A job's folder whose log has these bytes. */
function folderWith(bytes: Uint8Array): string {
  const folder = fresh()
  writeFileSync(join(folder, 'log.jsonl'), bytes)
  return folder
}
const bytesOf = (folder: string) => readFileSync(join(folder, 'log.jsonl'))

describe('ST6 a log that was cut', () => {
  test('at every byte of its last entry opens with all before it, is told, and goes on', async () => {
    const before = whole.lastIndexOf(10, whole.length - 2) + 1
    for (let cut = before; cut <= whole.length; cut++) {
      const folder = folderWith(whole.subarray(0, cut))
      const job = jobFolder(folder)
      const isWhole = cut >= whole.length - 1
      const read = await job.read()
      expect(read.entries).toEqual(isWhole ? log : log.slice(0, 2))
      expect(read.spoilt).toEqual([])
      expect(read.told).toHaveLength(isWhole || cut === before ? 0 : 1)
      // Reading touches nothing.
      expect(bytesOf(folder).equals(whole.subarray(0, cut))).toBe(true)
      const done = await job.change(whose, () => log)
      expect(done.told).toEqual(read.told)
      expect(done.appended).toHaveLength(isWhole ? 0 : 1)
      expect(bytesOf(folder).equals(whole)).toBe(true)
    }
  })

  test('in its first entry is empty', async () => {
    const folder = folderWith(whole.subarray(0, 100))
    expect(await jobFolder(folder).read()).toMatchObject({ whose: null, entries: [], spoilt: [] })
    await jobFolder(folder).change(whose, () => log)
    expect(bytesOf(folder).equals(whole)).toBe(true)
  })

  test('with the zeros that some disks leave', async () => {
    const folder = folderWith(Buffer.concat([whole, Buffer.alloc(300)]))
    await jobFolder(folder).change(whose, () => [])
    expect(bytesOf(folder).equals(whole)).toBe(true)
  })

  test('while another program had it open', async () => {
    const folder = folderWith(whole)
    const job = jobFolder(folder)
    await job.read()
    truncateSync(join(folder, 'log.jsonl'), whole.length - 5)
    expect((await job.read()).entries).toEqual(log.slice(0, 2))
    await job.change(whose, () => log)
    expect((await job.read()).entries).toEqual(log)
    // and one that grew by another program's hand
    const more = await noted(log, ['d'])
    appendFileSync(join(folder, 'log.jsonl'), `${canonicalText(more.at(-1))}\n`)
    expect((await job.read()).entries).toEqual(more)
  })
})

describe('ST11 whatever bytes stand in a log', () => {
  test('a spoilt line before the last is told at its line, and nothing is added or cut', async () => {
    const lines = whole.toString().split('\n')
    const bad = Buffer.from([lines[0], lines[1]!.replace('KB', 'XX'), lines[2], ''].join('\n'))
    const spaced = Buffer.from(`${lines[0]}\n ${lines[1]}\n${lines[2]}\n`)
    const folder = folderWith(spaced)
    expect((await jobFolder(folder).read()).spoilt.map(({ line }) => line)).toEqual([2])
    expect(await refusal(() => jobFolder(folder).change(whose, () => log))).toBe('spoilt')
    expect(bytesOf(folder).equals(spaced)).toBe(true)
    // A canonical line that says another thing is the proof's to find: the store keeps it as it stands.
    expect((await jobFolder(folderWith(bad)).read()).entries).toHaveLength(3)
  })

  test('a line twice, and one of another job', async () => {
    const other = await noted([], ['x'], { job: '7-0999' })
    const foreign = Buffer.from(`${canonicalText(other[0])}\n`)
    const first = whole.subarray(0, whole.indexOf(10) + 1)
    for (const bytes of [Buffer.concat([whole, first]), Buffer.concat([whole, foreign])]) {
      const read = await jobFolder(folderWith(bytes)).read()
      expect(read.entries).toEqual(log)
      expect(read.spoilt.map(({ line }) => line)).toEqual([4])
    }
  })

  test('thousands of changed files: told, never a hang, never cut but at a torn end', async () => {
    const runs = process.env['AXLEWRIGHT_SOAK'] === '1' ? 30_000 : 3000
    const folder = fresh()
    const path = join(folder, 'log.jsonl')
    let told = 0
    const edit = fc.record({
      at: fc.nat(whole.length),
      out: fc.nat(40),
      put: fc.oneof(
        fc.uint8Array({ maxLength: 20 }),
        fc.constantFrom('\n', '{}', 'null', '"\\u00e9"', '1e999', '[[[[', ' ').map((s) => Buffer.from(s)),
        fc.constant(whole),
      ),
    })
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 3 }), async (edits) => {
        let bytes: Uint8Array = whole
        for (const { at, out, put } of edits)
          bytes = Buffer.concat([bytes.subarray(0, at), put, bytes.subarray(at + out)])
        writeFileSync(path, bytes)
        const read = await jobFolder(folder).read()
        const lines = Buffer.from(bytes).toString('latin1').split('\n')
        for (const { line } of read.spoilt) expect(line).toBeLessThan(lines.length)
        // Every line of the file is an entry, or spoilt, or the torn end.
        const ends = lines.at(-1) === '' ? lines.length - 1 : lines.length
        expect(read.entries.length + read.spoilt.length + read.told.length).toBe(ends)
        if (read.spoilt.length + read.told.length > 0) told++
      }),
      { numRuns: runs, seed: 20261125 },
    )
    expect(told).toBeGreaterThan(runs / 3)
  })

  test('a pinned file, or bytes beside, that were changed are told', async () => {
    const folder = folderWith(whole)
    const job = jobFolder(folder)
    await job.pin({ what: 'kit', digest: '', file: { id: 'kit' } })
    const [name] = readdirSync(join(folder, 'pinned'))
    writeFileSync(join(folder, 'pinned', name!), '{"id":')
    expect(await refusal(() => job.pinned())).toBe('spoilt')
    const hash = await job.keep(Buffer.from('a photo'))
    writeFileSync(join(folder, 'beside', hash), 'another one')
    expect(await refusal(() => job.beside(hash))).toBe('spoilt')
  })
})

describe('ST9 where no log can be', () => {
  test('a folder that is no job, a file, nothing, a pipe, a giant', async () => {
    const place = fresh()
    expect(await refusal(() => jobFolder(place).read())).toBe('no-job')
    const file = join(place, 'file')
    writeFileSync(file, 'x')
    expect(await refusal(() => jobFolder(file).read())).toBe('no-folder')
    expect(await refusal(() => jobFolder(join(file, 'a')).change(whose, () => log))).toBe('no-folder')
    expect(await refusal(() => fileStore(file).jobs())).toBe('no-folder')
    mkdirSync(join(place, 'odd', 'log.jsonl'), { recursive: true })
    expect(await refusal(() => jobFolder(join(place, 'odd')).read())).toBe('unreadable')
    const giant = fresh()
    writeFileSync(join(giant, 'log.jsonl'), '')
    truncateSync(join(giant, 'log.jsonl'), 2 ** 32)
    expect(await refusal(() => jobFolder(giant).read())).toBe('unreadable')
    if (process.platform === 'win32') return
    const pipe = fresh()
    spawnSync('sh', ['-c', 'mkfifo log.jsonl'], { cwd: pipe })
    expect(await refusal(() => jobFolder(pipe).read())).toBe('unreadable')
  })

  test('a change that appends nothing, or is refused, leaves no folder behind', async () => {
    const place = fresh()
    const job = jobFolder(join(place, 'new', 'job'))
    await job.change(whose, () => [])
    expect(await refusal(() => job.change({ ...whose, job: 'x' }, () => log))).toBe('other-job')
    expect(readdirSync(place)).toEqual([])
  })

  test('a file that is there already is left as it is', async () => {
    const path = join(fresh(), 'a.proof.json')
    writeWhole(path, 'first', { replace: false })
    expect(await refusal(async () => writeWhole(path, 'second', { replace: false }))).toBe('there-already')
    expect(readFileSync(path, 'utf8')).toBe('first')
    writeWhole(path, 'third', { replace: true, mode: 0o600 })
    expect(readFileSync(path, 'utf8')).toBe('third')
    if (process.platform !== 'win32') expect(statSync(path).mode & 0o777).toBe(0o600)
    expect(await refusal(async () => writeWhole(join(path, 'b'), 'x', { replace: true }))).toBe('no-folder')
    expect(readdirSync(join(path, '..'))).toHaveLength(1)
  })
})

describe('ST10 locks', () => {
  const lockOf = (folder: string) => join(folder, 'lock')
  const held = (pid: number, more: object = {}) =>
    `${JSON.stringify({ pid, host: hostname(), since: null, ...more })}\n`

  test('of a dead program, and one that the power cut short, are taken over', async () => {
    const dead = spawnSync(process.execPath, ['-e', '']).pid
    const old = new Date(Date.now() - 60_000)
    for (const [text, time] of [
      [held(dead), new Date()],
      // the number of this program, which waits for itself elsewhere
      [held(process.pid), new Date()],
      // the number of a program that runs, but did not when the lock was made
      [held(process.ppid, { since: 'before the machine was started again' }), new Date()],
      ['', old],
      ['{"pid":', old],
    ] as const) {
      const folder = folderWith(whole.subarray(0, whole.indexOf(10) + 1))
      writeFileSync(lockOf(folder), text)
      if (time === old) spawnSync('touch', ['-d', '2020-01-01', lockOf(folder)])
      expect((await jobFolder(folder).change(whose, () => log)).appended).toHaveLength(2)
      expect(existsSync(lockOf(folder))).toBe(false)
    }
  })

  test('of a living program, or one on another machine, are waited for, then told', async () => {
    const other = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)'])
    try {
      for (const text of [
        held(other.pid!),
        held(spawnSync(process.execPath, ['-e', '']).pid, { host: 'bay-2' }),
        '',
      ]) {
        const folder = folderWith(whole)
        writeFileSync(lockOf(folder), text)
        const job = jobFolder(folder, { patience: 60 })
        expect(await refusal(() => job.change(whose, () => log))).toBe('busy')
        expect(readFileSync(lockOf(folder), 'utf8')).toBe(text)
        // Reading waits for nobody.
        expect((await job.read()).entries).toEqual(log)
        // and when the other is done, it goes on
        const later = jobFolder(folder).change(whose, (known) => noted(known, ['d']))
        setTimeout(() => rmSync(lockOf(folder)), 50)
        expect((await later).appended).toHaveLength(1)
      }
    } finally {
      other.kill()
    }
  })
})

test('a folder has a name that every file system takes', () => {
  expect(['7-0412', 'CON.', '.a', 'a/b*?', '..'].map(folderName)).toEqual([
    '7-0412',
    'CON%2E',
    '%2Ea',
    'a%2Fb%2A%3F',
    '%2E%2E',
  ])
})

test('folders that are no jobs are passed over in a place', async () => {
  const place = fresh()
  await fileStore(place)
    .job(whose.job)
    .change(whose, () => log)
  mkdirSync(join(place, 'photos'))
  mkdirSync(join(place, 'a copy (2)'))
  copyFileSync(join(place, folderName(whose.job), 'log.jsonl'), join(place, 'a copy (2)', 'log.jsonl'))
  expect(await fileStore(place).jobs()).toEqual([whose.job])
})
