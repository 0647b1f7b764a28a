import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { type Entry, foldJob, foldVersion, stateByRules } from '../../src/job/index.ts'
import {
  type Proof,
  proofText,
  readProof,
  sealEntries,
  signerOf,
  signOffEntry,
  verifyProof,
} from '../../src/proof/index.ts'

const folder = join(import.meta.dirname, 'frozen')
const name = 'format-1-rules-1.proof'
const bytes = readFileSync(join(folder, name))
const proof = readProof(bytes).proof!
const root = '8a88e3dd7409f195fd52db2d3cba5d72ca6709bf1d94121bf3748801b40f6f5c'

/** What was frozen is never touched: a change of one of these files is a change of what was released. */
const frozen = {
  'format-1-rules-1.proof': '723442db5dcb451436ba0dc6f9fc21e965ef9b867147817ba2c0ccbf0b318994',
  'format-1.corner.json': 'f0d52f31a6de07375e82afec20a51d15ff244d58fe820a8f66680c2a359567fc',
  'format-1-strut.corner.json': '6c988f8888c15cc5bb09e45665b332f826f3a1cc8d18af1827bb1e9bc8d8ba9e',
  'format-1-axle.corner.json': 'b0c9e82aafec734d519b90a896ab97b62dd4bf68093eb05e3a6ed4feccb3d67d',
  'format-1-beam.corner.json': '35ee0d185a3a059ec890132ce2b001558c9a17552d0789d7443d57eb0756b792',
  'format-1.spec.json': 'f0a0e0918591f97af797f88b17fb33132bf0823922026e233cb44e10f8dd2c14',
  'format-1-axle.spec.json': '44d9d8687476ca62f224419f11a544cd1170d0603f2433a88415da123492ffcc',
  'format-1.kit.json': '9cccddad8bed9849d5de3f59023748420e78d47dfc53aa13220248005f3bc5be',
  'format-1.job.json': '8e21a707592c50529a14787ac8d8d47aed78e6a83b430479051a65058ebe86ca',
} as const

test.each(Object.entries(frozen))('JO13 %s is what was frozen', (file, digest) => {
  expect(
    createHash('sha256')
      .update(readFileSync(join(folder, file)))
      .digest('hex'),
  ).toBe(digest)
})

