import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { beforeAll, describe, expect, test } from 'vitest'
import { type Entry, readJob, type SealedEntry } from '../../../src/job/index.ts'
import {
  fingerprint,
  type Proof,
  proofOf,
  proofText,
  type Sealing,
  type Signer,
  sealEntries,
  signerOf,
  signOffEntry,
  verifyProof,
  workshopState,
} from '../../../src/proof/index.ts'
import { Refusal } from '../../../src/quantity/index.ts'

const root = join(import.meta.dirname, '..', '..', '..')
const json = (path: string): unknown => JSON.parse(readFileSync(join(root, 'examples', path), 'utf8'))
const utf8 = (text: string) => new TextEncoder().encode(text)
const flips = process.env['AXLEWRIGHT_SOAK'] === '1' ? 10_000 : 1000

const front = json('port-unit-07/front.corner.json')
const spec = json('port-unit-07/port-unit-07.spec.json')
const kit = json('port-kit.kit.json')
const files = [
  { what: 'corner', file: front },
  { what: 'spec', file: spec },
  { what: 'kit', file: kit },
] as const
const workshop = 'Harbour yard, bay 2'
const job = '7-0412'

let owner: Signer
let bay: Signer
let stranger: Signer
let rootKey: Signer
let sealed: readonly SealedEntry[]
let workshopLog: readonly SealedEntry[]
let proof: Proof

const how = (signer: Signer, more: Partial<Sealing> = {}): Sealing => ({
  workshop,
  job,
  signer,
  person: 'KB',
  at: '2026-03-14T18:00:00Z',
  offset: '+01:00',
  ...more,
})
const note = (text: string, at?: string): Entry => ({ kind: 'note', data: { text }, ...(at ? { at } : {}) })
const inWorkshop = (signer: Signer) => how(signer, { job: 'workshop' })
const certified = (device: Signer, name: string, isOwner: boolean): Entry => ({
  kind: 'device certified',
  data: { device: device.key, name, owner: isOwner },
})
const revoked = (device: Signer): Entry => ({
  kind: 'device revoked',
  data: { device: device.key, why: 'lost on the quay' },
})
async function demoProof(signer: Signer, root: string | null = rootKey.key): Promise<Proof> {
  const read = readJob(json('port-unit-07/port-unit-07.job.json'))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const once = await sealEntries(read.value.entries, how(signer))
  const signOff = signOffEntry(once, { files: { front, spec, kit }, engine: '0.1.0', hand: 'KB' })
  sealed = await sealEntries([...once, signOff], how(signer))
  return proofOf({ workshop, job, entries: sealed, files, root, workshopLog })
}

beforeAll(async () => {
  ;[rootKey, owner, bay, stranger] = (await Promise.all(
    ['01', '02', '03', '04'].map((byte) => signerOf(byte.repeat(32))),
  )) as [Signer, Signer, Signer, Signer]
  workshopLog = await sealEntries(
    [{ kind: 'workshop made', data: { name: 'Harbour yard' } }, certified(owner, 'office', true)],
    inWorkshop(rootKey),
  )
  workshopLog = await sealEntries([...workshopLog, certified(bay, 'bay 2 tablet', false)], inWorkshop(owner))
  proof = await demoProof(bay)
})

test('PR1 a sealed job is intact, its hands are known by the root that is trusted, and the sign-off covers it', async () => {
  const verdict = await verifyProof(utf8(proofText(proof)), { trusted: fingerprint(rootKey.key) })
  expect(verdict.broken).toEqual([])
  expect(verdict).toMatchObject({ intact: true, rootTrusted: true, entries: sealed.length, backDated: [] })
  expect(verdict.signers).toMatchObject([{ hand: 'known', name: 'bay 2 tablet', entries: sealed.length }])
  expect(verdict.signOffs).toMatchObject([
    { covers: sealed.length - 1, late: [], state: 'comes out again', filesAmiss: [] },
  ])
})

test('PR2 without a root that is trusted no hand is known; with another one neither', async () => {
  const bytes = utf8(proofText(proof))
  expect((await verifyProof(bytes)).signers[0]!.hand).toBe('unknown')
  const other = await verifyProof(bytes, { trusted: fingerprint(stranger.key) })
  expect(other).toMatchObject({ intact: true, rootTrusted: false })
  expect(other.signers[0]!.hand).toBe('unknown')
})

test('PR3 each flipped bit is found, and found at its entry', async () => {
  const text = proofText(proof)
  const bytes = utf8(text)
  const lines = text.split('\n')
  // Where each byte belongs: a place in the log, or elsewhere.
  const first = 1
  const places = lines.flatMap((line, i) => {
    const entry = i >= first && i < first + proof.entries.length ? i - first : null
    return Array.from({ length: utf8(line).length + (i < lines.length - 1 ? 1 : 0) }, () => entry)
  })
  expect(places).toHaveLength(bytes.length)
  let inEntries = 0
  await fc.assert(
    fc.asyncProperty(fc.nat(bytes.length * 8 - 1), async (bit) => {
      const changed = bytes.slice()
      changed[bit >> 3]! ^= 1 << (bit & 7)
      const { intact, broken } = await verifyProof(changed, { trusted: rootKey.key })
      expect(intact).toBe(false)
      const entry = places[bit >> 3]!
      if (entry === null) return
      inEntries++
      expect(broken.map((one) => one.entry)).toContain(entry)
      expect(broken[0]!.entry).toBe(entry)
    }),
    { numRuns: flips, seed: 20261125 },
  )
  expect(inEntries).toBeGreaterThan(flips / 5)
})

