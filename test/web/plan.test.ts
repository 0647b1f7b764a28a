import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { movedLine } from '../../src/web/state/moved-line.ts'
import { axeFaults } from './support/axe-faults.ts'
import { tooSmallOrNear } from './support/far-apart.ts'
import { desktop, looks, patient, phone, sizes, startPages } from './support/pages.ts'

const pictures = join(import.meta.dirname, '..', '..', 'test-output')
const van = '#/port-unit-12/plan'

let pages: Awaited<ReturnType<typeof startPages>>
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true })
  pages = await startPages()
})
afterAll(() => pages?.close())

const openPlan = (options: Parameters<typeof pages.open>[0] = { viewport: desktop }, at = van) =>
  pages.open(options, at, '.plan-line')
const ids = (page: Page) =>
  page.locator('.plan-line').evaluateAll((lines) => lines.map((one) => (one as HTMLElement).dataset['line']!))
const lineNamed = (page: Page, id: string) => page.locator(`[data-line="${id}"]`)
const settled = (page: Page) =>
  expect.poll(() => page.locator('.plan').getAttribute('aria-busy'), patient).toBe('false')

/** Opens a line and moves it; waits for the judgement. */
async function move(page: Page, id: string, step: string) {
  const line = lineNamed(page, id)
  if ((await line.locator('.plan-line-open').getAttribute('aria-expanded')) === 'false')
    await line.locator('.plan-line-open').click()
  const before = (await ids(page)).join()
  await lineNamed(page, id).getByRole('button', { name: step, exact: true }).click()
  await expect.poll(async () => (await ids(page)).join(), patient).not.toBe(before)
  await settled(page)
}

describe('WE40 a line goes one place, or to the station before or after', () => {
  const bands = [['a', 'b'], ['c', 'd'], ['e']]
  test.each([
    ['c', 'earlier', 'acbde'],
    ['c', 'later', 'abdce'],
    ['d', 'station before', 'adbce'],
    ['c', 'station after', 'abdec'],
    ['a', 'earlier', 'abcde'],
    ['e', 'station after', 'abcde'],
    ['a', 'station before', 'abcde'],
    ['x', 'earlier', 'abcde'],
  ] as const)('%s %s', (id, step, want) => {
    expect(movedLine(bands, id, step).join('')).toBe(want)
  })
})

test('WE39 the plan shows each action at its station, with its letter, and is loaded when it is opened', async () => {
  const { page, context, complaints, asked } = await pages.open({ viewport: desktop }, '#/port-unit-12')
  await page.waitForLoadState('networkidle')
  const scripts = () => new Set(asked.filter((url) => url.endsWith('.js')))
  const first = scripts()
  await page.getByRole('link', { name: 'Plan' }).click()
  await page.locator('.plan-line').first().waitFor()
  expect([...scripts()].filter((url) => !first.has(url)).length).toBeGreaterThanOrEqual(2)
  expect(await page.locator('.plan-band').count()).toBeGreaterThan(2)
  expect((await ids(page)).length).toBeGreaterThan(40)
  const letters = await page.locator('.plan-letter').allTextContents()
  expect(letters.filter((one) => /^[A-Z]/.test(one)).length).toBeGreaterThan(10)
  expect(await page.locator('.plan-ticks li').count()).toBeGreaterThan(1)
  expect(await page.getByRole('heading', { name: 'What follows from the work' }).count()).toBe(1)
  expect(complaints).toEqual([])
  await context.close()
})

test('WE40 an opened line says why, what it waits for and what waits for it, and its letter is filled on the drawing', async () => {
  const { page, context } = await openPlan()
  const line = page.locator('.plan-line', { hasText: 'back to a few threads' }).first()
  await line.locator('.plan-line-open').click()
  const terms = await line.locator('dt').allTextContents()
  expect(terms).toEqual(expect.arrayContaining(['Why', 'Waits for', 'Waited for by']))
  const letter = await line.locator('.plan-letter').textContent()
  const filled = page.locator('.plan-drawn .balloon', { hasText: letter! }).locator('text')
  await expect.poll(() => filled.first().getAttribute('style'), patient).toContain('--on-blue')
  const wait = line.locator('.plan-waits button').first()
  const words = (await wait.textContent())!
  await wait.click()
  const opened = page.locator('.plan-line-here .plan-line-open')
  expect(await opened.textContent()).toBe(words)
  expect(await opened.evaluate((one) => one === document.activeElement)).toBe(true)
  await context.close()
})

test('WE40 on a phone the corner stands in the line that is opened, its letter filled', async () => {
  const { page, context } = await openPlan({ viewport: phone })
  const line = page.locator('.plan-line', { hasText: 'back to a few threads' }).first()
  await line.locator('.plan-line-open').click()
  const letter = await line.locator('.plan-letter').textContent()
  const filled = line.locator('.plan-drawn .balloon', { hasText: letter! }).locator('text')
  await expect.poll(() => filled.first().getAttribute('style'), patient).toContain('--on-blue')
  expect(await page.locator('.plan-drawn').count()).toBe(1)
  await context.close()
})

test('WE41 a moved line is judged: a broken rule names itself there, and the strip leads to it', async () => {
  const { page, context } = await openPlan()
  const own = await ids(page)
  const at = own.findIndex((id) => id.startsWith('take off front right wheel'))
  expect(at).toBeGreaterThan(0)
  await move(page, own[at]!, 'Station before')
  const broken = lineNamed(page, own[at]!).locator('.plan-broken')
  await expect.poll(() => broken.count(), patient).toBeGreaterThan(0)
  expect(await broken.first().textContent()).toMatch(/^(Rule I\d+b?|Not yet)\./)
  expect(await page.locator('.plan-own').textContent()).toContain('Your own order.')
  await page.getByRole('button', { name: 'To the first one' }).click()
  expect(await page.locator('.plan-line-here .plan-broken').count()).toBeGreaterThan(0)
  await page.getByRole('button', { name: 'Take the last move back' }).click()
  await expect.poll(() => page.locator('.plan-broken').count(), patient).toBe(0)
  expect(await ids(page)).toEqual(own)
  await context.close()
})

