import { spawn, spawnSync } from 'node:child_process'
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildSync } from 'esbuild'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { verifyEntries } from '../../src/proof/index.ts'
import { jobFolder } from '../../src/store/index.ts'
import { noted, whose } from './sealed-log.ts'

const kills = process.env['AXLEWRIGHT_SOAK'] === '1' ? 100 : 10
const top = mkdtempSync(join(tmpdir(), 'axlewright-killed-'))
const program = join(top, 'append-forever.mjs')

beforeAll(() => {
  buildSync({
    entryPoints: [join(import.meta.dirname, '..', 'support', 'append-forever.ts')],
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    outfile: program,
    logLevel: 'error',
  })
  chmodSync(top, 0o755)
})
afterAll(() => rmSync(top, { recursive: true, force: true }))

/** Lets it append for a while, kills it, and gives what it acknowledged until then. */
async function killedAfter(folder: string, ms: number): Promise<readonly string[]> {
  const run = spawn(process.execPath, [program, folder], { stdio: ['ignore', 'pipe', 'inherit'] })
  let said = ''
  const ended = new Promise((resolve) => run.on('close', resolve))
  await new Promise<void>((resolve) => {
    run.stdout.on('data', (piece: Buffer) => {
      said += piece
      resolve()
    })
  })
  await new Promise((resolve) => setTimeout(resolve, ms))
  run.kill('SIGKILL')
  await ended
  return said.split('\n').slice(0, -1)
}

test(`ST8 killed ${kills} times while it appends: every acknowledged entry is there, and it goes on`, async () => {
  const folder = join(top, 'killed')
  const acknowledged: string[] = []
  let locks = 0
  for (let i = 0; i < kills; i++) {
    acknowledged.push(...(await killedAfter(folder, (i * 37) % 90)))
    if (existsSync(join(folder, 'lock'))) locks++
    const { entries, spoilt } = await jobFolder(folder).read()
    expect(spoilt).toEqual([])
    expect(await verifyEntries(entries, whose)).toEqual([])
    const ids = new Set(entries.map(({ id }) => id))
    expect(acknowledged.filter((id) => !ids.has(id))).toEqual([])
    // Not more than one that was being written when it was killed.
    expect(entries.length - acknowledged.length).toBeLessThanOrEqual(i + 1)
  }
  expect(acknowledged.length).toBeGreaterThan(kills * 3)
  // It was really killed in the middle of its work: it left locks, which the next one took over.
  expect(locks).toBeGreaterThan(0)
})

test('ST3 three programs at once: one chain, and each keeps what it acknowledged', async () => {
  const folder = join(top, 'three')
  const said = await Promise.all(
    [1, 2, 3].map(
      () =>
        new Promise<string>((resolve) => {
          const run = spawn(process.execPath, [program, folder, '15'], {
            stdio: ['ignore', 'pipe', 'inherit'],
          })
          let out = ''
          run.stdout.on('data', (piece: Buffer) => {
            out += piece
          })
          run.on('close', () => resolve(out))
        }),
    ),
  )
  const { entries } = await jobFolder(folder).read()
  expect(entries.map(({ seq }) => seq)).toEqual(Array.from({ length: 45 }, (_, i) => i + 1))
  expect(said.join('').trim().split('\n').sort()).toEqual(entries.map(({ id }) => id).sort())
})

const hasTracer = spawnSync('sh', ['-c', 'strace -V']).status === 0
/** Where no tracer of system calls is there, Node's own calls are written down in the same process. */
const preload = `
import fs from 'node:fs'
import { syncBuiltinESMExports } from 'node:module'
const { openSync, writeSync, fsyncSync } = fs
const names = new Map()
const say = (line) => fs.appendFileSync(process.env.TRACE, line + '\\n')
fs.openSync = (path, ...more) => { const fd = openSync(path, ...more); names.set(fd, path); return fd }
fs.writeSync = (fd, ...more) => { if (fd === 1) say('write(1<stdout>'); else say('write(' + fd + '<' + names.get(fd) + '>'); return writeSync(fd, ...more) }
fs.fsyncSync = (fd) => { fsyncSync(fd); say('fsync(' + fd + '<' + names.get(fd) + '>) = 0') }
syncBuiltinESMExports()
`

