import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { exported, goTo, openJob, sealed } from './support/job-steps.ts'
import { patient, sizes, startPages } from './support/pages.ts'

const root = join(import.meta.dirname, '..', '..')
const command = join(root, 'dist', 'axlewright.mjs')
const folder = mkdtempSync(join(tmpdir(), 'axlewright-whole-'))
let pages: Awaited<ReturnType<typeof startPages>>
beforeAll(async () => {
  pages = await startPages()
})
afterAll(async () => {
  await pages?.close()
  rmSync(folder, { recursive: true, force: true })
})

/** What every reading of the first round shows; the limits that are typed are wide, so that all is inside. */
async function readRound(page: Page, proving: boolean) {
  const fields = page.locator('.round .field input:visible')
  await fields.first().waitFor()
  const count = await fields.count()
  for (let i = 0; i < count; i++) {
    const label = (await fields.nth(i).locator('xpath=..').locator('label').textContent()) ?? ''
    await fields.nth(i).fill(figure(label))
  }
  await page.getByLabel(/Rolled about 2 m/).check()
  if (proving) await page.getByLabel(/this round proves/).check()
  await page.getByRole('button', { name: 'Take this round' }).click()
  await page.locator('.round').waitFor({ state: 'detached' })
}

function figure(label: string): string {
  if (/gauge across/.test(label)) return /left lock/.test(label) ? '1.2' : '-0.9'
  if (/gauge shows/.test(label)) return '-0.4'
  if (/hub/.test(label)) return '91'
  if (/edge|between/.test(label)) return /between/.test(label) ? '402' : '112.5'
  return /wheelbase/.test(label) ? '2560' : '372'
}

async function typeValues(page: Page, job: string) {
  await goTo(page, 'values', job, 'angles')
  await page.getByLabel('Where the values stand').fill('workshop sheet 4')
  for (const [row, low, high] of [
    ['Front camber', '-3', '3'],
    ['Front caster', '-9', '9'],
    ['Front toe, total', '-3', '3'],
  ]) {
    await page.getByLabel(`lowest, ${row}`, { exact: true }).fill(low!)
    await page.getByLabel(`highest, ${row}`, { exact: true }).fill(high!)
  }
  await page.getByText(/^Tightening, front/).click()
  await page.getByLabel('procedure, stud of the tie-rod end').first().selectOption('torque')
  await page.getByLabel('lowest, stud of the tie-rod end').first().fill('40')
  await page.getByLabel('highest, stud of the tie-rod end').first().fill('46')
  await page.getByLabel('highest, stud of the tie-rod end').first().blur()
  await page.getByRole('button', { name: 'Keep the values' }).click({ ...patient })
  await page.waitForURL(/angles/)
}

