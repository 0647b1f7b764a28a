import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { axeFaults } from './support/axe-faults.ts'
import { tooSmallOrNear } from './support/far-apart.ts'
import { desktop, looks, patient, phone, startPages } from './support/pages.ts'

let pages: Awaited<ReturnType<typeof startPages>>
beforeAll(async () => {
  pages = await startPages()
})
afterAll(() => pages?.close())

/** A job of one's own, and its number. */
async function newJob(viewport = desktop) {
  const opened = await pages.open({ viewport, acceptDownloads: true }, '#/new', '.layouts')
  const { page } = opened
  await page.getByRole('button', { name: 'pulls to one side' }).click()
  await page.getByLabel('Vehicle').fill('unit 12, small van')
  await page.getByRole('button', { name: /^Strut/ }).click()
  await page.getByRole('button', { name: /^Twist beam/ }).click()
  await page.getByLabel('What is the workshop called?').fill('Harbour yard, bay 2')
  await page.getByLabel('Your initials').fill('KB')
  await page.getByRole('button', { name: 'Open the job' }).click()
  await page.waitForURL(/[A-Z]{3}-\d{4}/)
  const job = /[A-Z]{3}-\d{4}/.exec(page.url())![0]
  const to = async (stage: string, shows: string) => {
    await page.evaluate((hash) => {
      location.hash = hash
    }, `#/${job}/${stage}`)
    await page.locator(shows).first().waitFor()
  }
  return { ...opened, job, to }
}

const sealed = (page: Page) =>
  expect.poll(() => page.locator('.title-block').textContent(), patient).toContain('sealed on this device')
const block = (page: Page, name: string) => page.getByRole('form', { name, exact: true })
const download = async (page: Page, name: string) => {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).click(),
  ])
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) }
}

test('WE50 the arrival is noted by keyboard, sealed, there after a reload, typed over and taken back', async () => {
  const { page, context, to, complaints } = await newJob(phone)
  await to('arrival', '.arrival')
  const told = block(page, 'What was told')
  expect(await told.getByLabel('What the owner asked for').inputValue()).toBe('pulls to one side')
  await told.getByLabel('What the owner asked for').focus()
  await page.keyboard.press('Tab')
  await page.keyboard.type('61 900 km')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Space')
  await page.reload()
  expect(await told.getByLabel('Mileage').inputValue(), 'a form half filled in').toBe('61 900 km')
  await told.getByLabel('Registration plate').fill('KAI 12')
  await page.keyboard.press('Enter')
  await expect
    .poll(() => told.locator('.form-noted').textContent(), patient)
    .toMatch(/^noted \d\d:\d\d by KB$/)
  await sealed(page)
  await page.reload()
  await expect.poll(() => told.getByLabel('Mileage').inputValue(), patient).toBe('61 900 km')
  expect(await told.getByLabel('Registration plate').inputValue()).toBe('KAI 12')
  expect(await told.getByRole('button', { name: 'may be driven' }).getAttribute('aria-pressed')).toBe('true')
  await told.getByLabel('Mileage').fill('61 950 km')
  await expect.poll(() => told.locator('.form-noted').textContent(), patient).toContain('corrected')
  await sealed(page)
  await page.getByRole('button', { name: /^Undo/ }).click()
  await expect.poll(() => told.getByLabel('Mileage').inputValue(), patient).toBe('61 900 km')
  // Two touches in one breath: neither takes the other away.
  await told.evaluate((form) => {
    for (const button of form.querySelectorAll('button'))
      if (/^(airbag|load inside)$/.test(button.textContent ?? '')) setTimeout(() => button.click(), 0)
  })
  const pressed = (name: string) => told.getByRole('button', { name }).getAttribute('aria-pressed')
  await sealed(page)
  await page.reload()
  await expect
    .poll(() => Promise.all(['airbag', 'load inside'].map(pressed)), patient)
    .toEqual(['true', 'true'])
  expect(complaints).toEqual([])
  await context.close()
})

