import { gzipSync } from 'node:zlib'
import type { Page } from 'playwright-core'

/** Size of the scripts that the browser asks for until the page is at rest, the worker's among them: kB, gzip level 9. */
export async function firstScripts(page: Page, address: string): Promise<number> {
  const asked = new Map<string, Promise<Buffer>>()
  page.context().on('response', (response) => {
    const { pathname } = new URL(response.url())
    if (pathname.endsWith('.js') && !asked.has(pathname)) asked.set(pathname, response.body())
  })
  await page.goto(address)
  await page.locator('.reading:visible').first().waitFor()
  await page.waitForLoadState('networkidle')
  if (![...asked.keys()].some((path) => /worker/.test(path)))
    throw new Error('No worker was asked for: the sheet is not worked out.')
  const bodies = await Promise.all(asked.values())
  return bodies.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0) / 1000
}

/** From the start of the navigation until the first reading is seen in a drawn frame, ms, by the page's own clock. */
export async function firstSheet(page: Page, address: string): Promise<number> {
  await page.addInitScript(() => {
    const look = () => {
      const readings = [...document.querySelectorAll('.reading')]
      if (readings.some((one) => one.checkVisibility()))
        Object.assign(globalThis, { shownAt: performance.now() })
      else requestAnimationFrame(look)
    }
    requestAnimationFrame(look)
  })
  await page.goto(address)
  const shown = await page.waitForFunction(() => (globalThis as { shownAt?: number }).shownAt)
  return (await shown.jsonValue())!
}

/** The longest task of the main thread, ms, while figures are typed and wheels are chosen on the angles sheet. */
export async function longestTask(
  page: Page,
  address: string,
): Promise<{ readonly longest: number; readonly over: number }> {
  await page.goto(`${address}#/port-unit-07/angles`)
  await page.locator('.reading:visible').first().waitFor()
  await page.locator('.reach svg').first().waitFor()
  await page.waitForTimeout(1500)
  await page.evaluate(() => {
    const tasks: number[] = []
    Object.assign(globalThis, { tasks })
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration)
    }).observe({ type: 'longtask' })
  })
  const wheels = page.locator('fieldset.choice button')
  const count = await wheels.count()
  if (count < 2) throw new Error('There is no choice of wheels on the angles sheet.')
  for (let i = 0; i < 2 * count; i++) {
    await wheels.nth(i % count).click()
    await page.waitForTimeout(250)
  }
  const height = page.locator('.heights .field input:visible').first()
  await height.click()
  for (const text of ['441 mm', '437 mm', '445 mm']) {
    await height.press('ControlOrMeta+a')
    await page.keyboard.type(text, { delay: 80 })
    await page.waitForTimeout(600)
  }
  // The observer is told a moment after the task.
  await page.waitForTimeout(500)
  const tasks = await page.evaluate(() => (globalThis as unknown as { tasks: number[] }).tasks)
  return { longest: Math.max(0, ...tasks), over: tasks.length }
}

/** Takes a job in through the page, as a person would: from its file. */
export async function keepJob(
  page: Page,
  address: string,
  file: { name: string; text: string },
): Promise<void> {
  await page.goto(`${address}#/jobs`)
  await page.locator('.job-row').first().waitFor()
  await page
    .getByLabel('File of a job')
    .setInputFiles({ name: file.name, mimeType: 'application/json', buffer: Buffer.from(file.text) })
  await page.getByText(/taken in/).waitFor({ timeout: 240_000 })
}

/** From the touch on the row of a kept job, or from going to one of its places, until what is named is seen, ms. */
export async function opened(
  page: Page,
  address: string,
  { job, place, shows }: { readonly job: string; readonly place: string | null; readonly shows: string },
): Promise<number> {
  // Loaded anew each time: nothing of the job is held by the page any more, only by the browser.
  await page.goto('about:blank')
  await page.goto(`${address}#/jobs`)
  const row = page.locator('.job-row', { has: page.locator('.job-row-number', { hasText: job }) })
  await row.filter({ hasText: 'More' }).first().waitFor()
  await page.waitForTimeout(1500)
  return page.evaluate(
    ([job, place, shows]) =>
      new Promise<number>((resolve, reject) => {
        const numbers = [...document.querySelectorAll('.job-row-number')]
        const kept = numbers
          .filter((one) => one.textContent === job)
          .map((one) => one.closest('.job-row'))
          .find((one) => one?.querySelector('.job-row-more'))
        const started = performance.now()
        const look = () => {
          const now = performance.now()
          if ([...document.querySelectorAll(shows!)].some((one) => one.checkVisibility()))
            resolve(now - started)
          else if (now - started > 60_000) reject(new Error(`${shows} was not seen in a minute.`))
          else requestAnimationFrame(look)
        }
        if (place) location.hash = `#/${job}/${place}`
        else kept!.querySelector<HTMLElement>('.job-row-open')!.click()
        requestAnimationFrame(look)
      }),
    [job, place, shows] as const,
  )
}
