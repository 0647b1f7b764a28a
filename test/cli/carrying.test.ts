import { spawn, spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  copyFileSync,
  cpSync,
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
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildCommand } from '../../scripts/build-command.mjs'
import { crc32 } from '../../src/proof/photo/crc-32.ts'
import { jpegAsTaken, pngAsTaken } from '../support/photos.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const top = mkdtempSync(join(tmpdir(), 'axlewright-carrying-'))
const examples = join(root, 'examples', 'port-unit-07')
const demo = JSON.parse(readFileSync(join(examples, 'port-unit-07.job.json'), 'utf8'))
let command: string

/** The real command in a process of its own, on one of the devices. */
function on(device: string, ...words: string[]) {
  const run = spawnSync(process.execPath, [command, ...words], {
    cwd: top,
    encoding: 'utf8',
    env: { ...process.env, AXLEWRIGHT_HOME: join(top, `home-${device}`) },
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}
/** The same, which must be well. */
function well(device: string, ...words: string[]): string {
  const { code, out, err } = on(device, ...words)
  expect([code, err]).toEqual([0, ''])
  return out
}
const job = demo.job as string
const beside = (folder = job) =>
  existsSync(join(top, folder, 'beside')) ? readdirSync(join(top, folder, 'beside')).sort() : []

beforeAll(async () => {
  command = await buildCommand()
  for (const file of ['front.corner.json', 'rear.corner.json', 'port-unit-07.spec.json'])
    copyFileSync(join(examples, file), join(top, file))
  copyFileSync(join(examples, '..', 'port-kit.kit.json'), join(top, 'port-kit.kit.json'))
  well('office', 'workshop', 'make', demo.workshop, '--device', 'office')
  writeFileSync(join(top, 'a.job.json'), JSON.stringify({ ...demo, entries: demo.entries.slice(0, 12) }))
  well('office', 'seal', 'a.job.json', '--person', 'KB')
  writeFileSync(join(top, 'arm.jpg'), jpegAsTaken('baseline', 6))
  writeFileSync(join(top, 'hose.png'), pngAsTaken('palette', crc32))
})
afterAll(() => rmSync(top, { recursive: true, force: true }))

describe('CM22 a photo is kept beside the log, without its place', () => {
  const joint = Object.keys(JSON.parse(readFileSync(join(examples, 'front.corner.json'), 'utf8')).joints)[0]!

  test('it is on disk under its hash, and the log names it', () => {
    const before = beside()
    const out = well(
      'office',
      'photo',
      job,
      'arm.jpg',
      '--person',
      'KB',
      '--words',
      'mark on the bolt',
      '--joint',
      joint,
      '--wheel',
      'front left',
    )
    expect(out).toContain('32 × 48 pixels')
    expect(out).toContain('Taken out: Exif, XMP, IPTC, other data, comment, data behind the picture.')
    expect(out).toContain('cannot scale')
    const hash = /[0-9a-f]{64}/.exec(out)![0]
    expect(beside()).toEqual([...before, hash].sort())
    const kept = readFileSync(join(top, job, 'beside', hash), 'latin1')
    expect(kept).not.toContain('INVENTED CAMERA')
    const last = JSON.parse(
      readFileSync(join(top, job, 'log.jsonl'), 'utf8')
        .trim()
        .split('\n')
        .at(-1)!,
    )
    expect([last.kind, last.data]).toEqual([
      'photo',
      { hash, of: 'mark on the bolt', joint, wheel: 'front left' },
    ])
    expect(on('office', 'verify', job).out).toContain('Intact')
  })

  test('the same photo with the same words again changes nothing', () => {
    const log = readFileSync(join(top, job, 'log.jsonl'))
    const again = ['photo', job, 'arm.jpg', '--person', 'KB', '--words', 'mark on the bolt']
    expect(well('office', ...again)).toContain('already')
    expect(readFileSync(join(top, job, 'log.jsonl'))).toEqual(log)
  })

  test('what cannot be is told, and nothing is written', () => {
    const log = readFileSync(join(top, job, 'log.jsonl'))
    const files = beside()
    writeFileSync(join(top, 'large.jpg'), '')
    truncateSync(join(top, 'large.jpg'), 20 * 1024 * 1024 + 1)
    writeFileSync(join(top, 'words.txt'), 'no picture')
    writeFileSync(join(top, 'half.jpg'), jpegAsTaken('baseline').subarray(0, 1100))
    const said = ['--person', 'KB', '--words', 'x']
    for (const [words, told] of [
      [['photo', job, 'large.jpg', ...said], 'This file has 21 MB, and more than 20 MB is not taken.'],
      [['photo', job, 'words.txt', ...said], 'neither JPEG nor PNG nor WebP'],
      [['photo', job, 'half.jpg', ...said], 'This photo is not whole'],
      [['photo', job, 'none.jpg', ...said], 'There is no such file.'],
      [['photo', 'a.job.json', 'arm.jpg', ...said], 'A photo lies in the job’s folder.'],
      [['photo', job, 'arm.jpg', ...said, '--wheel', 'front lef'], '--wheel: '],
      [['photo', job, 'arm.jpg', ...said, '--joint', 'no-such', '--wheel', 'front left'], '--joint: '],
      [['photo', job, 'arm.jpg', ...said, '--shows', '900'], '--beside: '],
    ] as const) {
      const { code, out, err } = on('office', ...words)
      expect([code, out]).toEqual([2, ''])
      expect(err).toContain(told)
    }
    expect(readFileSync(join(top, job, 'log.jsonl'))).toEqual(log)
    expect(beside()).toEqual(files)
  })
})

describe('CM23 readings and spec sheets go out as tables, and come in whole or not at all', () => {
  test('a spec sheet to a table and back', () => {
    const sheet = 'port-unit-07.spec.json'
    well('office', 'spec', sheet, '--to', 'sheet.csv', '--semicolons')
    expect(readFileSync(join(top, 'sheet.csv'), 'utf8')).toContain('limits.front camber;')
    well('office', 'spec', 'sheet.csv', '--to', 'back.spec.json')
    expect(well('office', 'spec', 'back.spec.json')).toBe(well('office', 'spec', sheet))
    const { code, err } = on('office', 'spec', sheet, '--to', 'sheet.csv')
    expect([code, err]).toEqual([2, expect.stringContaining('sheet.csv is there already')])
    writeFileSync(
      join(top, 'sheet.csv'),
      readFileSync(join(top, 'sheet.csv'), 'utf8').replace(';-0,75;', ';-0.75x;').replace(';2,5;', ';1.234;'),
    )
    const told = on('office', 'spec', 'sheet.csv')
    expect([told.code, told.out]).toEqual([2, ''])
    expect(told.err.match(/line \d+, column \d+ “low \(°\)”/g)?.length).toBeGreaterThan(0)
  })

  test('readings of a job file, and of its folder', () => {
    const csv = well('office', 'readings', 'a.job.json')
    expect(csv.split('\r\n')[0]).toContain('entry,kind,at,round,place,wheel')
    expect(well('office', 'readings', job)).toBe(csv)
    expect(well('office', 'readings', job, '--csv', 'r.csv')).toContain('r.csv')
    expect(readFileSync(join(top, 'r.csv'), 'utf8')).toBe(csv)
  })

  test('a table typed by hand is sealed into the folder, or written into a new job file', () => {
    const head = 'entry;kind;place;wheel;when;rule;value (mm)'
    writeFileSync(
      join(top, 'in.csv'),
      `\uFEFF${head}\r\n1;ride height;readings[0];rear left;settled;rule;441,5\r\n1;ride height;readings[1];;;;441\r\n`,
    )
    const lines = () =>
      readFileSync(join(top, job, 'log.jsonl'), 'utf8')
        .trim()
        .split('\n')
    const before = lines()
    expect(well('office', 'readings', job, '--take', 'in.csv', '--person', 'KB')).toContain(
      '1 reading of round',
    )
    expect(lines().slice(0, -1)).toEqual(before)
    expect(JSON.parse(lines().at(-1)!).data.readings).toEqual(['441.5 mm', '441 mm'])
    well('office', 'readings', 'a.job.json', '--take', 'in.csv', '--to', 'more.job.json')
    const more = JSON.parse(readFileSync(join(top, 'more.job.json'), 'utf8')).entries
    expect(more).toHaveLength(13)
    expect(more[12].data.readings).toEqual(['441.5 mm', '441 mm'])
  })

  test('what cannot be is told at its cell, and nothing is taken in', () => {
    const log = readFileSync(join(top, job, 'log.jsonl'))
    const head = 'entry,kind,place,wheel,when,rule,value (mm)'
    writeFileSync(
      join(top, 'no.csv'),
      `${head}\r\n1,ride height,readings[0],front left,settled,no-such,441\r\n`,
    )
    writeFileSync(join(top, 'bad.csv'), `${head}\r\n1,ride height,readings[0],front lef,settled,rule,x\r\n`)
    writeFileSync(join(top, 'old.csv'), Buffer.from([0xe9, 0x2c, 0x62]))
    for (const [words, told] of [
      [[job, '--take', 'no.csv', '--person', 'KB'], ['line 2, column 6 “rule”']],
      [
        [job, '--take', 'bad.csv', '--person', 'KB'],
        ['line 2, column 4 “wheel”', 'line 2, column 7 “value (mm)”'],
      ],
      [[job, '--take', 'old.csv', '--person', 'KB'], ['not written in UTF-8']],
      [[job, '--take', 'in.csv'], ['Whose hand?']],
      [['a.job.json', '--take', 'in.csv'], ['not written over']],
    ] as const) {
      const { code, out, err } = on('office', 'readings', ...words)
      expect([code, out]).toEqual([2, ''])
      for (const one of told) expect(err).toContain(one)
    }
    expect(readFileSync(join(top, job, 'log.jsonl'))).toEqual(log)
  })
})

describe('CM24 a job with its photos is carried as one file, and taken in as any copy is', () => {
  test('carried, verified, merged on another device: entries, pinned files and photos are there', () => {
    well('office', 'photo', job, 'hose.png', '--person', 'KB', '--words', 'hose as routed')
    const out = well('office', 'carry', job)
    expect(out).toMatch(/7-0412\.job\.zip: 15 entries, 4 files, 2 photos, \d+ kB\./)
    expect(on('office', 'verify', `${job}.job.zip`).out).toContain('Intact')
    const taken = well('tablet', 'merge', `${job}.job.zip`, '--to', 'there')
    expect(taken).toContain('Together 15 entries, all intact')
    const photosIn = (folder: string) =>
      beside(folder).filter((name) =>
        /^\xff\xd8|^\x89PNG/.test(readFileSync(join(top, folder, 'beside', name), 'latin1')),
      )
    expect(photosIn('there')).toEqual(photosIn(job))
    expect(photosIn(job)).toHaveLength(2)
    expect(readdirSync(join(top, 'there', 'pinned'))).toEqual(readdirSync(join(top, job, 'pinned')))
    const sorted = (folder: string) =>
      readFileSync(join(top, folder, 'log.jsonl'), 'utf8')
        .split('\n')
        .sort()
    expect(sorted('there')).toEqual(sorted(job))
  })

  test('the same bytes each time, from the folder and from what was taken in', () => {
    well('office', 'carry', job, '--to', 'again.job.zip')
    well('office', 'carry', 'there', '--to', 'there.job.zip')
    well('office', 'carry', 'again.job.zip', '--to', 'third.job.zip')
    const first = readFileSync(join(top, `${job}.job.zip`))
    for (const name of ['again', 'there', 'third'])
      expect(readFileSync(join(top, `${name}.job.zip`)).equals(first)).toBe(true)
    const { code, err } = on('office', 'carry', job)
    expect([code, err]).toEqual([2, expect.stringContaining('is there already')])
  })

  test('what is taken in again changes nothing; work done on both sides comes together', () => {
    const before = readFileSync(join(top, 'there', 'log.jsonl'))
    well('tablet', 'merge', `${job}.job.zip`, '--to', 'there')
    expect(readFileSync(join(top, 'there', 'log.jsonl'))).toEqual(before)
    well('tablet', 'photo', 'there', 'arm.jpg', '--person', 'M', '--words', 'the same from behind')
    well('tablet', 'carry', 'there', '--to', 'back.job.zip')
    well('office', 'merge', 'back.job.zip', '--to', job)
    expect(readFileSync(join(top, job, 'log.jsonl'), 'utf8')).toContain('the same from behind')
  })

  test('a flipped or cut file is refused with its place, and nothing is taken in', () => {
    const whole = readFileSync(join(top, `${job}.job.zip`))
    const flipped = Buffer.from(whole)
    const at = whole.indexOf('photos/') + 90
    flipped[at] = flipped[at]! ^ 1
    writeFileSync(join(top, 'flipped.job.zip'), flipped)
    writeFileSync(join(top, 'cut.job.zip'), whole.subarray(0, -300))
    for (const [name, told] of [
      ['flipped', 'photos/'],
      ['cut', 'cut off'],
    ] as const) {
      const { code, out, err } = on('tablet', 'merge', `${name}.job.zip`, '--to', 'never')
      expect([code, out]).toEqual([2, ''])
      expect(err).toContain(told)
      expect(existsSync(join(top, 'never'))).toBe(false)
    }
  })

  test('a photo that is not there is told, by both, with 1 from the one that carries', () => {
    const hash = /[0-9a-f]{64}/.exec(
      well('office', 'photo', job, 'hose.png', '--person', 'KB', '--words', 'gone soon'),
    )![0]
    rmSync(join(top, job, 'beside', hash))
    const { code, out } = on('office', 'carry', job, '--to', 'lacks.job.zip')
    expect([code, out]).toEqual([1, expect.stringContaining('is not with it')])
    expect(well('tablet', 'merge', 'lacks.job.zip', '--to', 'lacking')).toContain('is in no copy')
  })
})

describe('CM25 everything is backed up, and comes back', () => {
  const jobs = ['jobs-a', 'jobs-b'].map((name) => join(top, name))
  beforeAll(() => {
    for (const folder of jobs) mkdirSync(folder)
    cpSync(join(top, job), join(jobs[0]!, job), { recursive: true })
    cpSync(join(top, 'there'), join(jobs[1]!, job), { recursive: true })
    for (const name of ['there-too', 'lacking']) mkdirSync(join(jobs[0]!, name))
  })
  const sorted = (path: string) => readFileSync(path, 'utf8').trim().split('\n').sort()

  test('job folders of two places and the workshop’s log, wiped and restored', () => {
    const out = well('office', 'backup', 'all.zip', 'jobs-a', 'jobs-b')
    expect(out).toContain('This device’s secret key is not in it.')
    expect(out.match(/7-0412 of “/g)).toHaveLength(2)
    expect(well('office', 'restore', 'all.zip', '--check')).toContain('each what the list says')
    const wanted = new Set([
      ...sorted(join(jobs[0]!, job, 'log.jsonl')),
      ...sorted(join(jobs[1]!, job, 'log.jsonl')),
    ])
    expect(well('new', 'restore', 'all.zip', '--to', 'restored')).toContain('put back, on disk')
    expect(sorted(join(top, 'restored', job, 'log.jsonl'))).toEqual([...wanted].sort())
    expect(sorted(join(top, 'home-new', 'workshop', 'log.jsonl'))).toEqual(
      sorted(join(top, 'home-office', 'workshop', 'log.jsonl')),
    )
    expect(beside(join('restored', job))).toEqual(
      [...new Set([...beside(join('jobs-a', job)), ...beside(join('jobs-b', job))])].sort(),
    )
    expect(well('new', 'restore', 'all.zip', '--to', 'restored')).toContain('all of it was there')
    expect(on('new', 'verify', join('restored', job)).out).toContain('Intact')
  })

  test('a key goes with it only when it is asked for, with a warning; it is never written over', () => {
    const key = readFileSync(join(top, 'home-office', 'device.key'), 'utf8')
    expect(readFileSync(join(top, 'all.zip'), 'latin1')).not.toContain(key.trim())
    expect(well('office', 'backup', 'keys.zip', 'jobs-a', '--with-keys')).toContain('SECRET KEY is in it')
    if (process.platform !== 'win32') expect(statSync(join(top, 'keys.zip')).mode & 0o077).toBe(0)
    expect(well('third', 'restore', 'keys.zip', '--to', 'third')).toContain('Its key was left in it')
    expect(existsSync(join(top, 'home-third', 'device.key'))).toBe(false)
    expect(well('third', 'restore', 'keys.zip', '--to', 'third', '--with-keys')).toContain(
      'signs with the key',
    )
    expect(readFileSync(join(top, 'home-third', 'device.key'), 'utf8')).toBe(key)
    expect(well('tablet', 'restore', 'keys.zip', '--to', 'fourth', '--with-keys')).toContain(
      'was left as it is',
    )
    expect(readFileSync(join(top, 'home-tablet', 'device.key'), 'utf8')).not.toBe(key)
  })

  test('a flipped or cut backup is refused with its file, and nothing is written', () => {
    const whole = readFileSync(join(top, 'all.zip'))
    const flipped = Buffer.from(whole)
    flipped[Math.floor(whole.length / 3)]! ^= 8
    writeFileSync(join(top, 'flipped.zip'), flipped)
    writeFileSync(join(top, 'cut.zip'), whole.subarray(0, Math.floor(whole.length / 2)))
    for (const name of ['flipped', 'cut']) {
      const { code, out, err } = on('office', 'restore', `${name}.zip`, '--to', `no-${name}`)
      expect([code, out]).toEqual([2, ''])
      expect(err).toMatch(/“logs\/job-7-0412(_2)?\//)
      expect(existsSync(join(top, `no-${name}`))).toBe(false)
    }
    expect(on('office', 'restore', `${job}.job.zip`, '--to', 'x').err).toContain('This is no backup')
    expect(on('office', 'backup', 'none.zip', 'no-such-place').code).toBe(2)
    expect(existsSync(join(top, 'none.zip'))).toBe(false)
    expect(on('office', 'backup', 'all.zip', 'jobs-a').err).toContain('is there already')
  })

  test('killed in the middle, five times: what is there is whole, and the same command ends the work', async () => {
    const wanted = () => sorted(join(top, 'restored', job, 'log.jsonl'))
    for (let i = 0; i < 5; i++) {
      const to = `killed-${i}`
      const child = spawn(process.execPath, [command, 'restore', 'all.zip', '--to', to], {
        cwd: top,
        env: { ...process.env, AXLEWRIGHT_HOME: join(top, `home-${to}`) },
        stdio: 'ignore',
      })
      const ended = new Promise((resolve) => child.on('exit', resolve))
      // As soon as something is there, and then a little later each time.
      const begun = Date.now()
      while (!existsSync(join(top, to)) && child.exitCode === null && Date.now() - begun < 20_000)
        await new Promise((resolve) => setTimeout(resolve, 1))
      await new Promise((resolve) => setTimeout(resolve, 2 * i))
      child.kill('SIGKILL')
      await ended
      const there = beside(join(to, job)).filter((name) => !name.startsWith('.'))
      for (const hash of there)
        expect(
          createHash('sha256')
            .update(readFileSync(join(top, to, job, 'beside', hash)))
            .digest('hex'),
        ).toBe(hash)
      expect(well(to, 'restore', 'all.zip', '--to', to)).not.toContain('left out')
      expect(sorted(join(top, to, job, 'log.jsonl'))).toEqual(wanted())
      expect(on(to, 'verify', join(to, job)).out).toContain('Intact')
    }
  })
})