describe('JO43 a proof signed by rules 1', () => {
  test('verifies whole: hands, cover, and the state that was signed comes out again by those rules', async () => {
    const verdict = await verifyProof(bytes, { trusted: root })
    expect(verdict).toMatchObject({ intact: true, broken: [], rootTrusted: true })
    expect(verdict.signers).toMatchObject([
      { name: 'bay 2 tablet', hand: 'known' },
      { name: 'office', hand: 'known', entries: 3 },
    ])
    const signed = proof.entries.findIndex(({ kind }) => kind === 'signed off')
    expect(verdict.signOffs).toMatchObject([
      { entry: signed, covers: signed, late: [signed + 1], state: 'comes out again', filesAmiss: [] },
    ])
    expect(proofText(proof)).toBe(bytes.toString('utf8'))
  })

  test('says in these rules what it meant, and in ours what it means now', () => {
    const covered = proof.entries.slice(0, -2)
    const then = stateByRules(covered, 1) as ReturnType<typeof foldJob>
    const now = foldJob(covered)
    expect(then.newer.map(({ kind }) => kind)).toEqual(['arrival', 'works with', 'tide table'])
    expect(now.newer.map(({ kind }) => kind)).toEqual(['tide table'])
    expect(then).not.toHaveProperty('worksWith')
    expect(now.worksWith).toHaveLength(1)
    expect(then.arrival).not.toHaveProperty('plate')
    expect(now.arrival?.plate).toBe('PO-RT 07')
    const { worksWith: _, newer: __, arrival: ___, ...ours } = now
    const { newer: ____, arrival: _____, ...theirs } = then
    expect(theirs).toEqual(ours)
  })

  test('a version of the rules that is not known is said to be that, and nothing is guessed', () => {
    for (const version of [0, 0.5, -1, foldVersion + 1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(stateByRules(proof.entries, version)).toBe(null)
    expect(stateByRules(proof.entries, foldVersion)).toEqual(foldJob(proof.entries))
  })
})

describe('PR24 a proof of a newer version', () => {
  let newer: string
  beforeAll(async () => {
    const { workshop, job } = proof.head
    const signer = await signerOf('05'.repeat(32))
    const how = { workshop, job, signer, person: 'KB', at: '2027-01-01T08:00:00Z', offset: '+00:00' }
    const later: readonly Entry[] = [
      { kind: 'note', data: { text: 'what is known of it', tone: 'loud' } },
      { kind: 'wheel balanced', data: { grams: 5 } },
    ]
    const entries = await sealEntries([...proof.entries, ...later], how)
    const signOff = signOffEntry(entries, { files: { front: {} }, engine: '9', hand: 'KB' })
    const signed = await sealEntries([...entries, { ...signOff, data: { ...signOff.data, fold: 9 } }], how)
    newer = proofText({ ...proof, entries: signed })
      .replace('"head":{"format":1,', '"head":{"format":2,')
      .replace('"kind":"proof",', '"kind":"proof","moon":"full",')
      .replace('"snapshots":[', '"receipts":[\n{"at":"2027-01-01T09:00:00Z"}\n],\n"snapshots":[')
      .replace('"workshop":[', '"tide":{"high":"14:10"},\n"workshop":[')
  })

  test('opens, says what it does not know, and is written back byte for byte', async () => {
    const { proof: read, spoilt } = readProof(new TextEncoder().encode(newer))
    expect(spoilt).toEqual([])
    expect(read!.beyond).toMatchObject({ format: 2, parts: ['receipts', 'tide'] })
    expect(proofText(read!)).toBe(newer)
    const state = foldJob(read!.entries)
    expect(state.notes.at(-1)!.text).toBe('what is known of it')
    expect(state.newer.map(({ kind }) => kind)).toEqual(['tide table', 'note', 'wheel balanced'])
    const verdict = await verifyProof(new TextEncoder().encode(newer), { trusted: root })
    expect(verdict.broken).toMatchObject([{ where: 'the file around the entries', entry: null }])
    expect(verdict.broken[0]!.sentence).toMatch(/^A newer version made it \(format 2\).*“receipts”, “tide”/)
    expect(verdict.intact).toBe(false)
    expect(verdict.entries).toBe(proof.entries.length + 3)
    expect(verdict.signOffs.map(({ state: one }) => one)).toEqual(['comes out again', 'made by other rules'])
  })

  test('what is changed in an entry of it is still found there', async () => {
    const changed = newer.replace('what is known of it', 'what is known of me')
    const { broken } = await verifyProof(new TextEncoder().encode(changed))
    expect(broken.map(({ where }) => where)).toContain(`entry ${proof.entries.length + 1}`)
  })

  test('one that is spoilt is told at its line, and a format is not raised by a slip', async () => {
    const cut = newer.slice(0, newer.indexOf('"tide"') + 5)
    const { proof: read, spoilt } = readProof(new TextEncoder().encode(cut))
    expect(read).toBe(null)
    expect(spoilt[0]!.sentence).toMatch(/newer version made it, and line \d+ /)
    const raised: Proof | null = readProof(
      new TextEncoder().encode(bytes.toString('utf8').replace('"head":{"format":1', '"head":{"format":3')),
    ).proof
    expect(raised?.beyond?.format).toBe(3)
    const shapeless = newer.replace('"seq":1,', '"seq":0,')
    expect(readProof(new TextEncoder().encode(shapeless)).proof).toBe(null)
    for (const format of ['1.5', '"2"', '-2', '1e9999'])
      expect(
        readProof(
          new TextEncoder().encode(bytes.toString('utf8').replace('{"format":1', `{"format":${format}`)),
        ).proof,
      ).toBe(null)
  })
})
