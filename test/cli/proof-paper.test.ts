import { spawnSync } from 'node:child_process'
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { inflateSync } from 'node:zlib'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { browserFlags, findBrowser } from '../../scripts/browser.mjs'
import { buildCommand } from '../../scripts/build-command.mjs'
import { finishedJob } from '../support/finished-job.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const top = mkdtempSync(join(tmpdir(), 'axlewright-paper-'))
const examples = join(root, 'examples', 'port-unit-07')
const demo = join(examples, 'port-unit-07.job.json')
let command: string
let browser: Browser

beforeAll(async () => {
  command = await buildCommand()
  const found = await findBrowser()
  const env = { ...(process.env as Record<string, string>), ...found.env }
  browser = await chromium.launch({ executablePath: found.path, args: [...browserFlags], env })
})
afterAll(async () => {
  await browser.close()
  rmSync(top, { recursive: true, force: true })
})

function run(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...words], {
    cwd: top,
    encoding: 'utf8',
    env: { ...process.env, AXLEWRIGHT_HOME: join(top, 'home') },
  })
  return { code: status, out: stdout, err: stderr }
}
const place = (name: string): string => join(top, name)
const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0

/**
 * The text of a PDF, by its own maps from glyphs to letters: ISO 32000-1, 9.10.3 (ToUnicode), 9.4.3 (TJ). Each font's map
 * is taken in the order in which the fonts stand in the file.
 */
function textOf(pdf: Buffer): string {
  const raw = pdf.toString('latin1')
  const objects = new Map(
    [...raw.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, id, body]) => [id!, body!]),
  )
  const stream = (id: string): string => {
    const body = objects.get(id)!
    const bytes = /stream\n([\s\S]*?)\nendstream/.exec(body)?.[1]
    if (bytes === undefined) return ''
    const data = Buffer.from(bytes, 'latin1')
    return (body.includes('FlateDecode') ? inflateSync(data) : data).toString('latin1')
  }
  const hex = (digits: string) =>
    String.fromCharCode(...(digits.match(/.{4}/g) ?? []).map((four) => Number.parseInt(four, 16)))
  const mapOf = (font: string): readonly string[] => {
    const cmap = /\/ToUnicode (\d+) 0 R/.exec(objects.get(font)!)?.[1]
    if (cmap === undefined) return []
    const letters: string[] = []
    for (const [, from, list] of stream(cmap).matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/gi))
      for (const [i, [, digits]] of [...list!.matchAll(/<([0-9a-f ]*)>/gi)].entries())
        letters[Number.parseInt(from!, 16) + i] = hex(digits!.replaceAll(' ', ''))
    return letters
  }
  const fonts = new Map(
    [...raw.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name, id]) => [name!, mapOf(id!)] as const),
  )
  const contents = [...raw.matchAll(/\/Contents (\d+) 0 R/g)].map(([, id]) => stream(id!))
  return contents
    .map((content) => {
      let letters: readonly string[] = []
      return [...content.matchAll(/\/(F\d+) [\d.]+ Tf|\[([^\]]*)\] TJ/g)]
        .map(([, font, shown]) => {
          if (font) letters = fonts.get(font)!
          return [...(shown ?? '').matchAll(/<([0-9a-f]+)>/g)]
            .flatMap(([, codes]) => codes!.match(/.{4}/g)!)
            .map((code) => letters[Number.parseInt(code, 16)] ?? '\ufffd')
            .join('')
        })
        .join('')
    })
    .join('\n')
}
const squeezed = (text: string): string => text.replace(/\s+/g, '').toLowerCase()

