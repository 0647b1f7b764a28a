import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildCommand } from '../../scripts/build-command.mjs'
import { movedJob } from '../support/moved-job.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'axlewright-learned-'))
const bus = 'examples/port-unit-07/port-unit-07.job.json'
const beside = [
  '--with',
  'examples/port-unit-07/front.corner.json',
  'examples/port-unit-07/rear.corner.json',
  'examples/port-unit-07/port-unit-07.spec.json',
  'examples/port-kit.kit.json',
]
beforeAll(() => buildCommand())
afterAll(() => rmSync(folder, { recursive: true }))

function axlewright(...words: string[]) {
  const run = spawnSync(process.execPath, ['scripts/axlewright.mjs', ...words], {
    cwd: root,
    encoding: 'utf8',
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}

/** A job of the demo's drawing whose right front eccentric did 0.27° where the points say 0.46°. */
function jobFile(k: number, onlyCamber: boolean): string {
  const { job } = movedJob({
    number: `9-${k}`,
    vehicle: `Port unit ${30 + k}, crew bus`,
    camber: 0.27,
    onlyCamber,
    at: `2026-0${1 + 2 * k}-10T09:00:00+01:00`,
  })
  const path = join(folder, `${k}-${onlyCamber}.job.json`)
  writeFileSync(path, JSON.stringify({ format: 1, kind: 'job', ...job }))
  return path
}
const two = [jobFile(0, true), jobFile(1, true)]

describe('axlewright learned', () => {
  test('CM40 what jobs teach of each drawing, from which moves, and how often first moves ended inside', () => {
    const { code, out, err } = axlewright('learned', ...two, jobFile(2, false), ...beside)
    expect([err, code]).toEqual(['', 0])
    expect(out).toMatch(/Port unit 07, crew bus, front axle \(double-wishbone.*\): 3 jobs/)
    expect(out).toMatch(
      /another vehicle of this model, from 3 jobs\n +front eccentric, camber +0\.[67]\d ± 0\.\d\d +\(1\.00 ± 0\.\d\d\)/,
    )
    expect(out).toMatch(/port unit 30, crew bus, again, from 1 job/)
    expect(out).toMatch(/front right, front eccentric: camber +[+]0\.27° ± 0\.\d+°, by the points [+]0\.4\d°/)
    expect(out).toMatch(/2026, second quarter +0 of 1 job: 0 % \(95 %: 0 to 79 %\)/)
    expect(out).toMatch(/Not counted, since not everything was read again: Harbour yard, bay 2, 9-0;/)
  })
  test('CM40 from jobs that teach nothing it says so and ends with 1; --json writes JSON and nothing else', () => {
    const nothing = axlewright('learned', bus)
    expect(nothing.code).toBe(1)
    expect(nothing.out).toMatch(/^Nothing can be learned from these jobs/)
    const { code, out } = axlewright('learned', ...two, '--json', ...beside)
    expect(code).toBe(0)
    expect(JSON.parse(out).models[0].levels).toHaveLength(4)
  })
  test('CM41 moves and sheet count on the jobs that are named, and say so; what cannot be read is told of all at once', () => {
    const alone = axlewright('moves', bus, ...beside)
    const taught = axlewright('moves', bus, ...beside, '--learned-from', ...two)
    expect(taught.out.replace(/\s+/g, ' ')).toMatch(
      /The moves count on what 2 other jobs taught \(2 on others of its model\): the front eccentric changes camber 0\.\d\d ± 0\.\d\d times/,
    )
    expect(alone.out).not.toMatch(/count on/)
    expect(taught.out).not.toBe(alone.out)
    expect(axlewright('sheet', bus, ...beside, '--learned-from', ...two).out).toMatch(/The moves count\s+on/)
    const missing = axlewright('moves', bus, '--learned-from', 'no-such.job.json', 'nor-this.job.json')
    expect(missing.code).toBe(2)
    expect(missing.err).toMatch(/no-such\.job\.json.*\n.*nor-this\.job\.json/)
  })
})
