import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, expect, test } from 'vitest'
import { foldJob, inCausalOrder, type SealedEntry } from '../../src/job/index.ts'
import { canonicalText, sealEntries, signerOf } from '../../src/proof/index.ts'
import { jobFolder, openJob, verifyKept } from '../../src/store/index.ts'
import { anySteps, type Step } from '../support/histories.ts'
import { noted, whose } from './sealed-log.ts'

const top = mkdtempSync(join(tmpdir(), 'axlewright-checkpoint-'))
afterAll(() => rmSync(top, { recursive: true, force: true }))
const fresh = () => mkdtempSync(join(top, 'job-'))
const how = { engine: '1', least: 1 }

/** What comes of the steps, really sealed: each device after what it knows. */
async function sealed(steps: readonly Step[]): Promise<readonly SealedEntry[]> {
  const known: SealedEntry[][] = [[], [], []]
  const all = new Map<string, SealedEntry>()
  for (const step of steps) {
    const mine = known[step.device]!
    if ('takesFrom' in step) {
      known[step.device] = inCausalOrder([...mine, ...known[step.takesFrom]!]) as SealedEntry[]
      continue
    }
    const signer = await signerOf(`0${step.device + 1}`.repeat(32))
    const at = { person: 'KB', at: '2026-03-14T09:30:00Z', offset: '+01:00' }
    const log = await sealEntries([...mine, step.writes], { ...whose, signer, ...at })
    known[step.device] = [...log]
    all.set(log.at(-1)!.id, log.at(-1)!)
  }
  return inCausalOrder([...all.values()]) as readonly SealedEntry[]
}

test('ST20 any history, kept in two parts and opened between: the state is that of the log alone', async () => {
  let checkpoints = 0
  await fc.assert(
    fc.asyncProperty(anySteps, fc.nat(14), async (steps, cut) => {
      const log = await sealed(steps)
      if (log.length === 0) return
      const folder = fresh()
      for (const part of [log.slice(0, Math.max(1, cut)), log]) {
        await jobFolder(folder).change(whose, () => part)
        const entries = inCausalOrder(part)
        for (const from of ['first', 'again']) {
          const opened = await openJob(jobFolder(folder), how)
          expect(opened.entries).toEqual(entries)
          expect(opened.state).toEqual(foldJob(entries))
          expect(canonicalText(opened.state)).toBe(canonicalText(foldJob(entries)))
          if (from === 'again') expect(opened.from).toBe('checkpoint')
          checkpoints++
        }
      }
    }),
    { numRuns: 60, seed: 20261125 },
  )
  expect(checkpoints).toBeGreaterThan(100)
})

test('ST20 ST21 a log that was changed behind its checkpoint is looked at anew, and told at its line', async () => {
  const folder = fresh()
  await jobFolder(folder).change(whose, () => noted([], ['a', 'b', 'c']))
  await openJob(jobFolder(folder), how)
  expect(await verifyKept(jobFolder(folder))).toMatchObject({ broken: [], before: 0 })
  expect(await verifyKept(jobFolder(folder))).toMatchObject({ broken: [], before: 3 })
  const path = join(folder, 'log.jsonl')
  const sound = readFileSync(path, 'utf8')
  for (const [wrong, spoilt, broken] of [
    // What follows an entry that cannot be read lacks what it follows.
    [sound.replace('"text":"b"', '"text": "b"'), [2], [1]],
    [sound.replace('"text":"c"', '"text": "c"'), [3], []],
    [sound.replace('"text":"b"', '"text":"x"'), [], [1]],
  ] as const) {
    writeFileSync(path, wrong)
    for (const from of ['fold', spoilt.length > 0 ? 'fold' : 'checkpoint']) {
      const opened = await openJob(jobFolder(folder), how)
      expect([opened.from, opened.spoilt.map(({ line }) => line)]).toEqual([from, spoilt])
      const looked = await verifyKept(jobFolder(folder))
      expect(looked.before).toBe(0)
      expect(looked.spoilt.map(({ line }) => line)).toEqual(spoilt)
      expect(looked.broken.map(({ entry }) => entry)).toEqual(broken)
    }
  }
  writeFileSync(path, sound)
  expect(await verifyKept(jobFolder(folder))).toMatchObject({ broken: [], spoilt: [], before: 3 })
})

test('ST20 a torn last line is told with a checkpoint too, and never gets into one', async () => {
  const folder = fresh()
  await jobFolder(folder).change(whose, () => noted([], ['a', 'b']))
  const whole = await openJob(jobFolder(folder), how)
  const path = join(folder, 'log.jsonl')
  const sound = readFileSync(path)
  const [third] = (await noted(whole.entries, ['c'])).slice(-1)
  const line = Buffer.from(canonicalText(third))
  writeFileSync(path, Buffer.concat([sound, line.subarray(0, 40)]))
  const torn = await openJob(jobFolder(folder), how)
  expect([torn.from, torn.entries]).toEqual(['checkpoint', whole.entries])
  expect(torn.told).toEqual([expect.stringMatching(/torn \(40 bytes\)/)])
  // An entry that lacks only its end counts, and is not yet for a checkpoint.
  writeFileSync(path, Buffer.concat([sound, line]))
  for (const _ of [1, 2]) {
    const open = await openJob(jobFolder(folder), how)
    expect([open.from, open.entries.length]).toEqual(['fold', 3])
  }
  writeFileSync(path, sound)
  expect((await openJob(jobFolder(folder), how)).state).toEqual(whole.state)
})
