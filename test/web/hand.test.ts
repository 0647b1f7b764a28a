import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { desktop, patient, phone, startPages } from './support/pages.ts'

let pages: Awaited<ReturnType<typeof startPages>>
beforeAll(async () => {
  pages = await startPages()
})
afterAll(() => pages?.close())

const bare = (placeholder: string) => placeholder.replace(/^was /, '').replace(/[^\d.,+\-−]/g, '')

/** Types a round from the keyboard alone: bare numbers, Enter to go on. @returns how many fields */
async function typeRound(page: Page): Promise<number> {
  await page.locator('.round input[type=text]').first().focus()
  for (let count = 0; count < 200; count++) {
    const was = await page.evaluate(() => {
      const field = document.activeElement
      return field instanceof HTMLInputElement && field.value === '' ? field.placeholder : null
    })
    if (was === null) return count
    const covered = await page.evaluate(() => {
      const field = document.activeElement!.getBoundingClientRect()
      return field.bottom > document.querySelector('.next')!.getBoundingClientRect().top
    })
    if (covered) throw new Error(`Field ${count + 1} is under the strip.`)
    await page.keyboard.type(bare(was))
    await page.keyboard.press('Enter')
  }
  throw new Error('The round has no end.')
}

describe('in the hand', () => {
  test('WE18 a whole round is typed on a phone without a unit and without touching the next field', async () => {
    const { page, context, complaints } = await pages.open({ viewport: phone })
    const title = await page.locator('.readings h2').textContent()
    await page.locator('.next > button').click()
    await page.locator('.round').waitFor()
    const fields = await page.locator('.round .field:visible').count()
    expect(await typeRound(page)).toBe(fields)
    expect(fields).toBeGreaterThan(20)
    await expect.poll(() => page.locator('.next').textContent(), patient).toMatch(/All \d+ gauges/)
    const first = page.locator('.round .field input').first()
    expect(await first.inputValue()).toBe(((await first.getAttribute('placeholder')) ?? '').slice(4))
    await page.getByRole('button', { name: 'Take this round' }).click()
    await expect.poll(() => page.locator('.readings h2').textContent(), patient).not.toBe(title)
    expect(await page.evaluate(() => [window.scrollY, document.activeElement?.id])).toEqual([0, 'sheet'])
    expect(complaints).toEqual([])
    await context.close()
  })

  test('WE19 moves that are noted as made say so until they are read again; undo takes it back', async () => {
    const { page, context } = await pages.open({ viewport: phone })
    expect(await page.locator('.move-made').count()).toBe(0)
    await page.locator('.next > button').click()
    await page.locator('.round').waitFor()
    expect(await page.locator('.move-made').count()).toBe(await page.locator('.move').count())
    expect(await page.locator('.moves-out').first().textContent()).toContain('Do not turn these again')
    await page.getByRole('button', { name: /^Undo/ }).click()
    await expect.poll(() => page.locator('.move-made').count(), patient).toBe(0)
    await context.close()
  })

  test('WE20 on a phone the moves come first and readings inside are one line; on a desk all stand open', async () => {
    const { page, context } = await pages.open({ viewport: phone })
    const top = async (what: string) => (await page.locator(what).boundingBox())!.y
    expect(await top('.moves')).toBeLessThan(await top('.readings'))
    const seen = () => page.locator('.reading:visible').count()
    const all = await page.locator('.reading').count()
    const outside = await seen()
    const verdicts = await page.locator('.reading:visible .reading-verdict').allTextContents()
    expect(verdicts).not.toContain('inside')
    const line = page.locator('.readings-fold')
    expect(await line.textContent()).toBe(`And ${all - outside} inside`)
    await line.click()
    expect(await seen()).toBe(all)
    await page.setViewportSize(desktop)
    await expect.poll(() => top('.moves'), patient).toBeLessThan(desktop.height)
    await context.close()
    const desk = await pages.open({ viewport: desktop })
    expect(await desk.page.locator('.reading:visible').count()).toBe(all)
    await desk.context.close()
  })

  test('WE21 a caution that was read stays in its words, for this job and this sitting only', async () => {
    const { page, context } = await pages.open({ viewport: phone })
    const caution = page.locator('.cautions').first()
    const words = await caution.locator('li').allTextContents()
    await caution.getByRole('button', { name: 'I have read this' }).click()
    await page.reload()
    await page.locator('.cautions-read').first().waitFor()
    expect(await caution.locator('li').allTextContents()).toEqual(words)
    for (const item of await caution.locator('li').all()) expect(await item.isVisible()).toBe(true)
    await page.goto(`${pages.address}#/port-unit-12`)
    await expect.poll(() => page.locator('h1').textContent(), patient).toContain('12')
    await expect.poll(() => page.locator('.cautions-read').count(), patient).toBe(0)
    await context.close()
  })

  test('WE22 on paper every reading stands, nothing is cut at the side, and the moves have boxes', async () => {
    const { page, context } = await pages.open({ viewport: phone })
    await page.setViewportSize({ width: 703, height: 1000 })
    await page.emulateMedia({ media: 'print' })
    const over = () =>
      page.evaluate(() => [
        ...[...document.querySelectorAll('svg, p, li, dd')]
          .filter((one) => one.getBoundingClientRect().right > window.innerWidth + 1)
          .map((one) => one.outerHTML.slice(0, 80)),
      ])
    await expect.poll(over, patient).toEqual([])
    expect(await page.locator('.reading:visible').count()).toBe(await page.locator('.reading').count())
    expect(await page.locator('.move-boxes span:visible').count()).toBeGreaterThan(1)
    await context.close()
  })
})
