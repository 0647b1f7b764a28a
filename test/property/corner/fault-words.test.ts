import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { readCorner } from '../../../src/corner/index.ts'

const file = join(import.meta.dirname, '../../../examples/port-unit-07/front.corner.json')
const corner = JSON.parse(readFileSync(file, 'utf8'))

const rightOf = (changed: object) => {
  const read = readCorner({ ...corner, ...changed })
  return read.ok ? [] : read.problems.map(({ right }) => right)
}

test('a number or a list that is too small is told in words that end where they should', () => {
  expect(rightOf({ wheel: { ...corner.wheel, studs: -1 } })).toEqual([
    expect.stringMatching(/^at least \d+$/),
  ])
  const along = { ...corner.adjusters['lower-front-eccentric'], range: [] }
  const told = rightOf({ adjusters: { ...corner.adjusters, 'lower-front-eccentric': along } })
  expect(told.join('|')).not.toMatch(/ {2}| $| \|/)
})
