import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, test } from 'vitest'
import {
  boltBook,
  type Entry,
  foldJob,
  inCausalOrder,
  readJob,
  type SealedEntry,
} from '../../../src/job/index.ts'
import {
  canonicalText,
  concealed,
  type Proof,
  paperSeal,
  proofText,
  readProof,
  readSealedLine,
  revealed,
  type Signer,
  sealEntries,
  signerOf,
  signOffEntry,
  verdictOf,
  verifyProof,
  workshopState,
} from '../../../src/proof/index.ts'
import { Refusal } from '../../../src/quantity/index.ts'
import { proofSheetFrom, sheetFrom } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { drawsOf, mutated, mutatedText } from '../../support/mutated.ts'

const isLong = process.env['AXLEWRIGHT_SOAK'] === '1'
const seed = Number(process.env['AXLEWRIGHT_SEED'] ?? 20261125)
const folder = join(import.meta.dirname, '..', '..', 'formats', 'frozen')
const utf8 = (text: string) => new TextEncoder().encode(text)
const frozen = readFileSync(join(folder, 'format-1-rules-1.proof'), 'utf8')
const everyKind = JSON.parse(readFileSync(join(folder, 'format-1-every-kind.job.json'), 'utf8'))
const { workshop, job } = everyKind as { workshop: string; job: string }
let signer: Signer
let rootKey: Signer
beforeAll(async () => {
  signer = await signerOf('07'.repeat(32))
  rootKey = await signerOf('01'.repeat(32))
})
const how = (by: Signer, of = job) => ({
  workshop,
  job: of,
  signer: by,
  person: 'KB',
  at: '2026-03-14T18:00:00Z',
  offset: '+01:00',
})
/** The answer, or null where it was refused in a sentence; anything else is a crash. */
async function answered<T>(call: () => T | Promise<T>): Promise<T | null> {
  try {
    return await call()
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    expect(error.sentence).toMatch(/\.$/)
    return null
  }
}

const spoilt = isLong ? 20_000 : 300
test(`PR28 ${spoilt} proofs with a line changed in its meaning, or a text cut and moved: told, never a crash`, async () => {
  const draw = drawsOf(seed)
  const lines = frozen.split('\n')
  let located = 0
  for (let i = 0; i < spoilt; i++) {
    const at = Math.floor(draw() * lines.length)
    const line = lines[at]!
    const comma = line.endsWith(',') ? ',' : ''
    let changed = frozen
    if (draw() < 0.75 && line.startsWith('{') && line.length > 60) {
      const value = mutated(JSON.parse(comma ? line.slice(0, -1) : line), draw)
      const text = await answered(() => canonicalText(value))
      if (text === null) continue
      changed = lines.with(at, text + comma).join('\n')
      if (readSealedLine(text)) located++
    } else changed = mutatedText(frozen, draw)
    if (changed === frozen) continue
    const verdict = await verifyProof(utf8(changed), { trusted: rootKey.key })
    expect(verdict.intact, changed.slice(0, 200)).toBe(false)
    expect(verdict.broken[0]!.sentence).toMatch(/\.$/)
    const { proof } = readProof(utf8(changed))
    if (proof) expect(proofText(proof)).toBe(changed)
  }
  expect(located).toBeGreaterThan(spoilt / 20)
})