test('WE42 an order of one’s own and a goal of one’s own are there after a reload, until the plan’s own is taken', async () => {
  const { page, context } = await openPlan()
  const own = await ids(page)
  await move(page, own[2]!, 'Later')
  const moved = await ids(page)
  expect(moved).toEqual([own[0], own[1], own[3], own[2], ...own.slice(4)])
  await page.reload()
  await page.locator('.plan-line').first().waitFor()
  expect(await ids(page)).toEqual(moved)
  await page.getByRole('button', { name: 'The plan’s own order' }).click()
  await expect.poll(() => ids(page), patient).toEqual(own)
  await page.getByRole('button', { name: 'Choose parts' }).click()
  await page.getByRole('button', { name: 'front left drop link' }).click()
  await expect.poll(() => page.locator('.plan-goal-said').textContent(), patient).toContain('left drop link')
  await page.reload()
  await page.locator('.plan-line').first().waitFor()
  expect(await page.locator('.plan-goal-said').textContent()).toContain('left drop link')
  await page.getByRole('button', { name: 'As the log says' }).click()
  await expect.poll(() => ids(page), patient).toEqual(own)
  await context.close()
})

test('WE43 with nothing chosen the plan asks what is to be replaced', async () => {
  const { page, context } = await openPlan()
  await page.getByRole('button', { name: 'Choose parts' }).click()
  for (const name of ['front right lower arm', 'front right tie rod'])
    await page.getByRole('button', { name, exact: true }).click()
  await expect
    .poll(() => page.locator('.plan-goal-said').textContent(), patient)
    .toContain('Nothing is chosen')
  expect(await page.locator('.plan-line').count()).toBe(0)
  expect(await page.locator('.next').textContent()).toContain('Choose what is to be replaced')
  await page.getByRole('button', { name: 'front drop link, both sides' }).click()
  await page.locator('.plan-line').first().waitFor()
  expect(await page.locator('.plan-goal-said').textContent()).toMatch(/left drop link.*right drop link/)
  await context.close()
})

test('WE12 a line is opened, moved and moved back by the keyboard alone, and keeps the focus', async () => {
  const { page, context } = await openPlan()
  const own = await ids(page)
  await lineNamed(page, own[3]!).locator('.plan-line-open').focus()
  await page.keyboard.press('Alt+ArrowDown')
  await expect.poll(async () => (await ids(page))[4], patient).toBe(own[3])
  await settled(page)
  await page.keyboard.press('Enter')
  const focused = () =>
    page.evaluate(() => document.activeElement?.closest('[data-line]')?.getAttribute('data-line'))
  await expect.poll(focused, patient).toBe(own[3])
  await page.keyboard.press('Alt+ArrowUp')
  await expect.poll(() => ids(page), patient).toEqual(own)
  await context.close()
})

test.each(looks)(
  'WE13 %s: axe-core finds no fault on the plan, opened, broken or choosing',
  async (_, scheme) => {
    const { page, context } = await openPlan({ viewport: desktop, ...scheme })
    const own = await ids(page)
    await move(page, own.find((id) => id.startsWith('take off front right wheel'))!, 'Station before')
    await page.getByRole('button', { name: 'Choose parts' }).click()
    expect(await axeFaults(page)).toEqual([])
    await context.close()
  },
)

test('WE11 the plan fits every size, and what is touched is at least 48 px', async () => {
  const { page, context } = await openPlan({ viewport: phone })
  await page.locator('.plan-line-open').nth(12).click()
  await page.getByRole('button', { name: 'Choose parts' }).click()
  for (const [name, width, height] of [...sizes, ['smallest', 320, 640], ['lying', 844, 390]] as const) {
    await page.setViewportSize({ width, height })
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    await expect.poll(over, patient).toBeLessThanOrEqual(0)
    const near = await tooSmallOrNear(page, {
      large: '.next a, .next button',
      least: 48,
      others: 48,
      gap: -1,
    })
    expect(
      near.filter((one) => !/\||^(Arrival|Findings|Plan|Strip|Refit|Angles|Handover):/.test(one)),
      name,
    ).toEqual([])
    for (const [look, colorScheme] of [
      ['day', 'light'],
      ['night', 'dark'],
    ] as const) {
      await page.emulateMedia({ colorScheme })
      await page.screenshot({ path: join(pictures, `plan-${name}-${look}.png`) })
    }
  }
  await context.close()
})

test('WE44 on paper the plan is its lines with boxes, in one ink, without buttons', async () => {
  const { page, context } = await openPlan({ viewport: desktop, colorScheme: 'dark' })
  await page.locator('.plan-line-open').nth(12).click()
  await page.getByRole('button', { name: 'Choose parts' }).click()
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
  expect(await page.locator('.plan-box:visible').count()).toBe((await ids(page)).length)
  const screenOnly = '.plan-goal-buttons, .plan-choices, .plan-steps, .plan-drawn, .next'
  await expect.poll(() => page.locator(screenOnly).filter({ visible: true }).count(), patient).toBe(0)
  const inks = await page.evaluate(() => {
    const shown = [...document.querySelectorAll<HTMLElement>('.page-sheet *')].filter(
      (one) => one.offsetParent !== null,
    )
    return [...new Set(shown.map((one) => getComputedStyle(one).color))]
  })
  expect(inks).toEqual(['rgb(0, 0, 0)'])
  await context.close()
})
