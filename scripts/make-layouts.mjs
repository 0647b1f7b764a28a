// Makes the corner models to start from, src/corner/layouts/*.corner.json, out of the pieces in scripts/layouts/.
//   node scripts/make-layouts.mjs           writes them, formatted
//   node scripts/make-layouts.mjs --check   writes nothing and fails when a file says anything else
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { isDeepStrictEqual } from 'node:util'
import { rearLinks } from './layouts/rear-links.mjs'
import { struts } from './layouts/strut.mjs'
import { wholeAxles } from './layouts/whole-axles.mjs'
import { wishbones } from './layouts/wishbones.mjs'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const folder = join(root, 'src', 'corner', 'layouts')
const makers = { ...wishbones, ...struts, ...rearLinks, ...wholeAxles }
const fileOf = (id) => join(folder, `${id}.corner.json`)

if (process.argv.includes('--check')) {
  const there = readdirSync(folder).filter((name) => name.endsWith('.json'))
  const wrong = Object.entries(makers)
    .filter(([id, make]) => {
      const file = fileOf(id)
      return !existsSync(file) || !isDeepStrictEqual(JSON.parse(readFileSync(file, 'utf8')), make())
    })
    .map(([id]) => id)
  const extra = there.filter((name) => !(name.replace('.corner.json', '') in makers))
  for (const id of wrong)
    console.log(`src/corner/layouts/${id}.corner.json differs from what its pieces make.`)
  for (const name of extra) console.log(`src/corner/layouts/${name} is made by nothing.`)
  process.exit(wrong.length + extra.length > 0 ? 1 : 0)
}

mkdirSync(folder, { recursive: true })
for (const [id, make] of Object.entries(makers))
  writeFileSync(fileOf(id), `${JSON.stringify(make(), null, 2)}\n`)
const formatted = spawnSync(join(root, 'node_modules', '.bin', 'biome'), ['format', '--write', folder], {
  cwd: root,
  stdio: 'inherit',
})
process.exit(formatted.status ?? 1)
