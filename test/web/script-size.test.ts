import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'

const root = join(import.meta.dirname, '..', '..')

test('WE14 page and worker together are at most 200 kB of script, gzip', () => {
  const built = spawnSync(process.execPath, [join(root, 'scripts', 'build-page.mjs')], { encoding: 'utf8' })
  expect(built.status, built.stderr).toBe(0)
  const assets = join(built.stdout.trim(), 'assets')
  const scripts = readdirSync(assets).filter((name) => name.endsWith('.js'))
  expect(scripts.length).toBeGreaterThanOrEqual(2)
  const bytes = scripts.map((name) => gzipSync(readFileSync(join(assets, name)), { level: 9 }).length)
  const total = bytes.reduce((sum, n) => sum + n, 0)
  console.log(
    `scripts: ${scripts.map((name, i) => `${name} ${(bytes[i]! / 1000).toFixed(1)} kB`).join(', ')}`,
  )
  expect(total).toBeLessThanOrEqual(200_000)
})