const hostile = isLong ? 3000 : 40
test(`PR28 ${hostile} logs that are sealed well and say anything: intact, folded, shown, signed; never a crash`, async () => {
  const draw = drawsOf(seed + 1)
  const demo = demoSources('07')
  const bare = (everyKind.entries as readonly Entry[]).filter(({ kind }) => kind !== 'signed off')
  let answers = 0
  let salt = 0
  for (let i = 0; i < hostile; i++) {
    const entries = bare.map((entry): Entry => {
      if (draw() > 0.25) return entry
      const { data, kind } = mutated({ data: entry.data, kind: entry.kind }, draw) as Partial<Entry>
      return {
        ...entry,
        kind: typeof kind === 'string' ? kind : entry.kind,
        data: typeof data === 'object' && data !== null && !Array.isArray(data) ? data : entry.data,
      }
    })
    const sealed = await answered(async () => {
      const hidden = concealed(entries, () => new Uint8Array(32).fill(salt++))
      const once = await sealEntries(hidden.entries, how(signer))
      const signOff = signOffEntry(once, { files: { front: {} }, engine: '0', hand: 'KB' })
      return { values: hidden.values, entries: await sealEntries([...once, signOff], how(signer)) }
    })
    if (!sealed) continue
    const proof: Proof = {
      head: { format: 1, kind: 'proof', workshop, job, root: null },
      entries: sealed.entries,
      snapshots: [],
      workshop: [],
    }
    const read = readProof(utf8(proofText(proof))).proof
    expect(canonicalText(read)).toBe(canonicalText(proof))
    const verdict = await verdictOf({
      ...proof,
      ...(sealed.values.length > 0 ? { private: sealed.values } : {}),
    })
    expect(verdict.broken).toEqual([])
    expect(verdict.signOffs.at(-1)?.state).toBe('comes out again')
    paperSeal({ verdict, entries: sealed.entries, root: null, bare: 0 })
    expect(readJob({ format: 1, workshop, job, entries: sealed.entries }).ok).toBe(true)
    const shown = revealed(sealed.entries, sealed.values).entries
    const state = foldJob(shown)
    const sources = { ...demo, job: { ...demo.job, entries: shown } }
    if (await answered(() => boltBook({ state, ...demo }))) answers++
    if (i % 4 === 0) {
      await answered(() => sheetFrom(sources))
      await answered(() => proofSheetFrom(sources))
    }
  }
  expect(answers).toBeGreaterThan(hostile / 3)
})

const shops = isLong ? 5000 : 150
test(`PR28 ${shops} workshops’ logs that say anything: a state, and what does not count is said`, async () => {
  const draw = drawsOf(seed + 2)
  const good: readonly Entry[] = [
    { kind: 'workshop made', data: { name: workshop } },
    { kind: 'device certified', data: { device: signer.key, name: 'office', owner: true } },
    { kind: 'person', data: { sign: 'KB', salt: '00'.repeat(16), code: '00'.repeat(32), role: 'owner' } },
    { kind: 'person left', data: { sign: 'MT' } },
    { kind: 'keeps', data: { what: 'personal', months: 12 } },
    { kind: 'file kept', data: { what: 'kit', id: 'port-kit', digest: '0'.repeat(64) } },
    { kind: 'device revoked', data: { device: signer.key, why: 'lost' } },
  ]
  for (let i = 0; i < shops; i++) {
    const entries = good.map((entry): Entry => {
      if (draw() > 0.4) return entry
      const data = mutated(entry.data, draw)
      return { ...entry, data: typeof data === 'object' && data !== null ? (data as Entry['data']) : {} }
    })
    const log = await answered(() => sealEntries(entries, how(draw() < 0.5 ? rootKey : signer, 'workshop')))
    if (!log) continue
    const state = workshopState(log, rootKey.key)
    for (const { sentence } of state.passedOver) expect(sentence).toMatch(/\.$/)
    expect(state.passedOver.length).toBeLessThanOrEqual(log.length)
  }
})

test('PR28 entries that name each other in a circle, themselves, or nothing end in an order', () => {
  const one = (id: string, after: readonly string[], of: unknown): SealedEntry => ({
    ...how(signer),
    format: 1,
    device: 'a'.repeat(64),
    seq: 1,
    after,
    kind: 'correction',
    data: { of, data: { data: { vin: 'X' } } },
    id: id.repeat(64),
    signature: '0'.repeat(128),
  })
  const [a, b, c] = ['a', 'b', 'c'].map((id) => id.repeat(64)) as [string, string, string]
  for (const entries of [
    [one('a', [b], b), one('b', [a], a)],
    [one('a', [a], a)],
    [one('a', [c], c), one('b', [], 5), one('c', ['d'.repeat(64)], -1)],
  ]) {
    expect(inCausalOrder(entries)).toHaveLength(entries.length)
    foldJob(inCausalOrder(entries))
    revealed(entries, [])
  }
})
