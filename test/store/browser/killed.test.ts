import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type OwnBrowser, ownBrowser } from './own-browser.ts'
import { inPage, serveScript } from './store-pages.ts'

const kills = process.env['AXLEWRIGHT_SOAK'] === '1' ? 60 : 6
const top = mkdtempSync(join(tmpdir(), 'axlewright-killed-browser-'))
let served: Awaited<ReturnType<typeof serveScript>>

beforeAll(async () => {
  served = await serveScript('append-page.ts')
})
afterAll(() => {
  served.end()
  rmSync(top, { recursive: true, force: true, maxRetries: 5 })
})

interface Read {
  readonly ids: readonly string[]
  readonly spoilt: readonly unknown[]
  readonly broken: readonly unknown[]
}

/** Lets a page append for a while after its first acknowledgement; gives what it acknowledged until it was killed. */
async function appended(own: OwnBrowser, ms: number, kill: () => Promise<void>): Promise<readonly string[]> {
  const page = await own.page(served.address)
  const acknowledged: string[] = []
  let heard: () => void = () => undefined
  const first = new Promise<void>((resolve) => {
    heard = resolve
  })
  await page.exposeFunction('say', (id: string) => {
    acknowledged.push(id)
    heard()
  })
  // It never ends by itself: the kill ends it.
  const ends = inPage(page, 'forever', 'killed', 'say').catch((error: unknown) => String(error))
  expect(await Promise.race([first, ends])).toBe(undefined)
  await new Promise((resolve) => setTimeout(resolve, ms))
  await kill()
  await ends
  return acknowledged
}

test(`ST17 killed ${kills} times while a page appends: every acknowledged entry is there, and it goes on`, async () => {
  const profile = join(top, 'profile')
  const acknowledged: string[] = []
  let own = await ownBrowser(profile)
  try {
    for (let i = 0; i < kills; i++) {
      // The whole browser, or the page's own process while the browser runs on.
      const isWhole = i % 2 === 0
      acknowledged.push(...(await appended(own, (i * 37) % 150, isWhole ? own.kill : own.killPages)))
      if (isWhole) own = await ownBrowser(profile)
      const page = await own.page(served.address)
      const { ids, spoilt, broken } = (await inPage(page, 'read', 'killed')) as Read
      expect([spoilt, broken]).toEqual([[], []])
      const there = new Set(ids)
      expect(acknowledged.filter((id) => !there.has(id))).toEqual([])
      await page.close()
    }
  } finally {
    await own.kill()
  }
  expect(acknowledged.length).toBeGreaterThan(kills * 3)
}, 3_600_000)
