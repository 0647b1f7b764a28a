import { createPublicKey, verify } from 'node:crypto'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { fingerprint, signerOf } from '../../../src/proof/index.ts'
import { type BegunWorkshop, type OwnWorkshop, rootFromPaper } from '../../../src/store/index.ts'
import { inPage, serveScript, startBrowser } from './store-pages.ts'

let served: Awaited<ReturnType<typeof serveScript>>
let browser: Browser
let context: BrowserContext
const window = async (): Promise<Page> => {
  const page = await context.newPage()
  await page.goto(served.address)
  return page
}

beforeAll(async () => {
  ;[served, browser] = await Promise.all([serveScript('workshop-page.ts'), startBrowser()])
  context = await browser.newContext()
})
afterAll(async () => {
  await browser.close()
  served.end()
})

test('ST14 the key of a browser is made once, whichever window asks, and signs as Ed25519 does', async () => {
  const [one, other] = [await window(), await window()]
  const keys = await Promise.all([one, other, one, other].map((page) => inPage(page, 'device', 'keys')))
  expect(new Set(keys).size).toBe(1)
  await one.reload()
  expect(await inPage(one, 'device', 'keys')).toBe(keys[0])
  expect(await inPage(one, 'device', 'other keys')).not.toBe(keys[0])
  const signature = (await inPage(one, 'signed', 'keys', [1, 2, 3])) as string
  // RFC 8410, 4: a public key of 32 bytes behind these twelve; looked at by Node's own Ed25519.
  const der = Buffer.from(`302a300506032b6570032100${keys[0]}`, 'hex')
  const key = createPublicKey({ key: der, format: 'der', type: 'spki' })
  expect(verify(null, Buffer.from([1, 2, 3]), key, Buffer.from(signature, 'hex'))).toBe(true)
})

test('ST13 a workshop is made once, whichever window asks, with this device as its owner', async () => {
  const [one, other] = [await window(), await window()]
  expect(await inPage(one, 'own', 'shop')).toBe(null)
  const device = await inPage(one, 'device', 'shop')
  const begun = await Promise.allSettled([
    inPage(one, 'begin', 'shop', 'Harbour yard', 'bay 2 tablet'),
    inPage(other, 'begin', 'shop', 'Harbour yard', 'bay 3 tablet'),
  ])
  const [made, ...more] = begun.flatMap((each) =>
    each.status === 'fulfilled' ? [each.value as BegunWorkshop] : [],
  )
  expect(more).toEqual([])
  const own = (await inPage(other, 'own', 'shop')) as OwnWorkshop
  // The paper holds the secret of the very root that made the log.
  const root = await signerOf(rootFromPaper(made!.paper.join(' ')))
  expect(own).toMatchObject({ name: 'Harbour yard', root: root.key, fingerprint: fingerprint(root.key) })
  expect(made!.fingerprint).toBe(own.fingerprint)
  expect(own.log.map(({ kind }) => kind)).toEqual(['workshop made', 'device certified'])
  expect(own.state.devices).toEqual([
    { device, name: expect.stringMatching(/^bay [23] tablet$/), owner: true, revoked: null },
  ])
  expect(await inPage(one, 'refused', 'shop')).toBe('has-workshop')
})

test('ST15 what the browser promises to keep, and the room it leaves, are said as it says them', async () => {
  const page = await window()
  const asked = await inPage(page, 'persistence')
  expect(asked).toBe((await page.evaluate(() => navigator.storage.persisted())) ? 'granted' : 'not granted')
  const told = await page.evaluate(() => navigator.storage.estimate())
  const { used, left } = (await inPage(page, 'room')) as { used: number; left: number }
  expect(used).toBe(told.usage)
  expect(used + left).toBe(told.quota)
  await page.evaluate(() => Object.defineProperty(navigator, 'storage', { value: undefined }))
  expect(await inPage(page, 'persistence')).toBe('cannot be told')
  expect(await inPage(page, 'room')).toBe(null)
})