test('WE51 a height that is none stays in its field with the reason, and none of the round is noted', async () => {
  const { page, context, to } = await newJob()
  await to('arrival', '.arrival')
  const heights = block(page, 'Ride heights, before it is lifted')
  const missing = page.getByRole('region', { name: 'Not noted' })
  for (const [wheel, text] of [
    ['front left', '441 mm'],
    ['front right', '44x'],
  ] as const)
    await heights.getByLabel(wheel, { exact: true }).fill(text)
  await heights.getByRole('button', { name: 'Note 2 heights' }).click()
  await expect.poll(() => heights.getByRole('alert').textContent(), patient).toContain('44x')
  expect(await heights.getByLabel('front right', { exact: true }).getAttribute('aria-invalid')).toBe('true')
  expect(await missing.textContent()).toContain('Ride heights before it is lifted')
  await heights.getByLabel('front right', { exact: true }).fill('443 mm')
  await heights.getByRole('button', { name: 'Note 2 heights' }).click()
  await expect.poll(() => missing.textContent(), patient).toContain('rear right, rear left')
  expect(await heights.getByLabel('front right', { exact: true }).inputValue()).toBe('443 mm')
  await context.close()
})

test('WE52 two answers are decided by a touch and a reason; the job is signed, and what comes later is named', async () => {
  const { page, context, to, complaints } = await newJob()
  await to('handover', '.handover')
  const extra = block(page, 'Extra work, and work declined')
  for (const answer of ['yes', 'no']) {
    await extra.getByLabel('What', { exact: true }).fill('rear bushes')
    await extra.getByRole('button', { name: answer, exact: true }).click()
    await extra.getByRole('button', { name: 'Note the answer' }).click()
    await expect.poll(() => extra.getByLabel('What', { exact: true }).inputValue(), patient).toBe('')
  }
  const decide = block(page, 'Two values: decide')
  await decide.waitFor()
  expect(await axeFaults(page)).toEqual([])
  await decide.getByRole('button', { name: /answer no/ }).click()
  expect(await page.locator('.next').textContent()).toContain('two things')
  await decide.getByLabel('Why').fill('asked again')
  await sealed(page)
  await decide.getByRole('button', { name: 'This one holds' }).click()
  await expect.poll(() => decide.count(), patient).toBe(0)
  const sign = page.getByRole('region', { name: 'Proof and sign-off' })
  expect(await sign.textContent()).toContain('Signing covers all')
  await sealed(page)
  await sign.getByRole('button', { name: 'Sign as KB' }).focus()
  await page.keyboard.press('Enter')
  await expect
    .poll(() => sign.locator('.form-noted').textContent(), patient)
    .toMatch(/^Signed off, .*covered/)
  expect(await sign.getByRole('button', { name: /^Sign/ }).count()).toBe(0)
  const hours = block(page, 'Hours and parts')
  await hours.getByLabel('Hours worked').fill('3.5 h, KB')
  await hours.getByRole('button', { name: 'Note the hours' }).click()
  const late = page.getByRole('region', { name: 'After the sign-off' })
  await expect.poll(() => late.textContent(), patient).toContain('Hours worked: 3.5 h')
  expect(complaints).toEqual([])
  await context.close()
})

test('WE53 the proof sheet is a PDF and a page with their own font and no address; follow-ups are a calendar', async () => {
  const { page, context, asked, job, to } = await newJob()
  await to('handover', '.handover')
  const ups = block(page, 'Follow-ups')
  await ups.getByRole('button', { name: 'Another follow-up' }).click()
  await ups.getByRole('button', { name: 'wheel nuts again' }).click()
  await ups.getByLabel('After a distance').fill('50 km')
  await ups.getByRole('button', { name: 'Agree it' }).click()
  await expect.poll(() => ups.textContent(), patient).toContain('1 agreed')
  const before = asked.length
  const pdf = await download(page, 'Proof sheet as PDF')
  expect(pdf.name).toBe(`${job}-proof.pdf`)
  expect(pdf.bytes.subarray(0, 5).toString()).toBe('%PDF-')
  expect(pdf.bytes.length).toBeGreaterThan(10_000)
  expect(pdf.bytes.subarray(-8).toString()).toContain('%%EOF')
  const html = await download(page, 'Proof sheet as a page')
  expect(html.bytes.toString()).toContain('unit 12, small van')
  expect(html.bytes.toString()).not.toMatch(/https?:\/\/(?!www\.w3\.org)/)
  const ics = await download(page, 'Follow-ups as a calendar')
  expect(ics.bytes.toString()).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*Wheel nuts again[\s\S]*END:VCALENDAR\r\n$/)
  const proof = await download(page, 'Export the proof file')
  expect(JSON.parse(proof.bytes.toString())).toHaveProperty('entries')
  const own = new URL(page.url()).origin
  expect(asked.slice(before).filter((url) => !url.startsWith(own) && !url.startsWith('blob:'))).toEqual([])
  expect(asked.slice(before).some((url) => url.endsWith('.ttf'))).toBe(true)
  await context.close()
})

