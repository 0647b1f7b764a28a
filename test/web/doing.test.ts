import { mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { foldJob, readAny } from '../../src/job/index.ts'
import { buildJob } from '../../src/web/state/build-job.ts'
import type { Edit } from '../../src/web/state/messages.ts'
import { axeFaults } from './support/axe-faults.ts'
import { tooSmallOrNear } from './support/far-apart.ts'
import { desktop, looks, patient, phone, sizes, startPages } from './support/pages.ts'

const root = join(import.meta.dirname, '..', '..')
const pictures = join(root, 'test-output')
const ball = '#/port-unit-07/refit/front-right/lower-ball-joint'
const book = '#/port-unit-07/refit'

let pages: Awaited<ReturnType<typeof startPages>>
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true })
  pages = await startPages()
})
afterAll(() => pages?.close())

/** The screen of a joint, after T has said who works. */
async function openJoint(at = ball, options: Parameters<typeof pages.open>[0] = { viewport: phone }) {
  const opened = await pages.open(options, at, '.hand input')
  await opened.page.locator('.hand input').fill('T')
  await opened.page.keyboard.press('Enter')
  await opened.page.locator('.doing').waitFor()
  return opened
}

/** The ball joint as it is taken apart again, whatever the demo's log says of it so far. */
async function openUndone(options?: Parameters<typeof pages.open>[0]) {
  const opened = await openJoint(ball, options)
  await touch(opened.page, 'Undone: on a few threads')
  return opened
}

const button = (page: Page, name: string | RegExp) => page.locator('.doing-bar').getByRole('button', { name })

/** Touches a large button, and waits until the screen has something else to say. */
async function touch(page: Page, name: string) {
  const before = await page.locator('.doing-bar').textContent()
  // A touch so soon after the one before would be its bounce.
  await page.waitForTimeout(650)
  await button(page, name).click()
  await expect.poll(() => page.locator('.doing-bar, .hand').first().textContent(), patient).not.toBe(before)
}

const keptEdits = (page: Page): Promise<readonly Edit[]> =>
  page.evaluate(() => {
    const key = Object.keys(localStorage).find((one) => one.includes('/edits/'))
    return key ? JSON.parse(localStorage.getItem(key)!) : []
  })

/** What the log says of the ball joint, once the edits that the device keeps are laid on the job's file. */
async function logOf(page: Page) {
  const name = 'port-unit-07.job.json'
  const file = readAny({ name, text: readFileSync(join(root, 'examples', 'port-unit-07', name), 'utf8') })
  if (!file.ok || file.value.format !== 'job') throw new Error('The demo job cannot be read.')
  const { job, refused } = buildJob(file.value.value, await keptEdits(page))
  expect(refused).toEqual([])
  const state = foldJob(job.entries)
  expect(state.troubles).toEqual(foldJob(file.value.value.entries).troubles)
  const before = file.value.value.entries.length
  const here = <F extends { joint: string; wheel: string; entry: number }>(facts: readonly F[]) =>
    facts.filter(
      ({ joint, wheel, entry }) => entry >= before && joint === 'lower-ball-joint' && wheel === 'front right',
    )
  return {
    undone: here(state.undone).map(({ to, hand }) => `${to} ${hand}`),
    tightened: here(state.tightenings).map(({ stage, hand }) => `${stage} ${hand}`),
    torques: here(state.tightenings).flatMap(({ torque }) => (torque ? [torque.text] : [])),
    pins: here(state.pins).map(({ pin, legsBent, hand }) => `${pin} ${legsBent} ${hand}`),
    checks: here(state.secondChecks).map(({ by, passed, hand }) => `${by} ${passed} ${hand}`),
  }
}

