import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { browserFlags, findBrowser } from '../../scripts/browser.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'paper-'))
let browser: Browser

beforeAll(async () => {
  const found = await findBrowser()
  const env = { ...(process.env as Record<string, string>), ...found.env }
  browser = await chromium.launch({ executablePath: found.path, args: [...browserFlags], env })
})
afterAll(async () => {
  await browser.close()
  rmSync(folder, { recursive: true })
})

/** Pages of a PDF: each has its own object of the type Page. */
const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0

test.each(['07', '12', '03'])(
  'CM9 unit %s is printed on two sides of A4 and of Letter, in one ink, and asks for no address',
  async (unit) => {
    const file = join(folder, `${unit}.html`)
    const job = `examples/port-unit-${unit}/port-unit-${unit}.job.json`
    const run = spawnSync('npm', ['run', '--silent', 'axlewright', '--', 'sheet', job, '--html', file], {
      cwd: root,
      encoding: 'utf8',
      shell: process.platform === 'win32',
    })
    expect([run.status, run.stderr]).toEqual([1, ''])
    expect(readFileSync(file, 'utf8')).not.toMatch(/https?:|src=|@import|url\((?!#hatch)/)
    const page = await browser.newPage()
    const asked: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    await page.goto(`file://${file}`)
    for (const format of ['A4', 'Letter']) expect(pagesOf(await page.pdf({ format })), format).toBe(2)
    expect(asked.filter((url) => !url.startsWith('file:'))).toEqual([])
    const inks = await page.evaluate(() => [
      ...new Set([...document.querySelectorAll('body *')].map((element) => getComputedStyle(element).color)),
    ])
    expect(inks).toHaveLength(1)
    // Nothing sticks out at the side.
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect(wide).toBeLessThanOrEqual(0)
    // The second side: open joints first, and room for three hands.
    const sides = await page.locator('.page').allInnerTexts()
    expect(sides).toHaveLength(2)
    expect(sides[0]).toMatch(/Raise the hub/)
    expect(sides[1]).toMatch(/^[\s\S]{0,300}Open joints: [1-9]/i)
    expect(sides[1]).toMatch(/Second look by/i)
    await page.close()
  },
)
