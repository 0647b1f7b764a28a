import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { BadInput } from '../../src/cli/files/outcome.ts'
import { carried } from '../../src/cli/record/carried.ts'
import { inCausalOrder, isSealed, readJob, type SealedEntry, writeJob } from '../../src/job/index.ts'
import { sealEntries, signerOf, verifyEntries } from '../../src/proof/index.ts'
import { Refusal } from '../../src/quantity/index.ts'

const runs = process.env['AXLEWRIGHT_SOAK'] === '1' ? 20_000 : 2000
const top = mkdtempSync(join(tmpdir(), 'axlewright-carried-'))
afterAll(() => rmSync(top, { recursive: true, force: true }))
let text: string
let sealed: readonly SealedEntry[]

beforeAll(async () => {
  const demo = join(import.meta.dirname, '..', '..', 'examples', 'port-unit-07', 'port-unit-07.job.json')
  const read = readJob(JSON.parse(readFileSync(demo, 'utf8')))
  if (!read.ok) throw new Error('The demo job cannot be read.')
  const { workshop, job, entries } = read.value
  sealed = await sealEntries(entries.slice(0, 6), {
    workshop,
    job,
    signer: await signerOf('01'.repeat(32)),
    person: 'KB',
    at: '2026-03-14T18:00:00Z',
    offset: '+01:00',
  })
  text = JSON.stringify(writeJob({ workshop, job, entries: sealed }))
})

test(`CM3 CM16 ${runs} spoilt job files: refused with the field named, or every change is found, never a crash`, async () => {
  const path = join(top, 'a.job.json')
  let refused = 0
  let found = 0
  const edit = fc.record({
    at: fc.nat(100_000),
    out: fc.nat(12),
    put: fc.oneof(
      fc.string({ maxLength: 3, unit: 'grapheme' }),
      fc.constantFrom(
        'null',
        '{}',
        '[]',
        '1e999',
        '-0',
        '"',
        '\\',
        '"id":1,',
        '"after":',
        'true',
        '\ud800',
        '[[[[[[',
      ),
    ),
  })
  await fc.assert(
    fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 2 }), async (edits) => {
      let spoilt = text
      for (const { at, out, put } of edits) {
        const from = at % spoilt.length
        spoilt = spoilt.slice(0, from) + put + spoilt.slice(from + out)
      }
      writeFileSync(path, spoilt)
      let job: Awaited<ReturnType<typeof carried>>
      try {
        job = await carried(path)
      } catch (error) {
        if (error instanceof Refusal) return
        expect(error).toBeInstanceOf(BadInput)
        // The file and the field, or line and column, what is wrong and what would be right.
        for (const line of (error as BadInput).lines)
          expect(line).toMatch(/a\.job\.json[,:] .+\. Right would be /s)
        refused++
        return
      }
      // What can still be read is what was sealed, or is found to be something else.
      const entries = inCausalOrder(job.entries).filter(isSealed)
      const isSame = JSON.stringify(entries) === JSON.stringify(inCausalOrder(sealed))
      if (isSame && entries.length === job.entries.length) return
      const broken = await verifyEntries(entries as readonly SealedEntry[], job.whose)
      if (broken.length > 0 || entries.length < job.entries.length) found++
      else expect(entries.every(({ id }) => sealed.some((one) => one.id === id))).toBe(true)
    }),
    { numRuns: runs, seed: 20261125 },
  )
  expect(refused).toBeGreaterThan(runs / 3)
  expect(found).toBeGreaterThan(runs / 50)
})