describe('the bolt book', () => {
  test('WE24 what is open stands first; a row says letter, wheel, value and state, and opens its screen', async () => {
    const { page, context, complaints } = await pages.open({ viewport: desktop })
    await page.getByRole('link', { name: 'Refit' }).click()
    await page.locator('.bolt').first().waitFor()
    expect(await page.locator('h1').textContent()).toContain('Refit')
    const heads = await page.locator('.bolt-book h2').allTextContents()
    expect(heads.join(' ')).toMatch(/Open joints: \d+.*Done: \d+.*Not opened in this job: \d+/)
    const row = page.locator('.bolt', { hasText: 'Lower ball joint' }).filter({ hasText: 'front right' })
    const text = await row.textContent()
    for (const word of ['C', '105 N·m', 'front right', 'checked', 'Second look'])
      expect(text?.replaceAll('\u00a0', ' ')).toContain(word)
    await row.click({ position: { x: 400, y: 20 } })
    await page.locator('.hand').waitFor()
    expect(page.url()).toContain('/refit/front-right/lower-ball-joint')
    await page.goBack()
    await page.locator('.bolt').first().waitFor()
    await page.getByRole('link', { name: 'Angles' }).click()
    await page.locator('.reading:visible').first().waitFor()
    expect(complaints).toEqual([])
    await context.close()
  })

  test('WE24 an address of a joint that is not there says so and leads back', async () => {
    const { page, context } = await pages.open(
      { viewport: phone },
      `${book}/front-right/no-such`,
      'main button',
    )
    await expect.poll(() => page.locator('main').textContent(), patient).toContain('no such joint')
    await page.getByRole('button', { name: 'To the bolt book' }).click()
    await page.locator('.bolt').first().waitFor()
    await context.close()
  })

  test('WE36 on paper every joint stands in one ink with a box, and no button', async () => {
    const { page, context } = await pages.open({ viewport: desktop, colorScheme: 'dark' }, book, '.bolt')
    const all = await page.locator('.bolt').count()
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
    await expect.poll(() => page.locator('.bolt:visible').count(), patient).toBe(all)
    expect(await page.locator('.bolt-box:visible').count()).toBe(all)
    expect(await page.locator('button:visible').count()).toBe(0)
    const ink = await page.evaluate(() => getComputedStyle(document.body).color)
    expect(ink).toBe('rgb(0, 0, 0)')
    await context.close()
  })

  test('WE34 units are chosen by whoever reads, and kept; what was typed stays', async () => {
    const { page, context } = await pages.open({ viewport: desktop })
    await page.getByRole('button', { name: 'Open all' }).click()
    const typed = () =>
      page.locator('.heights input').evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value))
    const before = await typed()
    expect(await page.locator('.heights-number').first().textContent()).toContain('mm')
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await page.getByRole('button', { name: 'Inch, lbf·ft' }).click()
    await expect.poll(() => page.locator('.heights-number').first().textContent(), patient).toMatch(/ in/)
    expect(await typed()).toEqual(before)
    await page.reload()
    await page.locator('.reading:visible').first().waitFor()
    expect(await page.locator('.heights-number').first().textContent()).toMatch(/ in/)
    await context.close()
  })
})