test(`ST7 the sync comes before the acknowledgement (${hasTracer ? 'system calls' : 'calls of Node'})`, () => {
  const folder = join(top, 'traced')
  const trace = join(top, 'trace')
  writeFileSync(join(top, 'preload.mjs'), preload)
  const words = hasTracer
    ? [
        'strace',
        '-f',
        '-y',
        '-o',
        trace,
        '-e',
        'trace=write,pwrite64,fsync,fdatasync',
        process.execPath,
        program,
        folder,
        '8',
      ]
    : [process.execPath, '--import', join(top, 'preload.mjs'), program, folder, '8']
  const run = spawnSync(words[0]!, words.slice(1), {
    encoding: 'utf8',
    env: { ...process.env, TRACE: trace },
  })
  expect(run.stdout.trim().split('\n')).toHaveLength(8)
  const calls = readFileSync(trace, 'utf8')
    .split('\n')
    .flatMap((line) =>
      /fsync\(.*\/traced\/log\.jsonl>\) += 0|fdatasync\(.*log\.jsonl>\) += 0/.test(line)
        ? ['sync']
        : /fsync\(.*\/traced>\) += 0/.test(line)
          ? ['sync of the folder']
          : /write(64)?\(\d+<.*log\.jsonl>/.test(line)
            ? ['write']
            : /write\(1</.test(line)
              ? ['said']
              : [],
    )
  const once = ['write', 'sync', 'said']
  expect(calls).toEqual([
    'write',
    'sync',
    'sync of the folder',
    'said',
    ...Array.from({ length: 7 }, () => once).flat(),
  ])
})

test('ST9 a file that is written whole: not on a full disk, nor where nobody may write', () => {
  if (process.platform === 'win32') return
  const place = join(top, 'whole')
  mkdirSync(place)
  writeFileSync(join(place, 'whole.json'), 'before')
  const words = [process.execPath, program, place, '0', 'whole']
  const full = spawnSync('bash', ['-c', `trap '' XFSZ; ulimit -f 4; exec "$0" "$@"`, ...words], {
    encoding: 'utf8',
  })
  expect([full.status, full.stderr.trim()]).toEqual([2, 'no-room'])
  chmodSync(place, 0o555)
  const other = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {}
  const closed = spawnSync(words[0]!, words.slice(1), { encoding: 'utf8', ...other })
  expect([closed.status, closed.stderr.trim()]).toEqual([2, 'read-only'])
  chmodSync(place, 0o755)
  expect(readdirSync(place)).toEqual(['whole.json'])
  expect(readFileSync(join(place, 'whole.json'), 'utf8')).toBe('before')
})

test('ST9 a disk that is full, really: nothing acknowledged, nothing half-written', async () => {
  if (process.platform === 'win32') return
  for (const blocks of [1, 4, 9]) {
    const folder = join(top, `full-${blocks}`)
    // The system refuses to let any file grow beyond so many blocks of 1024 bytes.
    const run = spawnSync(
      'bash',
      ['-c', `trap '' XFSZ; ulimit -f ${blocks}; exec "$0" "$@"`, process.execPath, program, folder],
      { encoding: 'utf8' },
    )
    expect([run.status, run.stderr.trim()]).toEqual([2, 'no-room'])
    const said = run.stdout.split('\n').slice(0, -1)
    const { entries, told } = await jobFolder(folder).read()
    expect(told).toEqual([])
    expect(entries.map(({ id }) => id)).toEqual(said)
    expect(said.length).toBeGreaterThan(0)
    expect(statSync(join(folder, 'log.jsonl')).size).toBeLessThanOrEqual(blocks * 1024)
    expect(readdirSync(folder)).toEqual(['log.jsonl'])
  }
})

test('ST9 a folder that may not be written: told, and left as it was', async () => {
  if (process.platform === 'win32') return
  const folder = join(top, 'locked')
  mkdirSync(folder)
  await jobFolder(folder).change(whose, () => noted([], ['a']))
  const before = readFileSync(join(folder, 'log.jsonl'))
  chmodSync(folder, 0o555)
  chmodSync(top, 0o555)
  // The superuser may write anywhere, so somebody else tries.
  const other = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {}
  for (const place of [folder, join(top, 'new')]) {
    const run = spawnSync(process.execPath, [program, place], { encoding: 'utf8', ...other })
    expect([run.status, run.stdout, run.stderr.trim()]).toEqual([2, '', 'read-only'])
  }
  chmodSync(top, 0o755)
  chmodSync(folder, 0o755)
  expect(readFileSync(join(folder, 'log.jsonl')).equals(before)).toBe(true)
  expect(readdirSync(folder)).toEqual(['log.jsonl'])
})