test('PR4 a log re-signed from end to end is intact, and its hand unknown', async () => {
  const forged = await demoProof(stranger)
  const verdict = await verifyProof(utf8(proofText(forged)), { trusted: rootKey.key })
  expect(verdict).toMatchObject({ intact: true, rootTrusted: true })
  expect(verdict.signers).toMatchObject([{ hand: 'unknown', name: null }])
  proof = await demoProof(bay)
})

test('PR4 whoever brings a root of their own is not the root that is trusted', async () => {
  const theirs = await sealEntries(
    [{ kind: 'workshop made', data: { name: 'Harbour yard' } }, certified(stranger, 'bay 2 tablet', true)],
    inWorkshop(stranger),
  )
  const forged = { ...(await demoProof(stranger, stranger.key)), workshop: theirs }
  const verdict = await verifyProof(utf8(proofText(forged)), { trusted: rootKey.key })
  expect(verdict).toMatchObject({ intact: true, rootTrusted: false })
  expect(verdict.signers[0]!.hand).toBe('unknown')
  proof = await demoProof(bay)
})

describe('PR5 what is done to a log shows', () => {
  const broken = async (entries: readonly SealedEntry[]) =>
    (await verifyProof(utf8(proofText({ ...proof, entries })))).broken
  test('an entry taken out of the middle', async () => {
    expect((await broken(sealed.filter((_, i) => i !== 4)))[0]).toMatchObject({ entry: 4 })
  })
  test('an entry twice, and two that changed places', async () => {
    expect((await broken([...sealed.slice(0, 3), ...sealed.slice(2)]))[0]).toMatchObject({ entry: 3 })
    const [a, b, c] = sealed
    expect((await broken([a!, c!, b!, ...sealed.slice(3)]))[0]).toMatchObject({ entry: 1 })
  })
  test('an entry of another job', async () => {
    const other = await sealEntries([note('x')], how(bay, { job: '7-0999' }))
    expect((await broken([...sealed, ...other])).map(({ entry }) => entry)).toEqual([sealed.length])
  })
  test('an entry written anew under an old id, and one signed by another device', async () => {
    const [first] = sealed
    expect((await broken([{ ...first!, person: 'XX' }, ...sealed.slice(1)]))[0]).toMatchObject({ entry: 0 })
    const theirs = { ...first!, signature: sealed[1]!.signature }
    expect((await broken([theirs, ...sealed.slice(1)]))[0]).toMatchObject({ entry: 0 })
  })
  test('a count of a device that goes back', async () => {
    const head = await sealEntries([note('a')], how(bay))
    const again = await sealEntries([note('b')], how(bay))
    expect((await broken([...head, ...again]))[0]).toMatchObject({ entry: 1 })
  })
  test('a pinned file that is another', async () => {
    const [one, ...rest] = proof.snapshots
    const text = proofText({ ...proof, snapshots: [{ ...one!, file: { other: true } }, ...rest] })
    const verdict = await verifyProof(utf8(text))
    expect(verdict.intact).toBe(false)
    const without = await verifyProof(utf8(proofText({ ...proof, snapshots: rest })))
    expect(without.intact).toBe(true)
    expect(without.signOffs[0]!.filesAmiss).toEqual(['front corner model'])
  })
})

test('PR6 an entry that came late stands outside the sign-off, which still comes out again', async () => {
  const late = await sealEntries([...sealed, note('it pulls')], how(bay))
  const verdict = await verifyProof(utf8(proofText({ ...proof, entries: late })), { trusted: rootKey.key })
  expect(verdict).toMatchObject({ intact: true })
  expect(verdict.signOffs).toMatchObject([{ late: [late.length - 1], state: 'comes out again' }])
})

test('PR6 a state that does not come out again is told', async () => {
  const once = await sealEntries([note('a')], how(bay))
  const off = signOffEntry(once, { files: { front }, engine: '0.1.0', hand: 'KB' })
  const lied = { ...off, data: { ...off.data, state: '0'.repeat(64) } }
  const older = { ...off, data: { ...off.data, fold: 999 } }
  const state = async (entry: Entry) => {
    const log = await sealEntries([...once, entry], how(bay))
    const made = proofOf({ workshop, job, entries: log, files, root: null, workshopLog: [] })
    return (await verifyProof(utf8(proofText(made)))).signOffs[0]!.state
  }
  expect(await state(off)).toBe('comes out again')
  expect(await state(lied)).toBe('does not come out')
  expect(await state(older)).toBe('made by other rules')
})

