import { readFileSync } from 'node:fs'
import type { Download, Page } from 'playwright-core'

/** The number of the job that the page shows. */
const jobOf = (page: Page): string => /#\/([^/]+)/.exec(page.url())![1]!

/** Goes to a place of the page without loading it again. */
export const goTo = (page: Page, ...parts: readonly string[]) =>
  page.evaluate(
    (hash) => {
      location.hash = hash
    },
    `#/${parts.join('/')}`,
  )

/** Opens a job on an empty device, from a complaint and a layout. */
export async function openJob(page: Page, { rear = false } = {}): Promise<string> {
  await goTo(page, 'new')
  await page.getByRole('button', { name: 'pulls to one side' }).click()
  await page.getByLabel('Vehicle').fill('unit 21, small van')
  await page.getByRole('button', { name: /^Strut/ }).click()
  if (rear) await page.getByRole('button', { name: /^Twist beam/ }).click()
  const workshop = page.getByLabel('What is the workshop called?')
  await workshop.fill('Harbour yard')
  await page.getByLabel('Your initials').fill('KB')
  await page.getByRole('button', { name: 'Open the job' }).click()
  await page.getByRole('button', { name: 'It is on paper' }).click()
  await page.waitForURL(/findings/)
  return jobOf(page)
}

/** Waits until nothing that was noted is unsealed. */
export const sealed = (page: Page, job: string) =>
  page.waitForFunction((id) => localStorage.getItem(`axlewright/1/edits/${id}/kept`) === null, job)

/** What a download holds. */
async function bytesOf(download: Download): Promise<Buffer> {
  return readFileSync(await download.path())
}

/** Exports a job from the list of jobs. */
export async function exported(page: Page, vehicle: string): Promise<{ name: string; bytes: Buffer }> {
  await goTo(page, 'jobs')
  const row = page.locator('.job-row', { hasText: vehicle })
  const more = row.getByRole('button', { name: 'More' })
  await row.waitFor()
  if (await more.isVisible()) await more.click()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    row.getByRole('button', { name: 'Export as a file' }).click(),
  ])
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) }
}
