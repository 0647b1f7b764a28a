import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildCommand } from '../../scripts/build-command.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const top = mkdtempSync(join(tmpdir(), 'axlewright-folders-'))
const file = join(root, 'examples', 'port-unit-07', 'port-unit-07.job.json')
let command: string

function run(...words: readonly string[]) {
  const done = spawnSync(process.execPath, [command, ...words], {
    cwd: top,
    encoding: 'utf8',
    env: { ...process.env, AXLEWRIGHT_HOME: join(top, 'home') },
    input: '',
  })
  return { code: done.status, out: done.stdout, err: done.stderr }
}

beforeAll(async () => {
  command = await buildCommand()
  expect(run('seal', file, '--person', 'KB', '--in', 'kept').code).toBe(0)
  expect(run('prove', 'kept/7-0412').code).toBe(0)
})
afterAll(() => rmSync(top, { recursive: true, force: true }))

/** The numbers in a text, in ascending order. */
const numbersOf = (text: string) => (text.match(/-?\d+(\.\d+)?/g) ?? []).map(Number).sort((a, b) => a - b)

// Nothing lies beside the folder here but what was pinned in it, so the models can come from nowhere else.
test.each([
  ['sheet', '--json'],
  ['moves', '--json'],
  ['bolts', '--json'],
  ['clamp'],
  ['findings', '--plain'],
  ['fit'],
  ['follow-ups'],
  ['plan', '--search', 'quick', '--ids'],
])('CM33 %s says of a folder, its log and a proof what it says of the job file', (name, ...options) => {
  const { code, out, err } = run(name, file, ...options)
  expect(out.length + err.length).toBeGreaterThan(50)
  for (const path of ['kept/7-0412', 'kept/7-0412/log.jsonl']) {
    const of = run(name, path, ...options)
    expect([of.code, of.out.replaceAll(path, file), of.err.replaceAll(path, file)]).toEqual([code, out, err])
  }
  // The members of what a proof pins stand in another order there, and with them the letters of joints.
  const proof = run(name, 'kept/7-0412.proof.json', ...options)
  expect([proof.code, numbersOf(proof.out), proof.err]).toEqual([code, numbersOf(out), err])
})

test('CM33 check looks through a folder and a proof with what they pin', () => {
  for (const path of ['kept/7-0412', 'kept/7-0412.proof.json']) {
    const { code, out, err } = run('check', path)
    expect([code, err]).toEqual([0, ''])
    expect(out).toMatch(new RegExp(`^${path}: fine \\(job, format 1\\)`))
    expect(out.match(/pinned (corner|spec|kit) [0-9a-f]{8}: fine/g)).toHaveLength(4)
  }
  expect(run('check', 'nowhere').err + run('check', 'nowhere').out).toMatch(/cannot be read/)
})
