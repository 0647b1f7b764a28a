import { expect, test } from 'vitest'
import type { Entry } from '../../../src/job/index.ts'
import { digestOf, modelsOfLog, type Snapshot } from '../../../src/proof/index.ts'
import { refuses } from '../../support/law.ts'

const opened: Entry = {
  kind: 'opened',
  data: { number: '1', vehicle: 'v', complaint: 'c', corners: { front: 'f' }, spec: 's' },
}
const file = (what: Snapshot['what'], json: { readonly id: string; readonly n: number }): Snapshot => ({
  what,
  digest: digestOf(what, json),
  file: json,
})
const first = file('spec', { id: 's', n: 1 })
const second = file('spec', { id: 's', n: 2 })
const worksWith = (digest: string): Entry => ({ kind: 'works with', data: { role: 'spec', id: 's', digest } })
const spec = (entries: readonly Entry[], pinned: readonly Snapshot[]) =>
  modelsOfLog(entries, pinned).find(({ role }) => role === 'spec')

test('PR18 the version that the log names last counts, among however many are pinned', () => {
  expect(spec([opened, worksWith(first.digest)], [first, second])?.snapshot).toBe(first)
  expect(spec([opened, worksWith(first.digest), worksWith(second.digest)], [first, second])?.snapshot).toBe(
    second,
  )
  expect(spec([opened, worksWith('0'.repeat(64))], [first])?.snapshot).toBeNull()
})

test('PR18 without such a word the only version counts, and two are refused', () => {
  expect(spec([opened], [first])?.snapshot).toBe(first)
  expect(spec([opened], [])).toMatchObject({ id: 's', digest: null, snapshot: null })
})

refuses('two-versions', () => modelsOfLog([opened], [first, second]))

test('PR18 a file that was not named when the job was opened counts once the log works with it', () => {
  const kit = file('kit', { id: 'k', n: 1 })
  const entry: Entry = { kind: 'works with', data: { role: 'kit', id: 'k', digest: kit.digest } }
  expect(modelsOfLog([opened], [kit]).some(({ role }) => role === 'kit')).toBe(false)
  expect(modelsOfLog([opened, entry], [kit]).find(({ role }) => role === 'kit')?.snapshot).toBe(kit)
})
