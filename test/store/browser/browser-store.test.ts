import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { contractCases } from '../log-store-contract.ts'
import { inPage, serveScript, startBrowser } from './store-pages.ts'

let served: Awaited<ReturnType<typeof serveScript>>
let browser: Browser
let page: Page

beforeAll(async () => {
  ;[served, browser] = await Promise.all([serveScript('contract-page.ts'), startBrowser()])
  page = await browser.newPage()
  await page.goto(served.address)
})
afterAll(async () => {
  await browser.close()
  served.end()
})

for (const [where, call] of [
  ['a page', 'holds'],
  ['a worker', 'inWorker'],
] as const)
  describe(`the browser’s database, in ${where}, keeps its contract`, () => {
    for (const { name } of contractCases)
      test(name, async () => expect(await inPage(page, call, name)).toBe(null))
  })
