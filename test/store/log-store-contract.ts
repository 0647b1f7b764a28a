import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { foldJob, inCausalOrder, type SealedEntry } from '../../src/job/index.ts'
import { canonicalText, digestOf, hashOf } from '../../src/proof/index.ts'
import { Refusal } from '../../src/quantity/index.ts'
import type { LogStore } from '../../src/store/log-store.ts'
import { openJob } from '../../src/store/open-job.ts'
import { verifyKept } from '../../src/store/verify-kept.ts'
import { noted, whose } from './sealed-log.ts'

/** A place of its own; each call of `open` is somebody else who opens it. */
export interface Place {
  readonly open: () => LogStore
}

/** The code of what a call was refused with; null when it was not. */
export async function refusal(call: () => Promise<unknown>): Promise<string | null> {
  try {
    await call()
    return null
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    expect(error.sentence).toMatch(/\.$/)
    expect(error.remedy).toMatch(/\.$/)
    return error.code
  }
}

const ids = (entries: readonly SealedEntry[]) => entries.map(({ id }) => id)

/** A law that every store keeps. */
interface ContractCase {
  readonly name: string
  readonly holds: (place: () => Place) => Promise<void>
}

/** What every store must hold; it runs in Node, and in a browser. */
export const contractCases: readonly ContractCase[] = [
  {
    name: 'ST1 what was acknowledged is read again, to the letter',
    holds: async (place) => {
      const { open } = place()
      expect(await open().jobs()).toEqual([])
      expect(await refusal(() => open().job(whose.job).read())).toBe('no-job')
      const log = await noted([], ['a', 'b', 'é, „zwei“, 🔧, \u2028'])
      const done = await open()
        .job(whose.job)
        .change(whose, () => log)
      expect(ids(done.appended)).toEqual(ids(log))
      const read = await open().job(whose.job).read()
      expect(read).toMatchObject({ whose, spoilt: [], told: [] })
      expect(read.entries.map(canonicalText)).toEqual(log.map(canonicalText))
      expect(await open().jobs()).toEqual([whose.job])
    },
  },

  {
    name: 'ST1 jobs of any name stand beside each other',
    holds: async (place) => {
      const { open } = place()
      const names = ['7-0412', 'a/b', '..', 'CON.', 'Ä ü', '%2F', '*']
      for (const job of names) {
        const log = await noted([], [job], { job })
        await open()
          .job(job)
          .change({ ...whose, job }, () => log)
      }
      expect(await open().jobs()).toEqual([...names].sort())
      for (const job of names) expect((await open().job(job).read()).entries).toHaveLength(1)
    },
  },

  {
    name: 'ST2 any pieces, in any order that the log allows, any number of times, give one log',
    holds: async (place) => {
      const trunk = await noted([], ['a', 'b'])
      const left = await noted(trunk, ['c', 'd', 'e'])
      const right = await noted(trunk, ['f', 'g'], { device: 2 })
      const all = inCausalOrder([...left, ...right]) as readonly SealedEntry[]
      const pieces = [trunk, left.slice(0, 3), left, right.slice(0, 3), right]
      await fc.assert(
        fc.asyncProperty(
          fc.array(fc.constantFrom(...pieces), { maxLength: 6 }),
          fc.boolean(),
          async (given, isSame) => {
            const { open } = place()
            const one = open()
            for (const piece of [...given, left, right]) {
              const store = isSame ? one : open()
              const done = await store.job(whose.job).change(whose, () => piece)
              expect(done.appended.length + done.known).toBe(piece.length)
            }
            const { entries } = await open().job(whose.job).read()
            expect(entries).toHaveLength(all.length)
            expect(inCausalOrder(entries)).toEqual(all)
          },
        ),
        { numRuns: 40, seed: 20261125 },
      )
    },
  },

  {
    name: 'ST3 changes at once are made one after the other',
    holds: async (place) => {
      const { open } = place()
      const [one, two] = [open(), open()]
      await Promise.all(
        Array.from({ length: 20 }, (_, i) =>
          (i % 3 ? one : two).job(whose.job).change(whose, (known) => noted(known, [`note ${i}`])),
        ),
      )
      const { entries } = await open().job(whose.job).read()
      // Each was sealed after the one before it: one chain, counted without a gap.
      expect(entries.map(({ seq }) => seq)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1))
      expect(entries.slice(1).map(({ after }) => after)).toEqual(entries.slice(0, -1).map(({ id }) => [id]))
    },
  },

  {
    name: 'ST4 what cannot be kept is refused with all that came with it',
    holds: async (place) => {
      const { open } = place()
      const log = await noted([], ['a', 'b', 'c'])
      const append = (entries: readonly unknown[]) =>
        open()
          .job(whose.job)
          .change(whose, () => entries as readonly SealedEntry[])
      await append(log.slice(0, 1))
      const [, second, third] = log
      expect(await refusal(() => append([second, { ...third, person: 'XX' }]))).toBe('not-sealed')
      expect(await refusal(() => append([second, { kind: 'note', data: {} }]))).toBe('not-sealed')
      expect(await refusal(() => append([second, { ...third, more: undefined, at: 1 }]))).toBe('not-sealed')
      expect(await refusal(() => append([third]))).toBe('lacks-before')
      expect(await refusal(() => append([third, second]))).toBe('lacks-before')
      const other = await noted([], ['x'], { job: '7-0999' })
      expect(await refusal(() => append([second, ...other]))).toBe('other-job')
      const elsewhere = { ...whose, workshop: 'Quay garage' }
      expect(
        await refusal(() =>
          open()
            .job(whose.job)
            .change(elsewhere, () => []),
        ),
      ).toBe('other-job')
      expect((await open().job(whose.job).read()).entries).toHaveLength(1)
      await append([second, third])
      expect((await open().job(whose.job).read()).entries).toEqual(log)
    },
  },

  {
    name: 'ST4 a change that fails changes nothing, and does not stand in the way',
    holds: async (place) => {
      const { open } = place()
      const job = open().job(whose.job)
      const fails = job.change(whose, () => Promise.reject(new Error('no ink')))
      await expect(fails).rejects.toThrow('no ink')
      expect(await open().jobs()).toEqual([])
      await job.change(whose, (known) => noted(known, ['a']))
      expect((await job.read()).entries).toHaveLength(1)
    },
  },

  {
    name: 'ST5 pinned files and bytes beside come back as they were given',
    holds: async (place) => {
      const { open } = place()
      const log = await noted([], ['a'])
      await open()
        .job(whose.job)
        .change(whose, () => log)
      const file = { id: 'front', points: [1, 2.5e-7, 'é'] }
      const digest = digestOf('corner', file)
      for (const _ of [1, 2]) await open().job(whose.job).pin({ what: 'corner', digest, file })
      expect(await open().job(whose.job).pinned()).toEqual([{ what: 'corner', digest, file }])
      const bytes = Uint8Array.from({ length: 3000 }, (_, i) => (i * 7) & 255)
      for (const _ of [1, 2]) expect(await open().job(whose.job).keep(bytes)).toBe(hashOf(bytes))
      expect(await open().job(whose.job).kept()).toEqual([hashOf(bytes)])
      expect(Array.from((await open().job(whose.job).beside(hashOf(bytes)))!)).toEqual(Array.from(bytes))
      expect(await open().job(whose.job).beside('0'.repeat(64))).toBe(null)
      expect((await open().job(whose.job).read()).entries).toEqual(log)
    },
  },

  {
    name: 'ST22 what is erased beside a log is gone for whoever opens the place next, and nothing else is',
    holds: async (place) => {
      const { open } = place()
      const log = await noted([], ['a'])
      await open()
        .job(whose.job)
        .change(whose, () => log)
      const [one, other] = [Uint8Array.of(1, 2), Uint8Array.of(3)]
      for (const bytes of [one, other]) await open().job(whose.job).keep(bytes)
      expect(await open().job(whose.job).forget(hashOf(one))).toBe(true)
      expect(await open().job(whose.job).forget(hashOf(one))).toBe(false)
      expect(await open().job('7-0999').forget(hashOf(other))).toBe(false)
      expect(await open().job(whose.job).beside(hashOf(one))).toBe(null)
      expect(await open().job(whose.job).kept()).toEqual([hashOf(other)])
      expect((await open().job(whose.job).read()).entries).toEqual(log)
    },
  },

  {
    name: 'ST20 a job opens in the same state with and without a checkpoint',
    holds: async (place) => {
      const { open } = place()
      const job = () => open().job(whose.job)
      const log = await noted([], ['a', 'b', 'c'])
      await job().change(whose, () => log.slice(0, 2))
      const how = { engine: '1', least: 1 }
      const first = await openJob(job(), how)
      const again = await openJob(job(), how)
      expect([first.from, again.from]).toEqual(['fold', 'checkpoint'])
      expect(again).toEqual({ ...first, from: 'checkpoint' })
      expect(again.state).toEqual(foldJob(log.slice(0, 2)))
      // Another version of the program may fold otherwise; a longer log does.
      expect((await openJob(job(), { ...how, engine: '2' })).from).toBe('fold')
      await job().change(whose, () => log)
      const longer = await openJob(job(), how)
      expect([longer.from, longer.entries, longer.state]).toEqual(['fold', log, foldJob(log)])
      expect(await openJob(job(), how)).toEqual({ ...longer, from: 'checkpoint' })
    },
  },

  {
    name: 'ST20 whatever stands in a checkpoint, a job opens in its own state',
    holds: async (place) => {
      const { open } = place()
      const job = () => open().job(whose.job)
      const log = await noted([], ['a', 'b'])
      await job().change(whose, () => log)
      const how = { engine: '1', least: 1 }
      await openJob(job(), how)
      const sound = (await job().recall('fold'))!
      const state = foldJob(log)
      const spoilt = fc.oneof(
        fc.string(),
        fc.nat(sound.length - 1).map((at) => sound.slice(0, at)),
        fc
          .record({ at: fc.nat(sound.length - 1), by: fc.constantFrom('0', 'x', '"', '\n', '') })
          .map(({ at, by }) => sound.slice(0, at) + by + sound.slice(at + 1)),
      )
      await fc.assert(
        fc.asyncProperty(spoilt, async (text) => {
          await job().remember('fold', text)
          const opened = await openJob(job(), how)
          expect([opened.entries, opened.state]).toEqual([log, state])
        }),
        { numRuns: 60, seed: 20261125 },
      )
    },
  },

  {
    name: 'ST21 only what was not verified before is verified, and what was changed since is found',
    holds: async (place) => {
      const { open } = place()
      const job = () => open().job(whose.job)
      const log = await noted([], ['a', 'b', 'c', 'd'])
      await job().change(whose, () => log.slice(0, 2))
      const told: (readonly [number, number])[] = []
      const look = () => verifyKept(job(), (done, of) => told.push([done, of]))
      expect(await look()).toMatchObject({ broken: [], spoilt: [], before: 0 })
      expect(await look()).toMatchObject({ broken: [], before: 2 })
      await job().change(whose, () => log.slice(0, 3))
      expect(await look()).toMatchObject({ broken: [], before: 2 })
      expect(told).toEqual([
        [2, 2],
        [3, 3],
      ])
      // It is what its id says, and its device did not sign it: the store takes it, the look finds it, every time.
      const forged = { ...log[3]!, signature: log[2]!.signature }
      await job().change(whose, () => [forged])
      for (const _ of [1, 2])
        expect(await look()).toMatchObject({
          before: 3,
          broken: [{ entry: 3, sentence: 'Its device did not sign it.' }],
        })
    },
  },
]

/** The contract as tests, run with real places. */
export function keepsItsContract(name: string, place: () => Place): void {
  describe(`${name} keeps its contract`, () => {
    for (const { name: law, holds } of contractCases) test(law, () => holds(place))
  })
}
