import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { desktop, startPages } from './support/pages.ts'

const root = join(import.meta.dirname, '..', '..')

let pages: Awaited<ReturnType<typeof startPages>>
beforeAll(async () => {
  pages = await startPages()
})
afterAll(() => pages?.close())

const scripts = (asked: readonly string[]) =>
  [...new Set(asked.map((url) => new URL(url).pathname))].filter((path) => path.endsWith('.js')).sort()

test('WE14 all scripts that the browser asks for to show the first sheet are at most 250 kB, gzip', async () => {
  const built = spawnSync(process.execPath, [join(root, 'scripts', 'build-page.mjs')], { encoding: 'utf8' })
  expect(built.status, built.stderr).toBe(0)
  const { page, context, asked } = await pages.open({ viewport: desktop, serviceWorkers: 'block' })
  await page.waitForLoadState('networkidle')
  const first = scripts(asked)
  // The page's own and the worker's; one of them alone would show nothing.
  expect(first.some((path) => /worker/.test(path))).toBe(true)
  expect(first.length).toBeGreaterThanOrEqual(2)
  const bytes = first.map(
    (path) => gzipSync(readFileSync(join(built.stdout.trim(), path)), { level: 9 }).length,
  )
  console.log(`scripts: ${first.map((path, i) => `${path} ${(bytes[i]! / 1000).toFixed(1)} kB`).join(', ')}`)
  expect(bytes.reduce((sum, n) => sum + n, 0)).toBeLessThanOrEqual(250_000)
  await context.close()
})

test('WE31 what only the bolt book needs is asked for when it is opened, on the page and in the worker', async () => {
  const { page, context, asked } = await pages.open({ viewport: desktop, serviceWorkers: 'block' })
  await page.waitForLoadState('networkidle')
  const first = scripts(asked)
  await page.getByRole('link', { name: 'Refit' }).click()
  await page.locator('.bolt').first().waitFor()
  const later = scripts(asked).filter((path) => !first.includes(path))
  expect(later.length).toBeGreaterThanOrEqual(2)
  await context.close()
})
