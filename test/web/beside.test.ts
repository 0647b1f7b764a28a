import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { axeFaults } from './support/axe-faults.ts'
import { goTo, openJob } from './support/job-steps.ts'
import { looks, patient, phone, startPages } from './support/pages.ts'

let pages: Awaited<ReturnType<typeof startPages>>
beforeAll(async () => {
  pages = await startPages()
})
afterAll(() => pages?.close())

const openJobs = (options: Parameters<typeof pages.open>[0] = { viewport: phone }) =>
  pages.open(options, '#/jobs', '.job-row')

/** Touches and typed fields, as a person would count them. */
function counted(page: Page) {
  const sum = { touches: 0, typed: 0 }
  return {
    sum,
    touch: async (name: string | RegExp) => {
      sum.touches++
      await page.getByRole('button', { name }).first().click()
    },
    link: async (name: string | RegExp) => {
      sum.touches++
      await page.getByRole('link', { name }).first().click()
    },
    type: async (label: string, text: string) => {
      // The touch into the field counts as well.
      sum.touches++
      sum.typed++
      await page.getByLabel(label).fill(text)
    },
  }
}

test('WE58 from an empty page to a judged plan with its shopping list, counted; a first useful answer on the way', async () => {
  const { page, context } = await openJobs()
  const { sum, touch, link, type } = counted(page)
  await touch('New job')
  await touch('pulls to one side')
  await type('Vehicle', 'unit 21, small van')
  await touch(/^Strut/)
  await type('What is the workshop called?', 'Harbour yard')
  await type('Your initials', 'KB')
  await touch('Open the job')
  await touch('It is on paper')
  // What to check first, and how the vehicle is held for it.
  const checks = page.locator('.findings-check, .findings-checks li').first()
  await checks.waitFor(patient)
  expect(await checks.textContent()).toMatch(/min/)
  expect(sum.touches).toBeLessThanOrEqual(12)
  await link('Plan')
  await touch(/lower arm, both sides/i)
  await page.locator('.plan-line').first().waitFor({ timeout: 60_000 })
  const laid = await page.locator('.plan').textContent()
  expect(laid).toMatch(/before lifting|to have|Have ready/i)
  expect(await page.locator('.plan-broken').count()).toBe(0)
  expect(sum.touches).toBeLessThanOrEqual(25)
  expect(sum.typed).toBeLessThanOrEqual(6)
  await context.close()
}, 120_000)

for (const [look, how] of looks)
  test(`WE59 ${look}: no page beside the jobs has a fault that axe-core finds, or scrolls sideways`, async () => {
    const { page, context } = await openJobs({ viewport: phone, ...how })
    const job = await openJob(page)
    const places: readonly (readonly [readonly string[], string])[] = [
      [['jobs'], '.job-row'],
      [['new'], '.layouts'],
      [['kit'], '.kit-row'],
      [['workshop'], '.workshop-facts'],
      [['verify'], 'h1'],
      [['vehicles', job], '.layouts'],
      [['values', job, 'angles'], '.file-row'],
    ]
    for (const [place, shows] of places) {
      await goTo(page, ...place)
      await page.locator(shows).first().waitFor()
      await page.waitForTimeout(400)
      expect(await axeFaults(page), place.join('/')).toEqual([])
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      expect(over, place.join('/')).toBeLessThanOrEqual(0)
    }
    await context.close()
  }, 120_000)

test('WE64 who has a code is asked for it before they take over the work; a wrong one is told', async () => {
  const { page, context } = await openJobs()
  const job = await openJob(page)
  await goTo(page, 'workshop')
  await page.getByLabel('Initials or a sign').fill('TM')
  await page.getByLabel(/Their own code/).fill('1234')
  await page.getByRole('button', { name: /^Add, or give/ }).click()
  await page.getByText(/first that anybody tries/).waitFor(patient)
  await page.getByLabel(/Their own code/).fill('4711')
  await page.getByRole('button', { name: /^Add, or give/ }).click()
  await page.getByText('TM technician').waitFor(patient)
  await goTo(page, job, 'strip')
  await page.locator('.bolts a').first().click()
  await page.getByRole('button', { name: /Who works now/ }).click()
  await page.getByRole('button', { name: 'TM', exact: true }).click()
  await page.getByLabel('Your code').fill('4712')
  await page.getByRole('button', { name: 'Go on as TM' }).click()
  await page.getByText(/not the code of TM/).waitFor(patient)
  await page.getByLabel('Your code').fill('4711')
  await page.getByRole('button', { name: 'Go on as TM' }).click()
  await expect
    .poll(() => page.getByRole('button', { name: /Who works now/ }).textContent(), patient)
    .toContain('TM')
  await context.close()
}, 60_000)