test('PR7 a clock that stands before what the entry follows is shown; one that is a little slow is not', async () => {
  const dated = async (...times: readonly string[]) => {
    const log = await sealEntries(
      times.map((at) => note('a', at)),
      how(bay),
    )
    const made = proofOf({ workshop, job, entries: log, files: [], root: null, workshopLog: [] })
    return (await verifyProof(utf8(proofText(made)))).backDated
  }
  expect(await dated('2026-03-14T10:00:00Z', '2026-03-14T09:58:00Z')).toEqual([])
  expect(await dated('2026-03-14T10:00:00Z', '2026-03-14T09:00:00Z', '2026-03-14T09:30:00Z')).toEqual([1, 2])
  expect(await dated('2026-03-14T10:00:00+02:00', '2026-03-14T08:30:00Z')).toEqual([])
})

describe('PR8 who may sign for a workshop', () => {
  const state = (log: readonly SealedEntry[]) => workshopState(log, rootKey.key)
  const standing = (log: readonly SealedEntry[], device: Signer) =>
    state(log).devices.find((one) => one.device === device.key)?.revoked
  test('what a device says that is no owner does not count', async () => {
    const log = await sealEntries([...workshopLog, certified(stranger, 'friend', true)], inWorkshop(bay))
    expect(state(log).devices.map(({ name }) => name)).toEqual(['office', 'bay 2 tablet'])
    expect(state(log).passedOver).toHaveLength(1)
  })
  test('an owner revokes a device; it is revoked in the proof as well', async () => {
    const log = await sealEntries([...workshopLog, revoked(bay)], inWorkshop(owner))
    expect(standing(log, bay)).toBe('lost on the quay')
    const verdict = await verifyProof(utf8(proofText({ ...proof, workshop: log })), { trusted: rootKey.key })
    expect(verdict.signers).toMatchObject([{ hand: 'revoked' }])
  })
  test('the last owner cannot lock the workshop out, and the root on paper always can let in', async () => {
    const log = await sealEntries([...workshopLog, revoked(owner)], inWorkshop(owner))
    expect(standing(log, owner)).toBe(null)
    const two = await sealEntries(
      [...workshopLog, certified(bay, 'bay 2 tablet', true), revoked(owner)],
      inWorkshop(owner),
    )
    expect(standing(two, owner)).toBe('lost on the quay')
    const lost = await sealEntries([...workshopLog, revoked(owner)], inWorkshop(rootKey))
    expect(standing(lost, owner)).toBe('lost on the quay')
    const again = await sealEntries([...lost, certified(stranger, 'new office', true)], inWorkshop(rootKey))
    expect(standing(again, stranger)).toBe(null)
  })
  test('a revoked owner says nothing more that counts', async () => {
    const two = await sealEntries(
      [...workshopLog, certified(stranger, 'second office', true)],
      inWorkshop(owner),
    )
    const out = await sealEntries([...two, revoked(owner)], inWorkshop(stranger))
    const late = await sealEntries([...out, certified(bay, 'bay 2 tablet', true)], inWorkshop(owner))
    expect(state(late).devices.find(({ name }) => name === 'bay 2 tablet')!.owner).toBe(false)
    expect(state(late).passedOver).toHaveLength(1)
  })
})

describe('PR9 what cannot be sealed or signed is refused', () => {
  const refused = async (code: string, call: () => Promise<unknown>) => {
    const error = await call().then(
      () => null,
      (one: unknown) => one,
    )
    expect(error).toBeInstanceOf(Refusal)
    expect((error as Refusal).code).toBe(code)
  }
  test('bad-key', () => refused('bad-key', () => signerOf('00')))
  test('gap', () => refused('gap', () => sealEntries(sealed.slice(2), how(bay))))
  test('nothing-signed', async () => {
    const bare = [note('a')]
    await refused('nothing-signed', async () =>
      signOffEntry(bare, { files: { front }, engine: '1', hand: 'K' }),
    )
    await refused('nothing-signed', async () =>
      signOffEntry([], { files: { front }, engine: '1', hand: 'K' }),
    )
    await refused('nothing-signed', async () =>
      proofOf({ workshop, job, entries: bare, files: [], root: null, workshopLog: [] }),
    )
  })
  test('not-json', () => refused('not-json', () => sealEntries([note('a\ud800')], how(bay))))
})

test('PR10 bare entries that name others by their place name them by id once sealed', async () => {
  const log = await sealEntries(
    [note('a'), { kind: 'correction', data: { of: 0, data: { text: 'b' } } }],
    how(bay),
  )
  expect(log[1]!.data['of']).toBe(log[0]!.id)
  expect(log.map(({ seq }) => seq)).toEqual([1, 2])
  expect(log[1]!.after).toEqual([log[0]!.id])
})

test('PR11 a file of which nothing is a proof is refused without a stack, whatever its bytes', async () => {
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
      expect((await verifyProof(bytes)).intact).toBe(false)
    }),
    { numRuns: 500 },
  )
})