test('WE54 a text that is not understood is not sealed, and keeps the job from being signed until it is mended', async () => {
  const { page, context, to } = await newJob()
  await to('arrival', '.arrival')
  const set = block(page, 'Pressures as set')
  await set.getByLabel('Front').fill('325 kPa')
  await set.getByLabel('Rear').fill('400 kPa')
  await set.getByRole('button', { name: 'Note the pressures' }).click()
  await sealed(page)
  await set.getByLabel('Rear').fill('400 apples')
  await to('handover', '.handover')
  const sign = page.getByRole('region', { name: 'Proof and sign-off' })
  await expect.poll(() => sign.textContent(), patient).toMatch(/1 thing is not sealed yet: .*apples/)
  expect(await sign.getByRole('button', { name: 'Sign as KB' }).getAttribute('aria-disabled')).toBe('true')
  await to('arrival', '.arrival')
  await set.getByLabel('Rear').fill('410 kPa')
  await sealed(page)
  await to('handover', '.handover')
  await expect.poll(() => sign.textContent(), patient).not.toContain('not sealed')
  await context.close()
})

test('WE54 what is not sealed is not signed: a job that came with the page has no signature and says why', async () => {
  const { page, context } = await pages.open({ viewport: desktop }, '#/port-unit-07/handover', '.handover')
  const sign = page.getByRole('region', { name: 'Proof and sign-off' })
  expect(await sign.getByRole('status').allTextContents()).toContainEqual(
    expect.stringContaining('nothing in it is sealed'),
  )
  expect(await sign.getByRole('button', { name: /^Sign/ }).count()).toBe(0)
  const holds = page.getByRole('region', { name: 'Not to be driven yet' })
  const bolts = holds.getByRole('link', { name: /bolt book|angles/ }).first()
  await bolts.focus()
  await page.keyboard.press('Enter')
  await page.waitForURL(/refit|angles/)
  await context.close()
})

test.each(looks)('WE13 %s: axe-core finds no fault on arrival and handover', async (_, scheme) => {
  const { page, context } = await pages.open(
    { viewport: desktop, ...scheme },
    '#/port-unit-07/arrival',
    '.arrival',
  )
  expect(await axeFaults(page)).toEqual([])
  await page.getByRole('link', { name: 'Handover' }).click()
  await page.locator('.handover').waitFor()
  await page.getByRole('group', { name: 'headlamps' }).getByRole('button', { name: 'sent out' }).click()
  expect(await axeFaults(page)).toEqual([])
  await context.close()
})

test('WE11 arrival and handover fit every size, and what is touched is at least 48 px', async () => {
  const { page, context } = await pages.open({ viewport: phone }, '#/port-unit-07/arrival', '.arrival')
  for (const stage of ['Arrival', 'Handover']) {
    await page.getByRole('link', { name: stage }).click()
    await page.locator(stage === 'Arrival' ? '.height-plan' : '.handover').waitFor()
    for (const [width, height] of [
      [390, 844],
      [320, 640],
      [844, 390],
      [1440, 900],
    ] as const) {
      await page.setViewportSize({ width, height })
      const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      await expect.poll(over, { ...patient, message: `${stage} at ${width}` }).toBeLessThanOrEqual(0)
      const small = await tooSmallOrNear(page, { large: '.form-note', least: 56, others: 48, gap: -1 })
      expect(
        small.filter((one) => !/\||^(Arrival|Findings|Plan|Strip|Refit|Angles|Handover):/.test(one)),
        `${stage} at ${width}`,
      ).toEqual([])
    }
  }
  await context.close()
})

test('WE55 on paper the driver’s card stands alone; the sheet has every question, and one ink', async () => {
  const { page, context, to } = await newJob()
  await to('handover', '.handover')
  await page.emulateMedia({ media: 'print' })
  const shown = (what: string) => page.locator(what).filter({ visible: true }).count()
  expect(await shown('.handover-questions li')).toBeGreaterThan(10)
  expect(await shown('.driver-card')).toBe(0)
  await page.evaluate(() => {
    document.documentElement.dataset['print'] = 'card'
  })
  expect(await shown('.driver-card')).toBe(1)
  expect(await shown('.handover-questions li, .title-block, .form-head')).toBe(0)
  await context.close()
})
