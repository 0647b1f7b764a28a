import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import decode from 'jsqr'
import { beforeAll, describe, expect, test, vi } from 'vitest'
import { inCausalOrder, type SealedEntry } from '../../../src/job/index.ts'
import {
  type Paper,
  type PaperSeal,
  type Proof,
  paperHtml,
  paperPdf,
  paperSeal,
  proofOf,
  type Signer,
  sealEntries,
  signerOf,
  signOffEntry,
  verdictOf,
} from '../../../src/proof/index.ts'
import { proofSheetFrom } from '../../../src/sheet/index.ts'
import { demoFile } from '../../support/demo-file.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { entryOf, finishedJob } from '../../support/finished-job.ts'

const { resolve } = createRequire(import.meta.url)
const font = (weight: string) => readFileSync(resolve(`pdfmake/fonts/Roboto/Roboto-${weight}.ttf`))
const fonts = { normal: font('Regular'), bold: font('Medium') }
const created = '2026-03-11T10:00:00+01:00'
const job = finishedJob()
const whose = { workshop: job.job.workshop, job: job.job.job }
const front = demoFile('port-unit-07/front.corner.json')

let root: Signer
let bay: Signer
let proof: Proof
const how = (signer: Signer) => ({
  ...whose,
  signer,
  person: 'KB',
  at: '2026-03-14T18:00:00Z',
  offset: '+01:00',
})
const sealOf = async (of: Proof, trusted?: string, bare = 0): Promise<PaperSeal> =>
  paperSeal({
    verdict: await verdictOf(of, trusted === undefined ? {} : { trusted }),
    entries: of.entries,
    root: of.head.root,
    bare,
  })

beforeAll(async () => {
  ;[root, bay] = (await Promise.all(['01', '02'].map((byte) => signerOf(byte.repeat(32))))) as [
    Signer,
    Signer,
  ]
  const workshopLog = await sealEntries(
    [
      { kind: 'workshop made', data: { name: 'Harbour yard' } },
      { kind: 'device certified', data: { device: bay.key, name: 'bay 2 tablet', owner: true } },
    ],
    { ...how(root), job: 'workshop' },
  )
  const once = await sealEntries(job.job.entries, how(bay))
  const signOff = signOffEntry(once, { files: { front }, engine: '0.1.0', hand: 'KB' })
  const entries = await sealEntries([...once, signOff], how(bay))
  proof = proofOf({
    ...whose,
    entries,
    files: [{ what: 'corner', file: front }],
    root: root.key,
    workshopLog,
  })
})

describe('PR14 "proven" is said only of what is', () => {
  test('PR14 intact, known, covered: proven; the sign-off’s fingerprint is that of its id', async () => {
    const seal = await sealOf(proof, root.key)
    const signOff = inCausalOrder(proof.entries).at(-1) as SealedEntry
    expect([seal.head, seal.isGood]).toEqual(['Proven', true])
    expect(seal.fingerprint!.replaceAll(' ', '')).toBe(signOff.id.slice(0, 20))
    expect(seal.lines.join('\n')).toMatch(
      /Intact.*\nKnown hand “bay 2 tablet”.*\n.*root: .*trusted here.\nSigned off by KB/,
    )
  })
  test('PR14 unknown hand, bare entries, a late entry, a missing file, a changed entry, no sign-off, no seal', async () => {
    const late = await sealEntries([...proof.entries, entryOf('note', { text: 'later' })], how(bay))
    const changed = proof.entries.map((one, at) => (at === 3 ? { ...one, person: 'XX' } : one))
    const entries = proof.entries.slice(0, -1)
    const cases: readonly (readonly [string, Promise<PaperSeal>])[] = [
      ['not every hand is known', sealOf(proof)],
      ['2 entries are not sealed', sealOf(proof, root.key, 2)],
      ['1 entry is not covered', sealOf({ ...proof, entries: late as readonly SealedEntry[] }, root.key)],
      ['files that were signed are not with it', sealOf({ ...proof, snapshots: [] }, root.key)],
      ['it is not intact', sealOf({ ...proof, entries: changed }, root.key)],
      ['it is not signed off', sealOf({ ...proof, entries }, root.key)],
      ['Not sealed', sealOf({ ...proof, entries: [] }, root.key, 70)],
    ]
    for (const [says, made] of cases) {
      const { head, isGood } = await made
      expect(head).toContain(says)
      expect(isGood).toBe(false)
      expect(head).toMatch(/^Not (proven: |sealed)/)
    }
  })
})

