// Writes the JSON Schemas of the open formats from their one definition in the code.
//   node --import tsx scripts/generated.mjs           writes schema/*.schema.json
//   node --import tsx scripts/generated.mjs --check   writes nothing and fails on any difference
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { toJSONSchema } from 'zod'
import { cornerSchema } from '../src/corner/index.ts'
import { jobSchema } from '../src/job/index.ts'
import { kitSchema } from '../src/kit/index.ts'
import { specSchema } from '../src/spec/index.ts'

const folder = join(dirname(dirname(fileURLToPath(import.meta.url))), 'schema')
const check = process.argv.includes('--check')
const formats = {
  corner: [cornerSchema, 'Axlewright corner model, format 1'],
  spec: [specSchema, 'Axlewright spec sheet, format 1'],
  kit: [kitSchema, 'Axlewright kit, format 1'],
  job: [jobSchema, 'Axlewright job, format 1'],
}

const wanted = new Map(
  Object.entries(formats).map(([name, [schema, title]]) => {
    const { $schema, ...rest } = toJSONSchema(schema, { io: 'input', target: 'draft-2020-12' })
    const $comment =
      'Generated from the code by scripts/generated.mjs; do not edit. It knows shapes and names; what a quantity may say and which names lead somewhere is checked on reading.'
    return [`${name}.schema.json`, `${JSON.stringify({ $comment, $schema, title, ...rest }, null, 2)}\n`]
  }),
)

mkdirSync(folder, { recursive: true })
let differences = 0
for (const [name, text] of wanted) {
  const file = join(folder, name)
  const there = existsSync(file) ? readFileSync(file, 'utf8') : null
  if (there === text) continue
  differences++
  if (check) console.log(`schema/${name} ${there === null ? 'is missing' : 'differs from the code'}.`)
  else {
    writeFileSync(file, text)
    console.log(`schema/${name} written.`)
  }
}
for (const name of readdirSync(folder))
  if (name.endsWith('.schema.json') && !wanted.has(name)) {
    differences++
    console.log(`schema/${name} belongs to no format; remove it.`)
    if (!check) process.exitCode = 1
  }
if (check && differences > 0) {
  console.log('Run: npm run generate')
  process.exit(1)
}
if (differences === 0) console.log(`${wanted.size} schemas are current.`)
