import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { crc32 } from '../../src/proof/photo/crc-32.ts'
import { withoutMetadata } from '../../src/proof/photo/without-metadata.ts'
import type { scaledPhoto } from '../../src/web/state/scaled-photo.ts'
import { jpegAsTaken, picture, pngAsTaken, telltales, webpAsTaken } from '../support/photos.ts'
import { bundledPage } from './support/bundled-page.ts'

declare const axlewright: { scaledPhoto: typeof scaledPhoto }

let browser: Browser
let page: Page
let script: string

beforeAll(async () => {
  ;({ browser, page, script } = await bundledPage('web/state/scaled-photo.ts'))
})
afterAll(() => browser.close())

const wire = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64')

/** The pixels that the browser shows, and how large the picture is then. */
const shown = (bytes: Uint8Array, type: string) =>
  page.evaluate(
    async ([coded, type]) => {
      const bytes = Uint8Array.from(atob(coded!), (c) => c.charCodeAt(0))
      const bitmap = await createImageBitmap(new Blob([bytes], { type: type! }), {
        imageOrientation: 'from-image',
      })
      const { width, height } = bitmap
      const pen = new OffscreenCanvas(width, height).getContext('2d')!
      pen.drawImage(bitmap, 0, 0)
      return { width, height, pixels: Array.from(pen.getImageData(0, 0, width, height).data) }
    },
    [wire(bytes), type],
  )

describe('PH8 the browser shows the same pixels, the same way up, before and after', () => {
  const all = [1, 3, 6, 8].flatMap((orientation) => [
    ...(['baseline', 'progressive', 'cmyk', 'gray'] as const).map(
      (name) => [name, orientation, jpegAsTaken(name, orientation)] as const,
    ),
    ...(['alpha', 'palette', 'deep'] as const).map(
      (name) => [name, orientation, pngAsTaken(name, crc32, orientation)] as const,
    ),
    ...(['lossy', 'exact', 'seeThrough'] as const).map(
      (name) => [name, orientation, webpAsTaken(name, orientation)] as const,
    ),
  ])
  for (const [name, orientation, taken] of all)
    test(`${name}, orientation ${orientation}`, async () => {
      const { bytes, type } = withoutMetadata(taken)
      const [before, after] = [await shown(taken, type), await shown(bytes, type)]
      expect(after).toEqual(before)
      expect(new Set(after.pixels).size).toBeGreaterThan(4)
    })
})

/** Where the middle of the yellow block, stored at (7, 7) of 48 × 32, is shown. CIPA DC-008-2019, 4.6.4 A, Orientation */
const yellow = [
  [1, 7, 7],
  [2, 40, 7],
  [3, 40, 24],
  [4, 7, 24],
  [5, 7, 7],
  [6, 24, 7],
  [7, 24, 40],
  [8, 7, 40],
] as const

const scaled = (bytes: Uint8Array) =>
  page.evaluate(async (coded) => {
    const bytes = Uint8Array.from(atob(coded), (c) => c.charCodeAt(0))
    const out = await axlewright.scaledPhoto(new Blob([bytes]))
    return { ...out, bytes: Array.from(out.bytes) }
  }, wire(bytes))

describe('PH9 a scaled photo stands upright, and holds no place any more', () => {
  for (const [orientation, x, y] of yellow)
    test(`orientation ${orientation}`, async () => {
      const { bytes, width, height } = await scaled(jpegAsTaken('baseline', orientation))
      expect([width, height]).toEqual(orientation < 5 ? [48, 32] : [32, 48])
      const latin = Buffer.from(bytes).toString('latin1')
      for (const told of [...telltales, 'Exif']) expect(latin).not.toContain(told)
      const { pixels } = await shown(Uint8Array.from(bytes), 'image/jpeg')
      const [r, g, b] = pixels.slice(4 * (y * width + x))
      expect([r! > 180, g! > 180, b! < 110]).toEqual([true, true, true])
    })

  test('the longest edge is 2,000 pixels; a smaller one stays as large as it is', async () => {
    const sizes = await page.evaluate(async () => {
      const sizes: number[][] = []
      for (const [w, h] of [
        [3000, 1000],
        [900, 2700],
        [2000, 30],
        [5000, 1],
      ] as const) {
        const sheet = new OffscreenCanvas(w, h)
        sheet.getContext('2d')!.fillRect(0, 0, 10, 10)
        const { width, height } = await axlewright.scaledPhoto(await sheet.convertToBlob())
        sizes.push([width, height])
      }
      return sizes
    })
    expect(sizes).toEqual([
      [2000, 667],
      [667, 2000],
      [2000, 30],
      [2000, 1],
    ])
  })

  test('what lets light through is white', async () => {
    const { bytes } = await scaled(picture('alpha'))
    const { pixels } = await shown(Uint8Array.from(bytes), 'image/jpeg')
    const plain = await shown(picture('alpha'), 'image/png')
    // Half of the light of the block's own colour, half of white.
    const at = 4 * (7 * 48 + 7)
    expect(plain.pixels[at + 3]).toBeLessThan(140)
    expect(pixels[at + 2]).toBeGreaterThan(90)
  })

  test('in a worker as well', async () => {
    const size = await page.evaluate(
      async ([script, coded]) => {
        const text = `${script!}
          onmessage = async ({ data }) => {
            const { bytes, width, height } = await axlewright.scaledPhoto(data)
            postMessage([width, height, bytes[0], bytes[1]])
          }`
        const worker = new Worker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })))
        const answer = new Promise<number[]>((resolve, reject) => {
          worker.onmessage = ({ data }) => resolve(data)
          worker.onerror = ({ message }) => reject(new Error(message))
        })
        worker.postMessage(new Blob([Uint8Array.from(atob(coded!), (c) => c.charCodeAt(0))]))
        return answer
      },
      [script, wire(jpegAsTaken('baseline', 6))],
    )
    expect(size).toEqual([32, 48, 0xff, 0xd8])
  })

  test('what is no picture is told', async () => {
    const told = await page.evaluate(async () =>
      axlewright.scaledPhoto(new Blob(['ftypheic'])).catch(({ code, sentence }) => [code, sentence]),
    )
    expect(told).toEqual(['no-photo', 'This file is no photo that can be shown here.'])
  })
})
