import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import type { Entry, SealedEntry } from '../../../src/job/index.ts'
import {
  codeWait,
  isCode,
  personalDue,
  personEntry,
  type Signer,
  sealEntries,
  signerOf,
  type WorkshopEntryData,
  workshopState,
} from '../../../src/proof/index.ts'
import { refuses } from '../../support/law.ts'

let root: Signer
let office: Signer
let bay: Signer
beforeAll(async () => {
  ;[root, office, bay] = (await Promise.all(['01', '02', '03'].map((b) => signerOf(b.repeat(32))))) as [
    Signer,
    Signer,
    Signer,
  ]
})

/** A workshop with one owner's device, and what is said in it after that, each by its signer. */
async function said(...entries: readonly (readonly [Signer, Entry])[]): Promise<readonly SealedEntry[]> {
  let log: readonly SealedEntry[] = []
  const begin: readonly (readonly [Signer, Entry])[] = [
    [root, { kind: 'workshop made', data: { name: 'Harbour yard' } }],
    [root, { kind: 'device certified', data: { device: office.key, name: 'office', owner: true } }],
  ]
  for (const [signer, entry] of [...begin, ...entries])
    log = await sealEntries([...log, entry], {
      workshop: 'Harbour yard',
      job: 'workshop',
      signer,
      person: 'x',
      at: '2026-03-01T08:00:00Z',
      offset: '+00:00',
    })
  return log
}
const stateOf = async (...entries: readonly (readonly [Signer, Entry])[]) =>
  workshopState(await said(...entries), root.key)
/** Hashing is slow on purpose; where no code is typed any hash will do. */
const person = (sign: string, role?: 'owner' | 'technician'): Entry => ({
  kind: 'person',
  data: { sign, salt: '00'.repeat(16), code: '00'.repeat(32), ...(role ? { role } : {}) },
})
const leaves = (sign: string): Entry => ({
  kind: 'person left',
  data: { sign, why: 'moved to the mainland' },
})

describe('PR25 a code', () => {
  const made = personEntry({ sign: 'KB', role: 'technician', code: '4711', salt: new Uint8Array(16).fill(7) })
  const data = made.data as WorkshopEntryData<'person'>

  test('is its person’s, and no other is; its own cost counts', async () => {
    expect(isCode(data, '4711')).toBe(true)
    for (const wrong of ['4712', '04711', '', '471', '4711 ']) expect(isCode(data, wrong)).toBe(false)
    expect(isCode({ ...data, salt: '01'.repeat(16) }, '4711')).toBe(false)
    expect(isCode({ ...data, cost: { ...data.cost!, n: 2 ** 14 } }, '4711')).toBe(false)
    expect(isCode({ ...data, code: data.code.slice(2) }, '4711')).toBe(false)
    const { people, passedOver } = await stateOf([office, made])
    expect(people).toEqual([data])
    expect(passedOver).toEqual([])
    expect(JSON.stringify(made)).not.toContain('4711')
  })

  test('waits longer each time it is wrong, at most a quarter of an hour, whatever the clock', () => {
    expect([0, 1, 2, 3, 4, 5, 6].map((count) => codeWait({ count, last: 0 }, 0))).toEqual([
      0, 0, 0, 5000, 10_000, 20_000, 40_000,
    ])
    const any = fc.record({ count: fc.nat(5000), last: fc.integer(), now: fc.integer() })
    fc.assert(
      fc.property(any, ({ count, last, now }) => {
        const wait = codeWait({ count, last }, now)
        expect(wait).toBeGreaterThanOrEqual(0)
        expect(wait).toBeLessThanOrEqual(900_000)
        expect(codeWait({ count: count + 1, last }, now)).toBeGreaterThanOrEqual(wait)
        expect(codeWait({ count, last }, now + 900_000 + Math.abs(last) + Math.abs(now))).toBe(0)
      }),
      { seed: 20261125 },
    )
  })

  const salt = new Uint8Array(16)
  for (const code of ['123', '123456789', '12a4', ' 4711', '0000', '1234', '98765', '٤٧١١'])
    refuses('bad-code', () => personEntry({ sign: 'KB', role: 'owner', code, salt }))
})

