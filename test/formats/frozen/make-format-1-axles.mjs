// Made the frozen files of what format 1 gained with whole axles, once. They are never made again.
//   node --import tsx test/formats/frozen/make-format-1-axles.mjs
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { membersOf } from './members-of.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const root = join(here, '..', '..', '..')

const once = (name, text) => {
  if (existsSync(join(here, name))) console.log(`${name} stands already and stays.`)
  else {
    writeFileSync(join(here, name), text)
    console.log(`${name} frozen.`)
  }
}

const from = {
  'format-1-axle.corner.json': 'port-unit-03/front.corner.json',
  'format-1-beam.corner.json': 'port-unit-12/rear.corner.json',
  'format-1-axle.spec.json': 'port-unit-03/port-unit-03.spec.json',
}
for (const [name, example] of Object.entries(from)) {
  const { $schema: _, ...file } = JSON.parse(readFileSync(join(root, 'examples', example), 'utf8'))
  once(name, `${JSON.stringify(file, null, 2)}\n`)
}

const schema = JSON.parse(readFileSync(join(root, 'schema', 'corner.schema.json'), 'utf8'))
once('members-1-axles.json', `${JSON.stringify({ corner: membersOf(schema) }, null, 1)}\n`)
