import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import { inPage, serveScript, startBrowser } from './store-pages.ts'

let served: Awaited<ReturnType<typeof serveScript>>
let browser: Browser
let context: BrowserContext

beforeAll(async () => {
  ;[served, browser] = await Promise.all([serveScript('append-page.ts'), startBrowser()])
})
afterAll(async () => {
  await browser.close()
  served.end()
})
beforeEach(async () => {
  await context?.close()
  context = await browser.newContext()
})

async function window(): Promise<Page> {
  const page = await context.newPage()
  await page.goto(served.address)
  return page
}

type Chain = readonly { readonly seq: number; readonly id: string; readonly after: readonly string[] }[]

test.each([
  ['with the browser’s locks', true],
  ['where the browser has no locks', false],
])('ST3 windows that append at once, %s: one chain', async (_, hasLocks) => {
  if (!hasLocks)
    await context.addInitScript(() => Object.defineProperty(navigator, 'locks', { value: undefined }))
  const windows = [await window(), await window(), await window()]
  expect(await windows[0]!.evaluate(() => 'locks' in navigator && navigator.locks !== undefined)).toBe(
    hasLocks,
  )
  await Promise.all(windows.map((page) => inPage(page, 'race', 'together', 12)))
  const chain = (await inPage(windows[0]!, 'chain', 'together')) as Chain
  expect(chain.map(({ seq }) => seq)).toEqual(Array.from({ length: 36 }, (_, i) => i + 1))
  expect(chain.slice(1).map(({ after }) => after)).toEqual(chain.slice(0, -1).map(({ id }) => [id]))
})

test('ST18 what the browser threw away and was exported before is brought in again: the same heads', async () => {
  const page = await window()
  await inPage(page, 'fill', 'evicted', 7, 3)
  const before = (await inPage(page, 'exported', 'evicted')) as { text: string; heads: readonly string[] }
  expect(before.heads).toHaveLength(1)
  const cdp = await context.newCDPSession(page)
  const origin = new URL(served.address).origin
  await cdp.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' })
  // The same window, whose database was taken from under it.
  expect(await inPage(page, 'jobs', 'evicted')).toEqual([])
  expect(await inPage(page, 'refused', 'evicted')).toMatchObject({ code: 'no-job' })
  await inPage(page, 'broughtIn', 'evicted', before.text)
  expect(await inPage(page, 'exported', 'evicted')).toEqual(before)
  expect(await inPage(page, 'read', 'evicted')).toMatchObject({ spoilt: [], broken: [] })
})

test('ST18 another window deletes the database: this one gives way, and finds it empty', async () => {
  const [one, other] = [await window(), await window()]
  await inPage(one, 'fill', 'deleted', 2, 1)
  await inPage(one, 'jobs', 'deleted')
  await other.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.deleteDatabase('deleted')
        asked.onsuccess = () => resolve()
        asked.onerror = () => reject(asked.error)
        asked.onblocked = () => reject(new Error('the other window keeps it open'))
      }),
  )
  expect(await inPage(one, 'jobs', 'deleted')).toEqual([])
  const { acknowledged } = (await inPage(one, 'fill', 'deleted', 1, 1)) as { acknowledged: string[] }
  expect(acknowledged).toHaveLength(1)
})

test('ST19 a database of a newer version of the page is left as it is, and told', async () => {
  const page = await window()
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const asked = indexedDB.open('newer', 1000)
        asked.onsuccess = () => {
          asked.result.close()
          resolve()
        }
      }),
  )
  expect(await inPage(page, 'refused', 'newer')).toMatchObject({ code: 'newer' })
  expect(
    await page.evaluate(
      async () => (await indexedDB.databases()).find(({ name }) => name === 'newer')?.version,
    ),
  ).toBe(1000)
})

test('ST19 a browser that lets the page keep nothing says so in a plain sentence', async () => {
  const page = await window()
  await page.evaluate(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('denied', 'SecurityError')
    }
  })
  expect(await inPage(page, 'refused', 'forbidden')).toMatchObject({ code: 'read-only' })
})

test('ST11 what the browser spoilt or lost of a log is told, and never added to', async () => {
  const page = await window()
  const spoil = (name: string, how: 'spelling' | 'lost' | 'all lost') =>
    page.evaluate(
      async ([database, what]) => {
        const done = <T>(asked: IDBRequest<T>) =>
          new Promise<T>((resolve, reject) => {
            asked.onsuccess = () => resolve(asked.result)
            asked.onerror = () => reject(asked.error)
          })
        const opened = await done(indexedDB.open(database!))
        const pieces = opened.transaction('pieces', 'readwrite').objectStore('pieces')
        const keys = await done(pieces.getAllKeys())
        if (what === 'spelling') {
          const bytes = (await done(pieces.get(keys[0]!))) as Uint8Array
          bytes[1] = 32
          await done(pieces.put(bytes, keys[0]!))
        } else for (const key of what === 'lost' ? keys.slice(-1) : keys) await done(pieces.delete(key))
        opened.close()
        return keys.length
      },
      [name, how] as const,
    )
  for (const [how, told] of [
    ['spelling', { lines: [1], opened: [1], entries: 19 }],
    ['lost', { lines: [expect.any(Number)], opened: [expect.any(Number)] }],
    ['all lost', { lines: [1], opened: [1], entries: 0 }],
  ] as const) {
    await inPage(page, 'fill', how, 4, 5)
    expect(await inPage(page, 'spoilt', how)).toMatchObject({ lines: [], opened: [], entries: 20 })
    await inPage(page, 'fill', `${how}, spoilt`, 4, 5)
    expect(await spoil(`${how}, spoilt`, how)).toBeGreaterThan(1)
    expect(await inPage(page, 'spoilt', `${how}, spoilt`)).toMatchObject({ ...told, refused: 'spoilt' })
  }
})