describe('PR26 owners', () => {
  test('a person leaves, and can come back; who was never there cannot leave', async () => {
    const gone = await stateOf([office, person('KB')], [office, person('MT')], [office, leaves('MT')])
    expect(gone.people.map(({ sign }) => sign)).toEqual(['KB'])
    expect(gone.left).toEqual(['MT'])
    const back = await stateOf([office, person('MT')], [office, leaves('MT')], [office, person('MT')])
    expect([back.people.length, back.left]).toEqual([1, []])
    expect((await stateOf([office, leaves('XX')])).passedOver).toHaveLength(1)
  })

  test('the last one who is an owner cannot leave or be made less by an owner; the root can', async () => {
    for (const less of [leaves('KB'), person('KB', 'technician'), person('KB')]) {
      const kept = await stateOf([office, person('KB', 'owner')], [office, less])
      expect(kept.people).toMatchObject([{ sign: 'KB', role: 'owner' }])
      expect(kept.passedOver).toMatchObject([
        { entry: 3, sentence: expect.stringMatching(/without an owner/) },
      ])
      const by = await stateOf([office, person('KB', 'owner')], [root, less])
      expect(by.passedOver).toEqual([])
      const two = await stateOf(
        [office, person('KB', 'owner')],
        [office, person('MT', 'owner')],
        [office, less],
      )
      expect(two.passedOver).toEqual([])
      expect(two.people.filter(({ role }) => role === 'owner').map(({ sign }) => sign)).toEqual(['MT'])
    }
  })

  test('the last owner’s device cannot be certified as less by itself; the root can, and then it is none', async () => {
    const less: Entry = {
      kind: 'device certified',
      data: { device: office.key, name: 'office', owner: false },
    }
    const more: Entry = { kind: 'device certified', data: { device: bay.key, name: 'bay', owner: false } }
    const kept = await stateOf([office, less], [office, more])
    expect(kept.devices).toMatchObject([{ owner: true }, { name: 'bay', owner: false }])
    expect(kept.passedOver).toMatchObject([{ entry: 2 }])
    const by = await stateOf([root, less], [office, more])
    expect(by.devices).toMatchObject([{ owner: false }])
    expect(by.passedOver).toMatchObject([{ entry: 3, sentence: expect.stringMatching(/no owner/) }])
  })

  test('who is no owner says nothing of people, nor of how long anything is kept', async () => {
    const keeps: Entry = { kind: 'keeps', data: { what: 'personal', months: 0 } }
    const { people, keepsMonths, passedOver } = await stateOf([bay, person('XX', 'owner')], [bay, keeps])
    expect([people, keepsMonths, passedOver.length]).toEqual([[], null, 2])
  })
})

describe('PR27 how long personal values are kept', () => {
  const at = (day: string): Entry => ({ kind: 'note', data: { text: 'a' }, at: day })

  test('the last word of an owner counts', async () => {
    const keeps = (months: number): Entry => ({ kind: 'keeps', data: { what: 'personal', months } })
    expect((await stateOf()).keepsMonths).toBe(null)
    expect((await stateOf([office, keeps(24)], [office, keeps(6)])).keepsMonths).toBe(6)
    const wrong = await stateOf([office, keeps(24)], [office, keeps(-1)], [office, keeps(1.5)])
    expect([wrong.keepsMonths, wrong.passedOver.length]).toEqual([24, 2])
  })

  test('a month ends where it ends, and the latest day counts wherever it stands', () => {
    expect(personalDue([at('2026-01-31T09:00:00Z')], 1)).toBe('2026-02-28')
    expect(personalDue([at('2027-12-31')], 2)).toBe('2028-02-29')
    expect(personalDue([at('2026-03-14T23:30:00-05:00'), at('2025-01-01')], 0)).toBe('2026-03-15')
    expect(personalDue([at('2026-03-14')], 12)).toBe('2027-03-14')
    expect(personalDue([], 12)).toBe(null)
    expect(personalDue([{ kind: 'note', data: { text: 'a' } }, at('never')], 12)).toBe(null)
  })
})