describe('CM21 `paper` writes the proof sheet as a page and as a PDF', () => {
  test.each(['A4', 'Letter'] as const)(
    'CM21 an unfinished, unsealed job says so, on two sides of %s',
    async (size) => {
      const [html, pdf] = [place(`${size}.html`), place(`${size}.pdf`)]
      const size_ = size === 'Letter' ? ['--letter'] : []
      const { code, out, err } = run('paper', demo, '--html', html, '--pdf', pdf, ...size_)
      expect([code, err]).toEqual([1, ''])
      expect(out).toMatch(/Not finished: 8 joints are open[\s\S]*□ Coil seats[\s\S]*Not sealed/)
      const file = readFileSync(pdf)
      expect(pagesOf(file)).toBe(2)
      const text = squeezed(textOf(file))
      const page = await browser.newPage()
      const asked: string[] = []
      page.on('request', (request) => asked.push(request.url()))
      await page.goto(`file://${html}`)
      expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(2)
      expect(asked.filter((url) => !url.startsWith('file:'))).toEqual([])
      const inks = await page.evaluate(() => [
        ...new Set(
          [...document.querySelectorAll('body *')].map((element) => getComputedStyle(element).color),
        ),
      ])
      expect(inks).toHaveLength(1)
      // What the page tells the file tells as well, drawings aside, and nothing in it is an empty box.
      const told = await page.locator('h1, h2, td b, td small, .said').allInnerTexts()
      // Lines of two columns alternate in the file: their words, each.
      const words = (await page.locator('td, li').allInnerTexts()).flatMap((one) => one.split(/\s+/))
      expect(told.length).toBeGreaterThan(80)
      for (const one of [...told, ...words]) expect(text).toContain(squeezed(one))
      expect(text).not.toContain('\ufffd')
      expect(text).toContain(squeezed('−0.96° ± 0.10°'))
      expect(await page.locator('td svg[role=img]').count()).toBe(19)
      await page.close()
    },
  )

  test('CM21 sealed, signed off, proven: what is finished and proven ends with 0; a signed demo that is not, with 1', () => {
    for (const file of ['front.corner.json', 'rear.corner.json', 'port-unit-07.spec.json'])
      copyFileSync(join(examples, file), place(file))
    copyFileSync(join(examples, '..', 'port-kit.kit.json'), place('port-kit.kit.json'))
    const whole = JSON.parse(readFileSync(demo, 'utf8'))
    const well = (...words: string[]) => {
      const { code, out, err } = run(...words)
      expect([code, err]).toEqual([0, ''])
      return out
    }
    well('workshop', 'make', whole.workshop, '--device', 'office')
    copyFileSync(demo, place('demo.job.json'))
    well('seal', 'demo.job.json', '--person', 'KB')
    well('sign-off', '7-0412', '--person', 'KB')
    well('prove', '7-0412')
    const { code, out } = run('paper', '7-0412.proof.json', '--pdf', 'demo.pdf')
    expect(code).toBe(1)
    expect(out).toMatch(/Not finished[\s\S]*\nProven\.\n$/)
    const text = squeezed(textOf(readFileSync(place('demo.pdf'))))
    expect(text).toContain(squeezed('Known hand “office”'))
    expect(text).toContain(squeezed('Intact: nobody changed any of its 72 sealed entries.'))
    // The same proof, the same bytes; the folder says the same.
    run('paper', '7-0412.proof.json', '--pdf', 'again.pdf')
    expect(readFileSync(place('again.pdf')).equals(readFileSync(place('demo.pdf')))).toBe(true)
    expect(run('paper', '7-0412', '--html', 'folder.html').out).toContain('\nProven.\n')

    const { corners: _c, ...spec } = JSON.parse(readFileSync(place('port-unit-07.spec.json'), 'utf8'))
    for (const key of Object.keys(spec.limits)) spec.limits[key] = { low: '-9°', high: '9°' }
    writeFileSync(place('wide.spec.json'), JSON.stringify(spec))
    const entries = finishedJob().job.entries
    writeFileSync(place('done.job.json'), JSON.stringify({ ...whole, job: '7-0413', entries }))
    well('seal', 'done.job.json', '--person', 'KB', '--with', 'wide.spec.json')
    well('sign-off', '7-0413', '--person', 'KB', '--with', 'wide.spec.json')
    expect(well('paper', '7-0413', '--html', 'done.html', '--pdf', 'done.pdf')).toMatch(
      /Finished: [\s\S]*\nProven\.\n$/,
    )
    expect(readFileSync(place('done.html'), 'utf8')).toContain('square code')
  })

  test('CM21 nowhere to write, a file that is there, a job that is not: told, and nothing is written', () => {
    const { code, err } = run('paper', demo)
    expect([code, err]).toEqual([2, 'Say where the paper goes: --html FILE, --pdf FILE, or both.\n'])
    writeFileSync(place('mine.html'), 'mine')
    expect(run('paper', demo, '--html', 'mine.html')).toMatchObject({
      code: 2,
      err: expect.stringContaining('is there already'),
    })
    expect(readFileSync(place('mine.html'), 'utf8')).toBe('mine')
    expect(run('paper', demo, '--html', 'mine.html', '--overwrite').code).toBe(1)
    expect(run('paper', 'nothing.job.json', '--pdf', 'x.pdf').code).toBe(2)
    expect(existsSync(place('x.pdf'))).toBe(false)
  })

  test('PR17 Greek, Cyrillic and Polish stand as they are; what the font lacks is spelled, never an empty box', () => {
    const whole = JSON.parse(readFileSync(demo, 'utf8'))
    whole.entries[0].data.vehicle = 'Λιμάνι № 7 → Порт, Łódź ≤ 3 t 港'
    writeFileSync(place('letters.job.json'), JSON.stringify(whole))
    run('paper', 'letters.job.json', '--pdf', 'letters.pdf', '--with', join(examples, 'front.corner.json'))
    expect(squeezed(textOf(readFileSync(place('letters.pdf'))))).toContain(
      squeezed('Λιμάνι № 7 to Порт, Łódź ≤ 3 t (U+6E2F)'),
    )
  })
})
