import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import type { Entry } from '../../src/job/index.ts'
import { sealEntries, signerOf, verifyEntries } from '../../src/proof/index.ts'
import {
  beginWorkshop,
  fileStore,
  ownWorkshop,
  rootFromPaper,
  rootPaper,
  takeIn,
} from '../../src/store/index.ts'
import { refusal } from './log-store-contract.ts'
import { noted, whose } from './sealed-log.ts'

const top = mkdtempSync(join(tmpdir(), 'axlewright-take-in-'))
afterAll(() => rmSync(top, { recursive: true, force: true }))
const store = () => fileStore(mkdtempSync(join(top, 'place-')))
const signer = await signerOf('01'.repeat(32))
const how = { signer, person: 'KB' }
const note = (text: string): Entry => ({ kind: 'note', data: { text } })
const file = (entries: readonly Entry[]) => ({ path: 'unit-07.job.json', whose, entries })

test('ST12 a job file that is written on is taken in again: only what is new is sealed', async () => {
  const kept = store().job(whose.job)
  const first = await takeIn(kept, file([note('a'), note('b')]), how)
  expect(first.appended).toHaveLength(2)
  const again = await takeIn(kept, file([note('a'), note('b'), note('c')]), how)
  expect(again.appended.map(({ data }) => data)).toEqual([{ text: 'c' }])
  const { entries } = await kept.read()
  expect(await verifyEntries(entries, whose)).toEqual([])
  expect(entries.map(({ seq, person }) => [seq, person])).toEqual([1, 2, 3].map((seq) => [seq, 'KB']))
  const added = await takeIn(kept, file([note('a')]), { ...how, add: true })
  expect(added.appended.map(({ seq, data }) => [seq, data])).toEqual([[4, { text: 'a' }]])
})

test('ST12 what was sealed is not changed, nor left out, nor taken from a log that is not intact', async () => {
  const kept = store().job(whose.job)
  await takeIn(kept, file([note('a'), note('b')]), how)
  expect(await refusal(() => takeIn(kept, file([note('a'), note('B')]), how))).toBe('sealed-otherwise')
  expect(await refusal(() => takeIn(kept, file([note('a')]), how))).toBe('lacks-sealed')
  const [one] = await noted([], ['x'], { device: 2 })
  const forged = { ...one!, signature: '0'.repeat(128) }
  expect(await refusal(() => takeIn(kept, file([forged]), how))).toBe('not-intact')
  const shop = { ...file([note('a')]), whose: { ...whose, job: 'workshop' } }
  expect(await refusal(() => takeIn(store().job('workshop'), shop, how))).toBe('other-job')
  expect((await kept.read()).entries).toHaveLength(2)
})

test('ST13 a workshop is made once; its paper gives its root; a log of it that was changed tells nobody', async () => {
  const place = store()
  expect(await ownWorkshop(place)).toBe(null)
  const { paper, fingerprint } = await beginWorkshop(place, {
    name: 'Harbour yard',
    called: 'bay 2',
    device: signer,
  })
  const own = await ownWorkshop(place)
  expect(own).toMatchObject({ name: 'Harbour yard', fingerprint })
  expect(own!.state.devices).toMatchObject([{ device: signer.key, name: 'bay 2', owner: true }])
  expect(own!.root).toBe((await signerOf(rootFromPaper(paper.join('\n')))).key)
  const again = () => beginWorkshop(place, { name: 'Quay garage', called: 'bay 3', device: signer })
  expect(await refusal(again)).toBe('has-workshop')
  const forged = await sealEntries([note('x')], {
    workshop: 'Harbour yard',
    job: 'workshop',
    signer,
    person: 'KB',
    at: '2026-03-14T18:00:00Z',
    offset: '+01:00',
  })
  const other = { ...forged[0]!, signature: '0'.repeat(128) }
  await place.job('workshop').change({ workshop: 'Harbour yard', job: 'workshop' }, () => [other])
  expect(await refusal(() => ownWorkshop(place))).toBe('spoilt')
})

test('ST13 a slip of the pen on the root’s paper is told, and its secret stands in no message', async () => {
  const secret = '3f'.repeat(32)
  const typed = rootPaper(secret).join('\n')
  expect(rootFromPaper(typed.toUpperCase())).toBe(secret)
  for (const wrong of ['', typed.slice(5), typed.replace('3f3f', '3f3e'), typed.replace('3', 'o')]) {
    const call = async () => rootFromPaper(wrong)
    expect(await refusal(call)).toBe('bad-paper')
    await expect(call()).rejects.not.toMatchObject({ sentence: expect.stringMatching(/3f3f/) })
  }
})
