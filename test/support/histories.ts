import { createHash } from 'node:crypto'
import fc from 'fast-check'
import type { Entry, SealedEntry } from '../../src/job/index.ts'

/** What a device does: writes an entry, or takes in what another one knows. */
export type Step =
  | { readonly device: number; readonly writes: Entry }
  | { readonly device: number; readonly takesFrom: number }

const wheels = ['front left', 'front right'] as const
const entry = (kind: string, data: Record<string, unknown>): Entry => ({ kind, data })
const anyEntry: fc.Arbitrary<Entry> = fc.oneof(
  fc.constantFrom('dry', 'oiled', 'seized').map((text) => entry('note', { text })),
  fc
    .record({ front: fc.constantFrom('2.4 bar', '2.5 bar'), rear: fc.constant('3.0 bar') })
    .map((data) => entry('set pressures', data)),
  fc
    .record({
      wheel: fc.constantFrom(...wheels),
      when: fc.constant('before lifting'),
      rule: fc.constant('rule'),
      readings: fc.constantFrom(['431 mm'], ['433 mm']),
    })
    .map((data) => entry('ride height', data)),
  fc
    .record({
      adjuster: fc.constant('tie-rod'),
      wheel: fc.constantFrom(...wheels),
      by: fc.constantFrom('1/4 turn', '-1/4 turn'),
    })
    .map((data) => entry('moved', data)),
  fc
    .record({
      joint: fc.constant('lower-ball-joint'),
      wheel: fc.constantFrom(...wheels),
      to: fc.constantFrom('cracked', 'open'),
    })
    .map((data) => entry('undone', data)),
)

/** What up to three devices do with one job. */
export const anySteps: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: fc.record({ device: fc.nat(2), writes: anyEntry }) },
    { weight: 1, arbitrary: fc.record({ device: fc.nat(2), takesFrom: fc.nat(2) }) },
  ),
  { minLength: 1, maxLength: 14 },
)

/**
 * The entries that come of it. The seals have the right form and a real hash; nobody signed them.
 */
export function historyOf(steps: readonly Step[]): readonly SealedEntry[] {
  const known = [
    new Map<string, SealedEntry>(),
    new Map<string, SealedEntry>(),
    new Map<string, SealedEntry>(),
  ]
  const all = new Map<string, SealedEntry>()
  const counts = [0, 0, 0]
  for (const step of steps) {
    const mine = known[step.device]!
    if ('takesFrom' in step) {
      for (const [id, one] of known[step.takesFrom]!) mine.set(id, one)
      continue
    }
    const named = new Set([...mine.values()].flatMap(({ after }) => after))
    const said = {
      format: 1,
      workshop: 'Harbour yard',
      job: '7-0412',
      device: String(step.device).padStart(64, '0'),
      seq: ++counts[step.device]!,
      after: [...mine.keys()].filter((id) => !named.has(id)).sort(),
      at: '2026-03-14T09:30:00Z',
      offset: '+01:00',
      person: 'KB',
      kind: step.writes.kind,
      data: step.writes.data,
    }
    const id = createHash('sha256').update(JSON.stringify(said)).digest('hex')
    const sealed: SealedEntry = { ...said, id, signature: '0'.repeat(128) }
    mine.set(id, sealed)
    all.set(id, sealed)
  }
  return [...all.values()]
}
