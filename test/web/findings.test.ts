import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { axeFaults } from './support/axe-faults.ts'
import { tooSmallOrNear } from './support/far-apart.ts'
import { desktop, looks, patient, phone, sizes, startPages } from './support/pages.ts'

const pictures = join(import.meta.dirname, '..', '..', 'test-output')
const bus = '#/port-unit-07/findings'
const van = '#/port-unit-12/findings'

let pages: Awaited<ReturnType<typeof startPages>>
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true })
  pages = await startPages()
})
afterAll(() => pages?.close())

const openFindings = (options: Parameters<typeof pages.open>[0] = { viewport: desktop }, at = bus) =>
  pages.open(options, at, '.finding')

test('WE45 the findings stage opens its own sheet, and it and its worker are loaded then', async () => {
  const { page, context, complaints, asked } = await pages.open({ viewport: desktop }, '#/port-unit-07')
  await page.waitForLoadState('networkidle')
  const scripts = () => new Set(asked.filter((url) => url.endsWith('.js')))
  const first = scripts()
  await page.getByRole('link', { name: 'Findings' }).click()
  await page.locator('.finding').first().waitFor()
  expect([...scripts()].filter((url) => !first.has(url)).length).toBeGreaterThanOrEqual(2)
  expect(page.url()).toContain('/findings')
  expect(await page.locator('.finding').first().textContent()).toContain('lower ball joint worn')
  expect(await page.locator('.belief-text').first().textContent()).toContain('more than 95 %')
  expect(complaints).toEqual([])
  await context.close()
})

test('WE46 evidence stands behind a touch or a key, and the ghost of what is chosen is dashed over the corner', async () => {
  const { page, context } = await openFindings()
  const ghost = () => page.locator('.finding-ghost path').first().getAttribute('d')
  await expect.poll(() => page.locator('.finding-ghost').count(), patient).toBe(1)
  const before = await ghost()
  const knuckle = page.locator('[data-suspect^="bent knuckle | front | right"] .suspect-open')
  await knuckle.focus()
  await page.keyboard.press('Enter')
  expect(await knuckle.getAttribute('aria-expanded')).toBe('true')
  const terms = await page.locator('.suspect-here dt').allTextContents()
  expect(terms).toEqual(['For', 'Against', 'Proof by hand'])
  expect(await page.locator('.suspect-here dd').first().textContent()).toMatch(
    /Camber, right front, −1\.\d+° ±/,
  )
  await expect.poll(ghost, patient).not.toBe(before)
  expect(await page.locator('.finding-key').textContent()).toMatch(/drawn \d+ times as far/)
  const dashes = await page
    .locator('.finding-ghost path')
    .first()
    .evaluate((one) => getComputedStyle(one).strokeDasharray)
  expect(dashes).not.toBe('none')
  await context.close()
})

test('WE47 each check says how the vehicle is held, its box is kept for the sitting; the round is chosen', async () => {
  const { page, context } = await openFindings()
  const check = page.locator('.check').first()
  expect(await check.locator('.check-hold').textContent()).toMatch(/stands/i)
  expect(await check.locator('.check-minutes').textContent()).toMatch(/^\d+ min$/)
  const box = check.getByRole('button').first()
  await box.click()
  expect(await box.getAttribute('aria-pressed')).toBe('true')
  const said = await page.locator('.findings-said').textContent()
  await page.getByRole('button', { name: 'Round 2, provisional' }).click()
  await expect.poll(() => page.locator('.findings-said').textContent(), patient).not.toBe(said)
  expect(await page.locator('.findings-said').textContent()).toContain('That clears no part')
  await context.close()
})

test('WE47 what was found is noted at its check and takes it off the list, until it is undone', async () => {
  const { page, context } = await openFindings({ viewport: desktop }, van)
  const asked = (await page.locator('.check > button').first().textContent())!
  const check = page.locator('.check', { hasText: asked })
  await check.getByRole('button').first().click()
  await check.getByRole('button', { name: 'Nothing' }).click()
  await expect.poll(() => check.count(), patient).toBe(0)
  await page.getByRole('button', { name: /^Undo/ }).click()
  await expect.poll(() => check.count(), patient).toBe(1)
  await context.close()
})

test.each(looks)('WE13 %s: axe-core finds no fault on the findings, opened', async (_, scheme) => {
  const { page, context } = await openFindings({ viewport: desktop, ...scheme })
  await page.locator('.suspect-open').first().click()
  expect(await axeFaults(page)).toEqual([])
  await context.close()
})

test('WE11 the findings fit every size, and what is touched is at least 48 px', async () => {
  const { page, context } = await openFindings({ viewport: phone }, van)
  await page.locator('.suspect-open').first().click()
  await page.locator('.finding-ghost').waitFor()
  for (const [name, width, height] of [...sizes, ['smallest', 320, 640], ['lying', 844, 390]] as const) {
    await page.setViewportSize({ width, height })
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    await expect.poll(over, patient).toBeLessThanOrEqual(0)
    const near = await tooSmallOrNear(page, { large: '.next a', least: 48, others: 48, gap: -1 })
    expect(
      near.filter((one) => !/\||^(Arrival|Findings|Plan|Strip|Refit|Angles|Handover):/.test(one)),
      name,
    ).toEqual([])
    await page.screenshot({ path: join(pictures, `findings-${name}.png`) })
  }
  await context.close()
})

test('WE48 on paper the findings are one ink, with the likeliest drawn, every evidence and a box for each check', async () => {
  const { page, context } = await openFindings({ viewport: desktop, colorScheme: 'dark' })
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
  const shown = (what: string) => page.locator(what).filter({ visible: true }).count()
  await expect.poll(() => shown('.choice, .choice button, .next'), patient).toBe(0)
  // the part displaced is on paper too, once, in the one ink
  expect(await shown('.finding-drawn')).toBe(1)
  const dashes = await page.evaluate(() =>
    [...document.querySelectorAll('.finding-ghost path, .finding-ghost line')].map(
      (one) => getComputedStyle(one).stroke,
    ),
  )
  expect(dashes.length).toBeGreaterThan(0)
  expect([...new Set(dashes)]).toEqual(['rgb(0, 0, 0)'])
  expect(await shown('.suspect-more')).toBe(await page.locator('.suspect').count())
  expect(await shown('.check rect')).toBe(await page.locator('.check').count())
  const inks = await page.evaluate(() => {
    const all = [...document.querySelectorAll<HTMLElement>('.page-sheet *')].filter(
      (one) => one.offsetParent !== null,
    )
    return [...new Set(all.map((one) => getComputedStyle(one).color))]
  })
  expect(inks).toEqual(['rgb(0, 0, 0)'])
  await context.close()
})