describe('one joint fills the screen', () => {
  test('WE26 WE27 WE28 WE37 a castle nut: run up, floor, slot, pin and second look land in the log, and survive a reload', async () => {
    const { page, context, complaints } = await openUndone()
    expect(await page.locator('.doing-later').textContent()).toBe('Floor reached')
    expect(await page.locator('.doing-later').isDisabled()).toBe(true)
    const figures = await page.locator('.doing-number').allTextContents()
    expect(figures.map((text) => Number.parseFloat(text))).toEqual([105, 130])
    await touch(page, 'Run up')
    await touch(page, 'Floor reached')
    expect((await logOf(page)).tightened).toEqual(['run up T', 'stage T'])
    await touch(page, 'Slot meets the hole')
    await touch(page, 'Pin in, legs bent')
    await page.reload()
    await page.locator('.doing').waitFor()
    await expect.poll(() => button(page, /passed/).count(), patient).toBe(3)
    await touch(page, 'Second look: passed')
    await page.locator('.hand input').fill('C')
    await page.keyboard.press('Enter')
    await expect.poll(() => page.locator('.doing-state').textContent(), patient).toContain('checked')
    await page.reload()
    await page.locator('.doing').waitFor()
    expect(await page.locator('.doing-state').textContent()).toContain('checked')
    expect(await logOf(page)).toEqual({
      undone: ['on a few threads T'],
      tightened: ['run up T', 'stage T', 'final T'],
      torques: ['105 N·m'],
      pins: ['new true T'],
      checks: ['another person true C'],
    })
    // The demo's own day, so that its wrenches are calibrated whenever it is looked at.
    for (const edit of await keptEdits(page)) expect('at' in edit && edit.at).toMatch(/^2026-03-\d\dT/)
    // Whoever works is still T: the second look did not change hands.
    expect(await page.locator('.doing-tools button').last().textContent()).toContain('T')
    expect(complaints).toEqual([])
    await context.close()
  })

  test('WE27 undo takes back one act', async () => {
    const { page, context } = await openUndone()
    await touch(page, 'Run up')
    await touch(page, 'Floor reached')
    await page.getByRole('button', { name: /^Undo(?!ne)/ }).click()
    await expect.poll(() => button(page, 'Floor reached').isEnabled(), patient).toBe(true)
    expect((await logOf(page)).tightened).toEqual(['run up T'])
    await page.getByRole('button', { name: /^Undo(?!ne)/ }).click()
    await expect.poll(() => button(page, 'Run up').isEnabled(), patient).toBe(true)
    await page.getByRole('button', { name: /^Undo(?!ne)/ }).click()
    await expect.poll(() => page.getByRole('button', { name: /^Undo(?!ne)/ }).count(), patient).toBe(0)
    expect(await keptEdits(page)).toEqual([])
    await context.close()
  })

  test('WE26 a bounce of one touch is not a second fact', async () => {
    const { page, context } = await openUndone()
    await page.waitForTimeout(650)
    const box = (await button(page, 'Run up').boundingBox())!
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    for (let i = 0; i < 3; i++) await page.mouse.click(x, y)
    await expect.poll(() => button(page, 'Floor reached').isEnabled(), patient).toBe(true)
    expect((await logOf(page)).tightened).toEqual(['run up T'])
    await context.close()
  })

  test('WE29 a pedal says done and goes back; where there is a choice no key takes it, and none undoes', async () => {
    const { page, context } = await openUndone()
    for (const [key, ready] of [
      ['ArrowRight', 'Floor reached'],
      ['Enter', 'Slot meets the hole'],
      ['ArrowRight', 'Pin in, legs bent'],
      ['Enter', 'Second look: passed'],
    ] as const) {
      await page.waitForTimeout(650)
      await page.keyboard.press(key)
      await expect.poll(() => button(page, ready).isEnabled(), patient).toBe(true)
    }
    const edits = (await keptEdits(page)).length
    await page.waitForTimeout(650)
    for (const key of ['Enter', 'ArrowRight']) await page.keyboard.press(key)
    expect(await page.locator('.hand').count()).toBe(0)
    expect(await keptEdits(page)).toHaveLength(edits)
    await page.keyboard.press('Backspace')
    await page.locator('.bolt').first().waitFor()
    // A joint that is done: forward leads to the next one and leaves it as it is.
    await page.locator('.bolts-closed summary').click()
    await page.locator('.bolts-closed a').first().click()
    await page.locator('.doing-retreat').waitFor()
    const there = page.url()
    await page.waitForTimeout(650)
    await page.keyboard.press('ArrowRight')
    await expect.poll(() => page.url(), patient).not.toBe(there)
    expect(await keptEdits(page)).toHaveLength(edits)
    await page.keyboard.press('ArrowLeft')
    await page.locator('.bolt').first().waitFor()
    await context.close()
  })

  test('WE30 who works is asked once, is kept, and can change', async () => {
    const { page, context } = await openUndone()
    await page.getByRole('button', { name: 'Back' }).click()
    await page.locator('.bolt a', { hasText: 'Wheel nuts' }).first().click()
    await page.locator('.doing').waitFor()
    await page.reload()
    await page.locator('.doing').waitFor()
    await page.getByRole('button', { name: /^Who works now/ }).click()
    await page.locator('.hand input').fill('K')
    await page.keyboard.press('Enter')
    const all = (await keptEdits(page)).length
    await page.waitForTimeout(650)
    await page.locator('.doing-act, .doing-retreat').first().click()
    await expect.poll(() => keptEdits(page).then((edits) => edits.length), patient).toBe(all + 1)
    const [last] = (await keptEdits(page)).slice(-1)
    expect(last?.kind === 'done' && last.entry?.data['hand']).toBe('K')
    await context.close()
  })

  test('WE35 the cautions of a joint stand on its screen in all their words, and are read aloud before the numbers', async () => {
    const { page, context } = await pages.open({ viewport: phone }, ball, '.hand')
    await page.evaluate(() => {
      const said: string[] = []
      Object.assign(window, { said })
      // The browser's voice has no sound here: what it is given is kept.
      speechSynthesis.speak = (words) => {
        said.push(words.text)
      }
    })
    await page.locator('.hand input').fill('T')
    await page.keyboard.press('Enter')
    await page.locator('.doing').waitFor()
    await touch(page, 'Undone: on a few threads')
    const cautions = await page.locator('.doing-cautions li').allTextContents()
    expect(cautions.join(' ')).toMatch(/Never back.*Taper clean/)
    for (const one of await page.locator('.doing-cautions li').all()) expect(await one.isVisible()).toBe(true)
    const clear = (of: string) =>
      page.evaluate((what) => {
        const bar = document.querySelector('.doing-bar')!.getBoundingClientRect().top
        return bar - [...document.querySelectorAll(what)].at(-1)!.getBoundingClientRect().bottom
      }, of)
    expect(await clear('.doing-cautions')).toBeGreaterThanOrEqual(0)
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight))
    expect(await clear('.doing-words > *')).toBeGreaterThanOrEqual(8)
    await page.getByRole('button', { name: 'Read aloud' }).click()
    const said = await page.evaluate(() => (window as unknown as { said: string[] }).said.join(' '))
    expect(said.indexOf('Never back')).toBeGreaterThan(-1)
    expect(said.indexOf('Never back')).toBeLessThan(said.indexOf('105 newton metres'))
    expect(said).not.toContain('**')
    await context.close()
  })
})

