import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { inPage, serveScript, startBrowser } from './store-pages.ts'

let served: Awaited<ReturnType<typeof serveScript>>
let browser: Browser

beforeAll(async () => {
  ;[served, browser] = await Promise.all([serveScript('append-page.ts'), startBrowser()])
})
afterAll(async () => {
  await browser.close()
  served.end()
})

interface Filled {
  readonly acknowledged: readonly string[]
  readonly ended: { readonly code: string; readonly sentence: string } | null
}

test('ST16 no more room: a plain sentence, what was acknowledged is all there, and nothing half-written', async () => {
  const context = await browser.newContext()
  const page = await context.newPage()
  await page.goto(served.address)
  const cdp = await context.newCDPSession(page)
  const origin = new URL(served.address).origin
  const allow = (quotaSize: number) => cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize })
  await allow(3_000_000)
  const { acknowledged, ended } = (await inPage(page, 'fill', 'full', 50, 100)) as Filled
  expect(ended).toMatchObject({
    code: 'no-room',
    sentence: expect.stringMatching(/no more room.*nothing was written\.$/),
  })
  expect(acknowledged.length).toBeGreaterThanOrEqual(50)
  expect(acknowledged.length % 50).toBe(0)
  expect(await inPage(page, 'keep', 'full', 4_000_000)).toMatchObject({ code: 'no-room' })
  const there = { ids: acknowledged, spoilt: [], broken: [] }
  expect(await inPage(page, 'read', 'full')).toEqual(there)
  expect(await inPage(page, 'kept', 'full')).toEqual([])
  // With room again the same window goes on where it was.
  await allow(50_000_000)
  const more = (await inPage(page, 'fill', 'full', 50, 1)) as Filled
  expect(more.ended).toBe(null)
  expect(await inPage(page, 'keep', 'full', 4_000_000)).toBe(null)
  expect(await inPage(page, 'read', 'full')).toEqual({
    ...there,
    ids: [...acknowledged, ...more.acknowledged],
  })
  await context.close()
})
