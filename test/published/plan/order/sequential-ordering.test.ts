import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readSop } from '../../../../bench/read-sop.ts'
import { sopKnown } from '../../../../bench/sop-known.ts'
import { bestOrder } from '../../../../src/plan/index.ts'
import { published } from '../../../support/published.ts'

// The instances are other people's files and do not stand here. Where SOP_FOLDER names a folder with
// ESC07.sop and so on, they are read there; without it these tests say so and are skipped.
const folder = process.env['SOP_FOLDER']
const source = 'TSPLIB 95, sequential ordering problems: best known values, read in a public copy'
const small = [
  'ESC07',
  'ESC11',
  'ESC12',
  'ESC25',
  'ESC63',
  'br17.10',
  'br17.12',
  'ft53.4',
  'p43.4',
  'ry48p.4',
]
const large = ['ESC47', 'ft53.1', 'p43.1', 'prob.42', 'rbg048a', 'rbg050c', 'ry48p.1']
const isHere = (name: string) => folder !== undefined && existsSync(join(folder, `${name}.sop`))
const read = (name: string) => readSop(readFileSync(join(folder!, `${name}.sop`), 'utf8'))

describe('PL48', () => {
  const here = small.filter(isHere)
  if (here.length > 0)
    published(
      'PL48 proven shortest',
      here.map((id) => ({
        id,
        got: () => {
          const answer = bestOrder(read(id), { budget: 3e7 })
          expect(answer.proven).toBe(true)
          return answer.cost
        },
        want: sopKnown[id]!,
        within: 0.5,
        source,
      })),
    )
  for (const name of large)
    test.skipIf(!isHere(name))(
      `PL48 ${name}: within 5 % of the best known, the bound below it (needs SOP_FOLDER)`,
      () => {
        const { cost, lowerBound } = bestOrder(read(name), { budget: 1e7 })
        expect(cost).toBeLessThanOrEqual(1.05 * sopKnown[name]!)
        expect(cost).toBeGreaterThanOrEqual(sopKnown[name]!)
        expect(lowerBound).toBeLessThanOrEqual(sopKnown[name]!)
      },
    )
  test.skipIf(here.length > 0)(
    'PL48 proven shortest (needs SOP_FOLDER: a folder with the instances)',
    () => {},
  )
})

describe('PL48 the file format', () => {
  const head =
    'NAME: toy\nTYPE: SOP\nDIMENSION: 4\nEDGE_WEIGHT_TYPE: EXPLICIT\nEDGE_WEIGHT_FORMAT: FULL_MATRIX\n'
  const matrix = '0 5 7 100\n-1 0 2 3\n-1 -1 0 4\n-1 -1 -1 0\n'
  test('PL48 rows, pairs and both ends are read; the number of nodes may stand first', () => {
    const want = { size: 2, cost: [0, 2, 0, 0], start: [5, 7], end: [3, 4], before: [[0, 1]] }
    expect(readSop(`${head}EDGE_WEIGHT_SECTION\n4\n${matrix}EOF\n`)).toEqual(want)
    expect(readSop(`${head}EDGE_WEIGHT_SECTION\n${matrix}EOF\n`)).toEqual(want)
    expect(bestOrder(readSop(`${head}EDGE_WEIGHT_SECTION\n4\n${matrix}EOF\n`))).toMatchObject({
      order: [0, 1],
      cost: 11,
      proven: true,
    })
  })
  test('PL48 half a matrix or another type is not read as something', () => {
    expect(() => readSop(`${head}EDGE_WEIGHT_SECTION\n4\n0 5 7\nEOF`)).toThrow(/4² belong/)
    expect(() => readSop(head.replace('SOP', 'ATSP'))).toThrow(/no sequential ordering/)
  })
})
