import { spawnSync } from 'node:child_process'
import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
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
