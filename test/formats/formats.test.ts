import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { fromJSONSchema } from 'zod'
import { writeCorner } from '../../src/corner/index.ts'
import { foldJob, readAny, writeJob } from '../../src/job/index.ts'
import { writeKit } from '../../src/kit/index.ts'
import { writeSpec } from '../../src/spec/index.ts'
import { membersOf } from './frozen/members-of.mjs'

const root = join(import.meta.dirname, '..', '..')
const folder = join(import.meta.dirname, 'frozen')
const frozen = readdirSync(folder).filter((name) => /\.(corner|spec|kit|job)\.json$/.test(name))
const load = (path: string) => JSON.parse(readFileSync(path, 'utf8'))

test('JO13 there is a frozen file of every format', () => {
  for (const format of ['corner', 'spec', 'kit', 'job'])
    expect(frozen.some((name) => name.endsWith(`.${format}.json`))).toBe(true)
})

test.each(frozen)('JO13 the frozen file %s is still read, and nothing of it is lost on writing', (name) => {
  const text = readFileSync(join(folder, name), 'utf8')
  const read = readAny({ name, text })
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 1))
  const { format, value } = read.value
  switch (format) {
    case 'corner': {
      const written = JSON.stringify(writeCorner(value))
      const again = readAny({ name, text: written })
      if (!again.ok || again.value.format !== 'corner') throw new Error('its own writing is not read')
      expect(JSON.stringify(writeCorner(again.value.value))).toBe(written)
      expect(Object.keys(JSON.parse(written)).sort()).toEqual(Object.keys(JSON.parse(text)).sort())
      break
    }
    case 'spec':
      expect(writeSpec(value)).toEqual(JSON.parse(text))
      break
    case 'kit':
      expect(writeKit(value)).toEqual(JSON.parse(text))
      break
    case 'job':
      expect(writeJob(value)).toEqual(JSON.parse(text))
      expect(foldJob(value.entries).troubles).toEqual([])
      expect(foldJob(value.entries).newer).toEqual([])
  }
})

interface Schema {
  properties?: Record<string, Schema>
  additionalProperties?: Schema | boolean
  items?: Schema | boolean
  prefixItems?: Schema[]
  oneOf?: Schema[]
  anyOf?: Schema[]
  required?: string[]
}

/** Every member that a schema names, as a path: `wheel.camber`, `points.*.at`, `entries[].data.of`. */
function members(schema: Schema, path = ''): string[] {
  return [
    ...Object.entries(schema.properties ?? {}).flatMap(([name, part]) => {
      const here = path === '' ? name : `${path}.${name}`
      return [here, ...members(part, here)]
    }),
    ...(typeof schema.additionalProperties === 'object'
      ? members(schema.additionalProperties, `${path}.*`)
      : []),
    ...(typeof schema.items === 'object' ? members(schema.items, `${path}[]`) : []),
    ...(schema.prefixItems ?? []).flatMap((part, i) => members(part, `${path}[${i}]`)),
    ...[...(schema.oneOf ?? []), ...(schema.anyOf ?? [])].flatMap((part) => members(part, path)),
  ]
}

/** What the guard says of a schema against what was released and what was retired. */
function guard(now: readonly string[], released: readonly string[], retired: readonly string[]): string[] {
  return [
    ...released
      .filter((name) => !now.includes(name) && !retired.includes(name))
      .map((name) => `lost: ${name}`),
    ...retired.filter((name) => now.includes(name)).map((name) => `used again: ${name}`),
  ]
}

test.each(['corner', 'spec', 'kit', 'job'])('JO14 members of the %s format are only added', (format) => {
  const now = members(load(join(root, 'schema', `${format}.schema.json`)))
  const released: string[] = load(join(folder, 'members-1.json'))[format]
  expect(released.length).toBeGreaterThan(20)
  expect(guard(now, released, load(join(root, 'schema', 'retired.json'))[format])).toEqual([])
})

test('JO14 members and words that corner models gained with whole axles are only added to', () => {
  const now = membersOf(load(join(root, 'schema', 'corner.schema.json')))
  const released: string[] = load(join(folder, 'members-1-axles.json')).corner
  expect(released).toContain('joints.*.kind = adjustable taper-roller hub')
  expect(guard(now, released, load(join(root, 'schema', 'retired.json')).corner)).toEqual([])
  expect(guard(['joints.*.kind = bolt'], ['joints.*.kind = bolt', 'joints.*.kind = clip'], [])).toEqual([
    'lost: joints.*.kind = clip',
  ])
})

test('JO14 the guard sees a lost member, and a retired one used again', () => {
  expect(guard(['a'], ['a', 'b'], [])).toEqual(['lost: b'])
  expect(guard(['a'], ['a', 'b'], ['b'])).toEqual([])
  expect(guard(['a', 'b'], ['a'], ['b'])).toEqual(['used again: b'])
})

test('JO15 the schemas in schema/ are what the code says', () => {
  const out = execFileSync(process.execPath, ['--import', 'tsx', 'scripts/generated.mjs', '--check'], {
    cwd: root,
    encoding: 'utf8',
  })
  expect(out).toContain('4 schemas are current')
})

test.each([
  ['corner', 'port-unit-03/front.corner.json'],
  ['corner', 'port-unit-07/front.corner.json'],
  ['corner', 'port-unit-07/rear.corner.json'],
  ['corner', 'port-unit-12/front.corner.json'],
  ['corner', 'port-unit-12/rear.corner.json'],
  ['spec', 'port-unit-03/port-unit-03.spec.json'],
  ['spec', 'port-unit-07/port-unit-07.spec.json'],
  ['kit', 'port-kit.kit.json'],
  ['job', 'port-unit-03/port-unit-03.job.json'],
  ['job', 'port-unit-07/port-unit-07.job.json'],
  ['job', 'port-unit-12/port-unit-12.job.json'],
])(
  'JO15 by the %s schema as it stands, examples/%s is valid, and with one member more it is not',
  (format, name) => {
    const schema = fromJSONSchema(load(join(root, 'schema', `${format}.schema.json`)))
    const file = load(join(root, 'examples', name))
    expect(schema.safeParse(file).success).toBe(true)
    expect(schema.safeParse({ ...file, unheardOf: 1 }).success).toBe(false)
    expect(schema.safeParse({ ...file, format: 2 }).success).toBe(false)
  },
)
