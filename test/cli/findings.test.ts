import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { beforeAll, expect, test } from 'vitest'
import { buildCommand } from '../../scripts/build-command.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const bus = 'examples/port-unit-07/port-unit-07.job.json'
const tipper = 'examples/port-unit-03/port-unit-03.job.json'
beforeAll(() => buildCommand())

function axlewright(...words: string[]) {
  const run = spawnSync(process.execPath, ['scripts/axlewright.mjs', ...words], {
    cwd: root,
    encoding: 'utf8',
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}

test('CM17 findings says which part, its evidence, the next checks, and ends with 1 on a fault', () => {
  const { code, out, err } = axlewright('findings', bus)
  expect(err).toBe('')
  expect(code).toBe(1)
  const flat = out.replace(/\s+/g, ' ')
  expect(flat).toContain('Right front lower ball joint worn')
  expect(flat).toMatch(/for: Play of the lower ball joint, front right, 1\.\d+ mm ±/)
  expect(flat).toMatch(/\[ \] Rock at 12 and 6, front right \(3 min\)/)
  expect(flat).toContain('Never get under a vehicle that a jack alone carries')
})

test('CM17 another round is judged; where no part need be at fault it ends with 0', () => {
  const { code, out } = axlewright('findings', bus, '--round', '2')
  expect(out).toContain('Judged: Round 2, provisional')
  expect(out).toContain('No part need be at fault')
  expect(code).toBe(0)
})

test('CM17 a round that is not there is told with those that are', () => {
  const { code, err, out } = axlewright('findings', bus, '--round', '7')
  expect(code).toBe(2)
  expect(out).toBe('')
  expect(err).toContain('round 1, as found; round 2, provisional')
  expect(axlewright('findings', bus, '--round', 'two').code).toBe(2)
})

// The tipper's demo: a cracked spring, a worn kingpin, a beam a little bent (scripts/examples/unit-03.mjs).
test('CM17 the tipper: the spring that the demo was made with stands in every explanation, kingpin and beam among the others', () => {
  const { out } = axlewright('findings', tipper, '--json')
  const sheet = JSON.parse(out)
  expect(sheet.answer).toMatch(/two at once do/)
  expect(sheet.groups[0].suspects[0].id).toMatch(/^sagged spring \| front \| right/)
  const ids = sheet.groups.flatMap((group: { suspects: { id: string }[] }) =>
    group.suspects.map(({ id }) => id),
  )
  expect(ids).toEqual(
    expect.arrayContaining([
      'worn kingpin | front | right | knuckle-on-kingpin',
      'bent axle or beam | front | right | ',
    ]),
  )
  expect(axlewright('findings', tipper, '--plain').out).not.toMatch(/[─]/)
})
