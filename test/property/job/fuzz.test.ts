import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { writeCorner } from '../../../src/corner/index.ts'
import { foldJob, readAny, writeJob } from '../../../src/job/index.ts'
import { writeKit } from '../../../src/kit/index.ts'
import { Refusal } from '../../../src/quantity/index.ts'
import { sheetFrom } from '../../../src/sheet/index.ts'
import { writeSpec } from '../../../src/spec/index.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { drawsOf, mutated, mutatedText } from '../../support/mutated.ts'

const isLong = process.env['AXLEWRIGHT_SOAK'] === '1'
const seed = Number(process.env['AXLEWRIGHT_SEED'] ?? 20261125)
const root = join(import.meta.dirname, '..', '..', '..')
const files = [
  'examples/port-unit-07/front.corner.json',
  'examples/port-unit-12/rear.corner.json',
  'test/formats/frozen/format-1-beam.corner.json',
  'examples/port-unit-07/port-unit-07.spec.json',
  'examples/port-kit.kit.json',
  'examples/port-unit-07/port-unit-07.job.json',
  'test/formats/frozen/format-1-every-kind.job.json',
]

/** The mark for editors belongs to the file and not to what it says. */
const unmarked = ({ $schema: _, ...said }: Record<string, unknown>) => said

/** Read, or refused with every fault at its field; what is read is whole, and is used without a crash. */
function opened(name: string, text: string): boolean {
  const read = readAny({ name, text })
  if (!read.ok) {
    expect(read.problems.length).toBeGreaterThan(0)
    for (const { field, wrong, right } of read.problems) {
      expect(field.length).toBeGreaterThan(0)
      expect(wrong.length).toBeGreaterThan(3)
      expect(right.length).toBeGreaterThan(0)
    }
    return false
  }
  const { format, value } = read.value
  switch (format) {
    case 'job':
      // Nothing of it is dropped.
      expect(writeJob(value)).toEqual(unmarked({ kind: 'job', ...JSON.parse(text) }))
      foldJob(value.entries)
      break
    case 'corner':
      expect(readAny({ name, text: JSON.stringify(writeCorner(value)) }).ok).toBe(true)
      break
    case 'spec':
      expect(unmarked(writeSpec(value))).toEqual(unmarked({ kind: value.kind, ...JSON.parse(text) }))
      break
    case 'kit':
      expect(unmarked(writeKit(value))).toEqual(unmarked({ kind: value.kind, ...JSON.parse(text) }))
  }
  return true
}

const runs = isLong ? 20_000 : 300
test.each(files)(
  `JO46 ${runs} changed files of %s: refused with the field named, or opened whole`,
  (path) => {
    const name = path.split('/').at(-1)!
    const text = readFileSync(join(root, path), 'utf8')
    const json: unknown = JSON.parse(text)
    const draw = drawsOf(seed)
    let refused = 0
    let whole = 0
    for (let i = 0; i < runs; i++) {
      let value = mutated(json, draw)
      while (draw() < 0.3) value = mutated(value, draw)
      const changed = draw() < 0.25 ? mutatedText(text, draw) : JSON.stringify(value)
      if (opened(name, changed)) whole++
      else refused++
    }
    expect(refused).toBeGreaterThan(runs / 4)
    expect(whole).toBeGreaterThan(0)
    expect(({} as { polluted?: unknown }).polluted).toBe(undefined)
  },
)

test('JO46 depth, length and numbers without end are refused, and nothing is read for ever', () => {
  const deep = (open: string, close: string, n: number) => `${open.repeat(n)}1${close.repeat(n)}`
  for (const kind of ['corner', 'job'])
    for (const text of [
      deep('[', ']', 100_000),
      deep('{"a":', '}', 100_000),
      `{"format":1,"kind":"${kind}","entries":${deep('[', ']', 50_000)}}`,
      `{"format":1,"kind":"${kind}","workshop":"a","job":"1","entries":[{"kind":"note","data":${deep('{"text":', '}', 20_000)}}]}`,
      `{"format":${'9'.repeat(5000)},"kind":"${kind}"}`,
      `{"format":1e-400,"kind":"${kind}"}`,
      `{"format":1,"kind":"${kind}",${'"a":1,'.repeat(50_000)}"b":1}`,
      `{"format":1,"kind":"${kind}","entries":[${'{},'.repeat(20_000)}{}]}`,
      `"${'a'.repeat(5_000_000)}"`,
      '',
      '\ufeff',
      'null',
    ])
      expect(opened(`a.${kind}.json`, text)).toBe(false)
})

test('JO46 a member that no object can keep is refused in every format, at its place', () => {
  for (const path of files) {
    const text = readFileSync(join(root, path), 'utf8').replace(/\{/g, '{"__proto__":{"polluted":1},')
    const read = readAny({ name: path.split('/').at(-1)!, text })
    expect(read.ok ? [] : read.problems.map(({ field }) => field)).toContain('__proto__')
  }
})

const sheets = isLong ? 2000 : 25
test(`JO46 ${sheets} sheets of changed files that could be opened: an answer, or a refusal in a sentence`, () => {
  const demo = demoSources('07')
  const parts = [
    ['job', files[5]],
    ['spec', files[3]],
    ['kit', files[4]],
    ['corner', files[0]],
  ] as const
  const draw = drawsOf(seed + 1)
  let answered = 0
  for (let i = 0, made = 0; made < sheets && i < sheets * 50; i++) {
    const [format, path] = parts[Math.floor(draw() * parts.length)]!
    const json: unknown = JSON.parse(readFileSync(join(root, path!), 'utf8'))
    const read = readAny({ name: `a.${format}.json`, text: JSON.stringify(mutated(json, draw)) })
    if (!read.ok) continue
    made++
    const { value } = read.value
    const sources = {
      ...demo,
      ...(format === 'corner'
        ? { corners: { ...demo.corners, front: value as typeof demo.corners.front } }
        : { [format]: value }),
    }
    try {
      sheetFrom(sources)
      answered++
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      expect(error.sentence).toMatch(/\.$/)
    }
  }
  expect(answered).toBeGreaterThan(sheets / 3)
})
