import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildCommand } from '../../scripts/build-command.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'axlewright-follow-ups-'))
const every = 'test/formats/frozen/format-1-every-kind.job.json'
beforeAll(() => buildCommand())
afterAll(() => rmSync(folder, { recursive: true }))

function axlewright(...words: string[]) {
  const run = spawnSync(process.execPath, ['scripts/axlewright.mjs', ...words], {
    cwd: root,
    encoding: 'utf8',
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}

test('CM20 follow-ups are listed, and written as a calendar', () => {
  const file = join(folder, 'bus.ics')
  const { code, out } = axlewright('follow-ups', every, '--calendar', file)
  expect(code).toBe(0)
  expect(out).toMatch(/wheel nuts again/)
  const text = readFileSync(file, 'utf8')
  expect(text.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true)
  expect(text).toMatch(/DTSTAMP:\d{8}T\d{6}Z\r\n/)
})

test('CM20 a job without any says so, and a place that cannot be written is told', () => {
  const bus = 'examples/port-unit-07/port-unit-07.job.json'
  expect(axlewright('follow-ups', bus).out).toMatch(/Nothing is to be done/)
  const nowhere = join(folder, 'no', 'bus.ics')
  const { code, err } = axlewright('follow-ups', every, '--calendar', nowhere)
  expect(code).toBe(2)
  expect(err).toContain('cannot be written')
  expect(existsSync(nowhere)).toBe(false)
})