describe('a whole job', () => {
  for (const [name, width, height] of sizes)
    test(`WE60 ${name}: from a complaint to a signed handover, offline, closed and opened again in the middle`, async () => {
      const { page, context, complaints } = await pages.open(
        { viewport: { width, height }, acceptDownloads: true },
        '#/jobs',
        '.job-row',
      )
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => true))
      await context.setOffline(true)
      const job = await openJob(page)

      await goTo(page, job, 'arrival')
      await page.getByLabel('Mileage').fill('81 200 km')
      await page.getByRole('button', { name: 'yard pace only' }).click()
      await page.getByRole('button', { name: 'Note what was told' }).click()
      await sealed(page, job)

      await goTo(page, job, 'plan')
      await page.getByRole('button', { name: /^tie-rod end, both sides/i }).click()
      await page.locator('.plan-line').first().waitFor({ timeout: 60_000 })
      expect(await page.locator('.plan-broken').count()).toBe(0)

      await typeValues(page, job)

      // Closed in the middle, and opened again on the same device.
      await page.close()
      const again = await context.newPage()
      again.on('pageerror', (error) => complaints.push(error.message))
      await again.goto(`${pages.address}#/${job}/strip`)
      await again
        .locator('.bolts a', { hasText: /stud of the tie-rod end/i })
        .first()
        .click()
      await again.getByRole('button', { name: /note how it is/ }).click()
      await again.getByRole('button', { name: '3', exact: true }).click()
      await again.getByRole('button', { name: 'Note it' }).click()
      await again.getByText('Mark across both parts').waitFor()
      await again.getByRole('button', { name: 'Undone' }).first().click()
      await again.getByRole('button', { name: 'Run up' }).waitFor()
      expect(await again.locator('.marks').textContent()).toContain('3:00')

      await goTo(again, job, 'angles')
      await again.getByRole('button', { name: 'Read the angles' }).click()
      await readRound(again, true)
      await sealed(again, job)
      await again.locator('.reading').first().waitFor()

      await goTo(again, job, 'handover')
      const sign = again.getByRole('region', { name: 'Proof and sign-off' })
      const button = sign.getByRole('button', { name: 'Sign as KB' })
      await expect.poll(() => button.getAttribute('aria-disabled'), patient).not.toBe('true')
      await button.click()
      await expect.poll(() => sign.locator('.form-noted').textContent(), patient).toMatch(/^Signed off/)
      const { name: file, bytes } = await exported(again, 'unit 21')
      expect(file).toBe(`${job}.proof.json`)
      const path = join(folder, `${name}-${file}`)
      writeFileSync(path, bytes)
      const verified = spawnSync(process.execPath, [command, 'verify', path, '--json'], { encoding: 'utf8' })
      const { verdict } = JSON.parse(verified.stdout)
      expect(verdict).toMatchObject({ intact: true, backDated: [] })
      expect(verdict.signOffs).toHaveLength(1)
      expect(verdict.signOffs[0]).toMatchObject({ late: [], state: 'comes out again', hand: 'KB' })
      expect(complaints.filter((one) => !/ERR_INTERNET_DISCONNECTED/.test(one))).toEqual([])
      await context.close()
    }, 120_000)
})

test('WE61 two devices work on one job apart; each takes the other’s file in, and both hold the same', async () => {
  const one = await pages.open({ acceptDownloads: true }, '#/jobs', '.job-row')
  const two = await pages.open({ acceptDownloads: true }, '#/jobs', '.job-row')
  const job = await openJob(one.page)
  const first = await exported(one.page, 'unit 21')
  await takeIn(two.page, first)
  const arrival = async (page: Page, mileage: string) => {
    await goTo(page, job, 'arrival')
    await page.getByLabel('Mileage').fill(mileage)
    await page.getByRole('button', { name: 'Note what was told' }).click()
    await sealed(page, job)
  }
  await arrival(one.page, '81 200 km')
  await arrival(two.page, '91 200 km')
  const [mine, theirs] = [await exported(one.page, 'unit 21'), await exported(two.page, 'unit 21')]
  await takeIn(one.page, theirs)
  await takeIn(two.page, mine)
  const [a, b] = [await exported(one.page, 'unit 21'), await exported(two.page, 'unit 21')]
  const entries = ({ bytes }: typeof a) => JSON.parse(bytes.toString('utf8')).entries
  expect(entries(a)).toEqual(entries(b))
  const path = join(folder, `apart-${a.name}`)
  writeFileSync(path, a.bytes)
  // Two mileages, said apart: nobody decides that in silence.
  await goTo(one.page, 'jobs')
  await one.page
    .locator('.job-row', { hasText: 'unit 21' })
    .getByText(/somebody must decide/)
    .waitFor()
  const verified = spawnSync(process.execPath, [command, 'verify', path, '--json'], { encoding: 'utf8' })
  const { verdict } = JSON.parse(verified.stdout)
  expect(verdict.intact).toBe(true)
  expect(verdict.signers).toHaveLength(2)
}, 120_000)

async function takeIn(page: Page, { name, bytes }: { name: string; bytes: Buffer }) {
  await goTo(page, 'jobs')
  await page.getByLabel('File of a job').setInputFiles({ name, mimeType: 'application/json', buffer: bytes })
  await page.getByText(/taken in|Nothing new/).waitFor()
}
