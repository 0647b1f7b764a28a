import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import {
  commitmentIn,
  type Entry,
  foldJob,
  headsOf,
  inCausalOrder,
  type PrivateValue,
  personalMembers,
  type SealedEntry,
  tokenOf,
  withPersonal,
} from '../../../src/job/index.ts'
import {
  concealed,
  type Proof,
  privateBytes,
  privateIn,
  proofOf,
  proofText,
  readProof,
  revealed,
  type Signer,
  sealEntries,
  signerOf,
  signOffEntry,
  verdictOf,
  verifyProof,
} from '../../../src/proof/index.ts'
import { refuses } from '../../support/law.ts'

const root = join(import.meta.dirname, '..', '..', '..')
const json = (path: string): unknown => JSON.parse(readFileSync(join(root, path), 'utf8'))
const utf8 = (text: string) => new TextEncoder().encode(text)
const files = [{ what: 'corner', file: json('examples/port-unit-07/front.corner.json') }] as const
const whose = { workshop: 'Harbour yard, bay 2', job: '7-0412' }

/** Random enough for a test, and the same each time. */
function salts(): () => Uint8Array {
  let n = 0
  return () => createHash('sha256').update(`salt ${n++}`).digest()
}
const secrets = {
  vin: '0000 0000 9b123 4567',
  plate: 'PO-RT 07',
  owner: 'Iseult Quayle-Ferry',
  driver: 'Ansgar Pontoon',
  phone: '+00 555 01 99 88',
  by: 'Iseult, at the counter',
  told: 'Ansgar, on the ramp',
  how: 'the fleet lady, Iseult',
}
const bare: readonly Entry[] = [
  {
    kind: 'arrival',
    data: {
      asked: 'pulls to the left',
      vin: secrets.vin,
      plate: secrets.plate,
      owner: secrets.owner,
      driver: secrets.driver,
      phone: secrets.phone,
      consent: { to: 'looking', by: secrets.by, how: 'in person' },
    },
  },
  { kind: 'note', data: { text: 'nothing personal' } },
  { kind: 'correction', data: { of: 0, data: { vin: `${secrets.vin}8` } } },
  { kind: 'correction', data: { of: 2, data: { data: { vin: `${secrets.vin}9` } } } },
  { kind: 'extra work', data: { what: 'boots', answer: 'yes', by: secrets.how } },
  { kind: 'not road-ready', data: { reason: 'no brakes', told: secrets.told, hand: 'KB' } },
]
let signer: Signer
let values: readonly PrivateValue[]
let sealed: readonly SealedEntry[]
let proof: Proof
const sealing = () => ({ ...whose, signer, person: 'KB', at: '2026-03-14T18:00:00Z', offset: '+01:00' })

beforeAll(async () => {
  signer = await signerOf('01'.repeat(32))
  const hidden = concealed(bare, salts())
  values = hidden.values
  const once = await sealEntries(hidden.entries, sealing())
  const signOff = signOffEntry(once, { files: { front: files[0].file }, engine: '0.1.0', hand: 'KB' })
  sealed = await sealEntries([...once, signOff], sealing())
  proof = proofOf({ ...whose, entries: sealed, files, root: null, workshopLog: [], values })
})

test('PR20 nothing personal stands in a sealed entry in clear, corrections and corrections of them included', () => {
  const text = JSON.stringify(sealed)
  for (const secret of Object.values(secrets)) expect(text).not.toContain(secret)
  expect(values).toHaveLength(10)
  expect(foldJob(sealed).arrival?.vin).toMatch(/^private:[0-9a-f]{64}$/)
  // The rest is as it was, and what is no person's stays readable.
  expect(foldJob(sealed).arrival?.asked).toBe('pulls to the left')
  expect(foldJob(sealed).troubles).toEqual([])
})

test('PR20 a commitment is the SHA-256 of its opening, the salt and the value, by another program', () => {
  for (const { commitment, salt, value } of values) {
    const hash = createHash('sha256')
      .update('axlewright/private/1\0')
      .update(Buffer.from(salt, 'hex'))
      .update(value, 'utf8')
    expect(hash.digest('hex')).toBe(commitment)
    expect(privateIn(privateBytes({ salt, value })!)).toEqual({ salt, value })
  }
  expect(privateIn(utf8('a photo'))).toBeNull()
  expect(privateBytes({ salt: '00', value: 'x' })).toBeNull()
})

test('PR20 a salt hides equal values, and a token is never hidden again', () => {
  const twice = concealed([bare[0]!, bare[0]!], salts())
  expect(new Set(twice.values.map(({ commitment }) => commitment)).size).toBe(12)
  expect(concealed(twice.entries, salts())).toEqual({ entries: twice.entries, values: [] })
})

test('PR21 with its values a log reads as it was written; without them it reads "erased"', () => {
  const shown = revealed(sealed, values)
  expect(foldJob(shown.entries).arrival).toMatchObject({
    vin: `${secrets.vin}9`,
    plate: secrets.plate,
    owner: secrets.owner,
    consent: { by: secrets.by },
  })
  expect(shown.entries.slice(0, 6).map(({ data }) => data)).toEqual(
    inCausalOrder(bare).map(({ data }, i) =>
      data.of === undefined ? data : { ...data, of: sealed[i]!.data.of },
    ),
  )
  expect(shown).toMatchObject({ erased: [], amiss: [], inClear: [] })
  const gone = revealed(sealed, [])
  expect(foldJob(gone.entries).arrival).toMatchObject({ vin: 'erased', phone: 'erased' })
  expect(gone.erased).toHaveLength(10)
  expect(foldJob(gone.entries).notRoadReady[0]!.told).toBe('erased')
})

