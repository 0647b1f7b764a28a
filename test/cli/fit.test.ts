import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildCommand } from '../../scripts/build-command.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'axlewright-fit-'))
const bus = 'examples/port-unit-07/port-unit-07.job.json'
const models = readdirSync(join(root, 'examples/port-unit-07'))
  .filter((name) => /\.(corner|spec)\.json$/.test(name))
  .map((name) => `examples/port-unit-07/${name}`)
const beside = ['--with', ...models, 'examples/port-kit.kit.json']
beforeAll(() => buildCommand())
afterAll(() => rmSync(folder, { recursive: true }))

function axlewright(...words: string[]) {
  const run = spawnSync(process.execPath, ['scripts/axlewright.mjs', ...words], {
    cwd: root,
    encoding: 'utf8',
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}
const measuredJob = (reading: string) => {
  const file = JSON.parse(readFileSync(join(root, bus), 'utf8'))
  const path = join(folder, `${reading.replaceAll(' ', '-')}.job.json`)
  const data = {
    what: 'distance',
    wheel: 'front left',
    from: 'tie-inner',
    to: 'tie-outer',
    readings: [reading],
  }
  writeFileSync(path, JSON.stringify({ ...file, entries: [...file.entries, { kind: 'measured', data }] }))
  return path
}

describe('axlewright fit', () => {
  test('CM13 what was measured, points with spreads, what is open, what moves do and what would make it surer', () => {
    const { code, out, err } = axlewright('fit', measuredJob('345 mm'), ...beside)
    expect([err, code]).toEqual(['', 0])
    expect(out).toMatch(/tie inner to tie outer +345\.0 mm ± 2\.9 mm +fitted 34\d\.\d mm +\(entry \d+\)/)
    expect(out).toMatch(/lower outer +[−]?\d+ mm ± \d mm +72\d mm ± \d mm/)
    expect(out).toMatch(/Still open/)
    expect(out).toMatch(/tie rod, 1 turn: toe [+−]0\.\d+° ± 0\.\d+°/)
    expect(out).toMatch(/surer with: .* \(\d+ min, then ± 0\.\d+°\)/)
  })
  test('CM13 a reading that cannot be right ends it with 1; --json writes JSON and nothing else', () => {
    const wrong = axlewright('fit', measuredJob('386 mm'), ...beside)
    expect(wrong.code).toBe(1)
    expect(wrong.out).toMatch(/does not fit the others: it seems to be \d+ mm too\s+large/)
    const { code, out } = axlewright('fit', measuredJob('345 mm'), ...beside, '--json')
    expect(code).toBe(0)
    expect(JSON.parse(out).wheels[0].wheel).toBe('front left')
  })
})
