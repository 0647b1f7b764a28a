import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { carriedJob, type readCarriedJob } from '../../src/proof/carry/carried-job.ts'
import { hashOf } from '../../src/proof/index.ts'
import { picture, pictures } from '../support/photos.ts'
import { bundledPage } from './support/bundled-page.ts'

declare const axlewright: { carriedJob: typeof carriedJob; readCarriedJob: typeof readCarriedJob }

let browser: Browser
let page: Page

beforeAll(async () => {
  ;({ browser, page } = await bundledPage('proof/carry/carried-job.ts', { platform: 'browser' }))
})
afterAll(() => browser.close())

const proof = new TextEncoder().encode('{"a line of a proof":"°′ and so on"}\n'.repeat(500))
const photos = new Map(pictures.map((name) => [hashOf(picture(name)), picture(name)]))

test('CA2 the browser writes the same bytes as the command', async () => {
  const bytes = await page.evaluate(
    ({ proof, photos }) =>
      Array.from(
        axlewright.carriedJob({
          proof: Uint8Array.from(proof),
          photos: new Map(photos.map(([hash, bytes]) => [hash, Uint8Array.from(bytes)])),
        }),
      ),
    { proof: [...proof], photos: [...photos].map(([hash, bytes]) => [hash, [...bytes]] as const) },
  )
  expect(Uint8Array.from(bytes)).toEqual(carriedJob({ proof, photos }))
})

test('CA1 CA3 what the command writes the browser reads, or refuses with its place', async () => {
  const whole = carriedJob({ proof, photos })
  const flipped = whole.slice()
  flipped[whole.length >> 1]! ^= 16
  const [read, told] = await page.evaluate(
    ([whole, flipped]) => {
      const { proof, photos } = axlewright.readCarriedJob(Uint8Array.from(whole!))
      let told = ''
      try {
        axlewright.readCarriedJob(Uint8Array.from(flipped!))
      } catch (error) {
        told = (error as { sentence: string }).sentence
      }
      return [{ proof: proof.length, photos: [...photos.keys()] }, told] as const
    },
    [[...whole], [...flipped]],
  )
  expect(read).toEqual({ proof: proof.length, photos: [...photos.keys()].sort() })
  expect(told).toMatch(/“photos\/[0-9a-f]{64}/)
})