const paperOf = async (more: Parameters<typeof finishedJob>[0] = []): Promise<Paper> => ({
  sheet: proofSheetFrom(more.length > 0 ? finishedJob(more) : demoSources('07')),
  seal: await sealOf(proof, root.key),
  version: '0.1.0',
})

test('PR15 the same paper gives the same bytes, in A4 and in Letter, and asks for nothing', async () => {
  const asked = vi.spyOn(globalThis, 'fetch')
  const paper = await paperOf()
  for (const size of ['A4', 'Letter'] as const) {
    const html = paperHtml(paper, size)
    expect(paperHtml(paper, size)).toBe(html)
    expect(html).not.toMatch(/https?:\/\/(?!www\.w3\.org\/2000\/svg)|src=|@import|url\(/)
    const first = await paperPdf(paper, { size, fonts, created })
    expect(Buffer.from(await paperPdf(paper, { size, fonts, created })).equals(Buffer.from(first))).toBe(true)
    // PDF 1.3 begins so, ISO 32000-1, 7.5.2; A4 is 210 mm wide, 595.28 pt; Letter 8.5 in, 612 pt.
    const text = Buffer.from(first).toString('latin1')
    expect(text).toMatch(/^%PDF-1\.\d/)
    expect(text).toContain(size === 'A4' ? '[0 0 595.28 841.89]' : '[0 0 612 792]')
    expect(text.match(/\/Type \/Page\b(?!s)/g)).toHaveLength(2)
    expect(text).not.toMatch(/\/URI/)
  }
  expect(asked).not.toHaveBeenCalled()
})

test('PR16 the square code reads back, by another program, as the sign-off and the root', async () => {
  const paper = await paperOf()
  const svg = /<svg[^>]*aria-label="square code.*?<\/svg>/.exec(paperHtml(paper, 'A4'))![0]
  const size = Number(/viewBox="0 0 (\d+)/.exec(svg)![1])
  const scale = 4
  const pixels = new Uint8ClampedArray((size * scale) ** 2 * 4).fill(255)
  for (const [, x, y, run] of svg.matchAll(/M(\d+) (\d+)h(\d+)v1/g))
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row++)
      for (let column = Number(x) * scale; column < (Number(x) + Number(run)) * scale; column++)
        pixels.fill(0, (row * size * scale + column) * 4, (row * size * scale + column) * 4 + 3)
  // ISO/IEC 18004, 5.3.8: four clear squares on every side; a corner mark reaches to each of them but one.
  const rows = [...svg.matchAll(/M(\d+) (\d+)h/g)]
  for (const at of [1, 2] as const) expect(Math.min(...rows.map((row) => Number(row[at])))).toBe(4)
  expect(Math.max(...rows.map(([, , y]) => Number(y)))).toBe(size - 5)
  const read = decode(pixels, size * scale, size * scale)
  const signOff = inCausalOrder(proof.entries).at(-1) as SealedEntry
  expect(read?.data).toBe(`axlewright/sign-off/1\njob 7-0412\nid ${signOff.id}\nroot ${root.key}`)
  expect(read?.data).toBe(paper.seal.code)
})

test('PR15 what is typed is text on the page, never markup', async () => {
  const html = paperHtml(
    await paperOf([
      entryOf('deviation', { what: 'other', remark: '<img src=x onerror=1> & "so"', hand: 'T' }),
    ]),
    'A4',
  )
  expect(html).toContain('&lt;img src=x onerror=1&gt; &amp; &quot;so&quot;')
  expect(html).not.toContain('<img')
})