test('PR21 a value that is not the one that was sealed is never shown', () => {
  const forged = values.map((one) => (one.value === secrets.plate ? { ...one, value: 'PO-RT 99' } : one))
  const shown = revealed(sealed, forged)
  expect(JSON.stringify(shown.entries)).not.toContain('PO-RT 99')
  expect(shown.amiss).toEqual([{ entry: 0, kind: 'arrival', member: 'plate' }])
  expect(foldJob(shown.entries).arrival?.plate).toBe('not what was sealed')
})

test('PR22 erasing leaves the log, its heads and what was signed byte for byte, and the proof holds', async () => {
  const before = await verifyProof(utf8(proofText(proof)), { trusted: signer.key })
  expect(before).toMatchObject({ intact: true, personal: { there: 10, erased: 0 } })
  expect(before.signOffs).toMatchObject([{ state: 'comes out again' }])
  for (let kept = values.length - 1; kept >= 0; kept--) {
    const less = proofOf({
      ...whose,
      entries: sealed,
      files,
      root: null,
      workshopLog: [],
      values: values.slice(0, kept),
    })
    const text = proofText(less)
    const again = await verifyProof(utf8(text), { trusted: signer.key })
    expect(again).toEqual({ ...before, personal: { there: kept, erased: 10 - kept } })
    expect(headsOf(readProof(utf8(text)).proof!.entries)).toEqual(headsOf(sealed))
    for (const { value } of values.slice(kept))
      if (!values.slice(0, kept).some((one) => one.value.includes(value))) expect(text).not.toContain(value)
  }
  const empty = proofText(proofOf({ ...whose, entries: sealed, files, root: null, workshopLog: [] }))
  for (const secret of [...Object.values(secrets), ...values.map(({ salt }) => salt)])
    expect(empty).not.toContain(secret)
})

test('PR22 each flipped bit of the personal values is found, at its value', async () => {
  const text = proofText(proof)
  const from = utf8(text.slice(0, text.indexOf('"private":['))).length
  const to = utf8(text.slice(0, text.indexOf('"snapshots":['))).length
  const bytes = utf8(text)
  let atValue = 0
  await fc.assert(
    fc.asyncProperty(fc.integer({ min: from * 8, max: to * 8 - 1 }), async (bit) => {
      const changed = bytes.slice()
      changed[bit >> 3]! ^= 1 << (bit & 7)
      const { intact, broken } = await verifyProof(changed)
      expect(intact).toBe(false)
      if (broken[0]!.where.startsWith('personal value')) atValue++
    }),
    { numRuns: 300, seed: 20261125 },
  )
  expect(atValue).toBeGreaterThan(200)
})

test('PR22 a value that no entry names, one that stands twice and one exchanged are told', async () => {
  const sentences = async (some: readonly PrivateValue[]) =>
    (await verdictOf({ ...proof, private: some })).broken.map(
      ({ where, sentence }) => `${where}: ${sentence}`,
    )
  expect(await sentences(values)).toEqual([])
  const stranger = concealed([bare[5]!], () => new Uint8Array(32)).values
  expect(await sentences([...values, ...stranger])).toEqual(['personal value 11: No entry names it.'])
  expect(await sentences([...values, values[0]!])).toEqual([
    'personal value 11: It stands here a second time.',
  ])
  const [a, b, ...others] = values as [PrivateValue, PrivateValue, ...PrivateValue[]]
  expect(
    await sentences([{ ...a, commitment: b.commitment }, { ...b, commitment: a.commitment }, ...others]),
  ).toHaveLength(2)
})

test('PR23 what is personal is declared once, in the schema, and every such member is known', () => {
  const kinds = ['arrival', 'extra work', 'not road-ready']
  const known = kinds.flatMap((kind) => personalMembers(kind).map((path) => `${kind}.${path.join('.')}`))
  expect(known.sort()).toEqual([
    'arrival.consent.by',
    'arrival.driver',
    'arrival.owner',
    'arrival.phone',
    'arrival.plate',
    'arrival.vin',
    'extra work.by',
    'not road-ready.told',
  ])
  const declared = JSON.stringify(json('schema/job.schema.json')).match(/"personal":true/g)
  expect(declared).toHaveLength(known.length)
  for (const name of ['constructor', 'note', '__proto__']) expect(personalMembers(name)).toEqual([])
})

test('PR23 values of any text come back to the letter; other entries are left alone', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }), (text) => {
      const log: Entry[] = [
        { kind: 'not road-ready', data: { reason: text, told: text, hand: 'KB' } },
        { kind: 'correction', data: { of: 5, data: { told: text } } },
      ]
      const hidden = concealed(log, salts())
      expect(hidden.values).toHaveLength(commitmentIn(text) === null ? 1 : 0)
      expect(hidden.entries[1]).toBe(log[1])
      expect(revealed(hidden.entries, hidden.values).entries).toEqual(log)
    }),
    { seed: 20261125 },
  )
  expect(commitmentIn(tokenOf('a'.repeat(64)))).toBe('a'.repeat(64))
  const plain: Entry[] = [{ kind: 'note', data: { text: 'x' } }]
  expect(withPersonal(plain, () => 'y')[0]).toBe(plain[0])
})

test('PR23 what is sealed in clear stays so, and is told: it cannot be erased', async () => {
  const old = await sealEntries(bare, sealing())
  expect(concealed(old, salts())).toEqual({ entries: old, values: [] })
  const shown = revealed(old, [])
  expect(shown.inClear).toHaveLength(10)
  expect(shown.inClear[0]).toEqual({ entry: 0, kind: 'arrival', member: 'vin' })
})

refuses('not-json', () =>
  concealed([{ kind: 'not road-ready', data: { told: 'a\ud800' } }], () => new Uint8Array(32)),
)
