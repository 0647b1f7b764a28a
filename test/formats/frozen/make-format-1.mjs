// Made the frozen files of format 1, once, when it was released. They are never made again: a later version
// must go on reading them as they are. A next format gets a maker and files of its own.
//   node --import tsx test/formats/frozen/make-format-1.mjs
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const here = dirname(fileURLToPath(import.meta.url))
const examples = join(here, '..', '..', '..', 'examples')
const schemas = join(here, '..', '..', '..', 'schema')

const once = (name, text) => {
  if (existsSync(join(here, name))) console.log(`${name} stands already and stays.`)
  else {
    writeFileSync(join(here, name), text)
    console.log(`${name} frozen.`)
  }
}

const from = {
  'format-1.corner.json': 'port-unit-07/front.corner.json',
  'format-1-strut.corner.json': 'port-unit-12/front.corner.json',
  'format-1.spec.json': 'port-unit-07/port-unit-07.spec.json',
  'format-1.kit.json': 'port-kit.kit.json',
  'format-1.job.json': 'port-unit-07/port-unit-07.job.json',
}
/** Kinds of entries and methods that the demo job does not use. */
const more = [
  {
    kind: 'moved',
    data: { adjuster: 'lower-front-eccentric', wheel: 'front right', from: '67.5°', to: '-6°' },
  },
  { kind: 'moved', data: { adjuster: 'tie-rod', wheel: 'front left', by: '-5/12 turn' } },
  { kind: 'round', data: { number: 3, purpose: 'proving', settled: true } },
  {
    kind: 'reading',
    data: {
      method: 'tape on a scribed line',
      axle: 'front',
      tape: 'tape',
      front: ['1402 mm', '1402.5 mm'],
      rear: ['1404 mm'],
      belowHub: '40 mm',
      levelled: '3 mm',
      radius: '325 mm',
    },
  },
  {
    kind: 'reading',
    data: {
      method: 'run-out',
      wheel: 'front right',
      gauge: 'dial',
      readings: [
        { wheelTurn: '0°', reading: '0.10 mm' },
        { wheelTurn: '120°', reading: '0.42 mm' },
        { wheelTurn: '240°', reading: '-0.31 mm' },
      ],
      diameter: '402 mm',
    },
  },
  { kind: 'correction', data: { of: 6, data: { why: 'misread' }, why: 'wording' } },
]

for (const [name, example] of Object.entries(from)) {
  const { $schema: _, ...file } = JSON.parse(readFileSync(join(examples, example), 'utf8'))
  if (name.endsWith('.job.json')) file.entries.push(...more)
  once(name, `${JSON.stringify(file, null, 2)}\n`)
}

/** Every member that a schema names, as a path: `wheel.camber`, `points.*.at`, `entries[].data.of`. */
function members(schema, path = '') {
  const inner = (part, step) => (part ? members(part, `${path}${step}`) : [])
  return [
    ...Object.entries(schema.properties ?? {}).flatMap(([name, part]) => {
      const here = path === '' ? name : `${path}.${name}`
      return [here, ...members(part, here)]
    }),
    ...(typeof schema.additionalProperties === 'object' ? inner(schema.additionalProperties, '.*') : []),
    ...(schema.items && typeof schema.items === 'object' ? inner(schema.items, '[]') : []),
    ...(schema.prefixItems ?? []).flatMap((part, i) => members(part, `${path}[${i}]`)),
    ...[...(schema.oneOf ?? []), ...(schema.anyOf ?? [])].flatMap((part) => members(part, path)),
  ]
}
const names = Object.fromEntries(
  ['corner', 'spec', 'kit', 'job'].map((format) => [
    format,
    [...new Set(members(JSON.parse(readFileSync(join(schemas, `${format}.schema.json`), 'utf8'))))].sort(),
  ]),
)
once('members-1.json', `${JSON.stringify(names, null, 1)}\n`)