describe('how it looks', () => {
  test.each(looks)(
    'WE13 %s: axe-core finds no fault in the bolt book or on a joint’s screens',
    async (_, scheme) => {
      const { page, context } = await pages.open({ viewport: desktop, ...scheme }, book, '.bolt')
      await page.locator('.bolts-closed summary').click()
      expect(await axeFaults(page)).toEqual([])
      await page.goto(`${pages.address}${ball}`)
      await page.locator('.hand input').waitFor()
      expect(await axeFaults(page)).toEqual([])
      await page.locator('.hand input').fill('T')
      await page.keyboard.press('Enter')
      await page.locator('.doing').waitFor()
      expect(await axeFaults(page)).toEqual([])
      await touch(page, 'Undone: on a few threads')
      expect(await axeFaults(page)).toEqual([])
      await context.close()
    },
  )

  test('WE25 large buttons are 72 px, all others 48, 8 px apart, and nothing scrolls sideways, at every size', async () => {
    const { page, context } = await openUndone()
    const measured = async () => {
      for (const [, width, height] of [...sizes, ['smallest', 320, 640], ['lying', 844, 390]] as const) {
        await page.setViewportSize({ width, height })
        const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
        await expect.poll(over, patient).toBeLessThanOrEqual(0)
        expect(
          await tooSmallOrNear(page, {
            large: '.doing-bar button, .hand-known button',
            least: 72,
            others: 48,
            gap: 8,
          }),
        ).toEqual([])
      }
      await page.setViewportSize(phone)
    }
    await measured()
    for (const label of ['Run up', 'Floor reached', 'Slot meets the hole', 'Pin in, legs bent'])
      await touch(page, label)
    await measured()
    await touch(page, 'Second look by the same person, later: passed')
    await measured()
    await page.getByRole('button', { name: /^Who works now/ }).click()
    await measured()
    await page.goto(`${pages.address}${book}`)
    await page.locator('.bolt').first().waitFor()
    for (const [, width, height] of sizes) {
      await page.setViewportSize({ width, height })
      const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      await expect.poll(over, patient).toBeLessThanOrEqual(0)
      expect(await tooSmallOrNear(page, { large: '.bolt', least: 48, others: 0, gap: -99 })).toEqual([])
    }
    await context.close()
  })

  test('pictures of the bolt book and of three joints', async () => {
    for (const [look, scheme] of looks.slice(0, 2))
      for (const [name, width, height] of sizes) {
        const { page, context } = await openUndone({ viewport: { width, height }, ...scheme })
        for (const [what, at] of [
          ['castle-nut', ball],
          ['wheel-nuts', `${book}/front-right/wheel-nuts`],
          ['pivot-bolt', `${book}/front-right/lower-front-bolt`],
        ] as const) {
          await page.goto(`${pages.address}${at}`)
          await expect.poll(() => page.locator('.doing').count(), patient).toBe(1)
          await page.screenshot({ path: join(pictures, `doing-${what}-${name}-${look}.png`) })
          expect(await page.locator('body').textContent()).not.toMatch(/NaN|undefined|\[object|\*\*/)
        }
        await page.goto(`${pages.address}${book}`)
        await page.locator('.bolt').first().waitFor()
        await page.screenshot({ path: join(pictures, `bolt-book-${name}-${look}.png`), fullPage: true })
        await context.close()
      }
  })
})

test('WE33 the boxes of a round are there after a reload', async () => {
  const { page, context } = await pages.open({ viewport: desktop })
  await page.locator('.next > button').click()
  await page.locator('.round').waitFor()
  const box = page.locator('.round-check input').first()
  await box.check()
  await page.reload()
  await page.locator('.round').waitFor()
  expect(await box.isChecked()).toBe(true)
  await context.close()
})
