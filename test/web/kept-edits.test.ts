import { afterEach, beforeEach, expect, test } from 'vitest'
import { keepEdits, keptEdits } from '../../src/web/state/kept-edits.ts'
import type { Edit } from '../../src/web/state/messages.ts'
import { textMark } from '../../src/web/state/text-mark.ts'

// The browser's storage as its standard has it; the real one is met in page.test.ts.
let full = false
const kept = new Map<string, string>()
beforeEach(() => {
  full = false
  kept.clear()
  globalThis.localStorage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (full) throw new Error('QuotaExceededError')
      kept.set(key, text)
    },
    removeItem: (key: string) => kept.delete(key),
  } as unknown as Storage
})
afterEach(() => {
  Reflect.deleteProperty(globalThis, 'localStorage')
})

const place = { job: 'a', mark: '1' }
const edits: Edit[] = [
  { kind: 'typed', entry: 3, path: 'readings[0]', label: 'rule', text: '441 mm' },
  {
    kind: 'turned',
    at: '2026-03-11T08:00:00+01:00',
    moves: [{ adjuster: 'a', kind: 'thread', wheel: 'left front', side: 'left', from: 0, to: 0.5 }],
  },
  { kind: 'again', entry: 3, path: 'readings[0]', label: 'rule', text: '440' },
  { kind: 'how', settled: true, proving: false },
  { kind: 'taken', at: '2026-03-11T08:20:00+01:00', settled: true, proving: false },
  {
    kind: 'done',
    at: '2026-03-11T08:30:00+01:00',
    wheel: 'front right',
    joint: 'lower-ball-joint',
    label: 'Run up',
    entry: { kind: 'tightened', data: { stage: 'run up', hand: 'T' } },
  },
  {
    kind: 'done',
    at: '2026-03-11T08:31:00+01:00',
    wheel: 'front right',
    joint: 'lower-ball-joint',
    label: 'Clean',
    entry: null,
  },
]

test('WE9 every kind of edit comes back as it was kept', () => {
  expect(keepEdits(place, edits)).toBe(true)
  expect(keptEdits(place)).toEqual(edits)
})

test('WE9 edits made on another log are not laid on this one', () => {
  keepEdits(place, edits)
  expect(keptEdits({ ...place, mark: '2' })).toEqual([])
  expect(textMark('a')).not.toBe(textMark('b'))
  // FNV-1a, 32 bit: published test vectors of the draft, "" and "a".
  expect([textMark(''), textMark('a')]).toEqual(['811c9dc5', 'e40c292c'])
})

test.each([
  '{',
  '3',
  '[{"kind":"typed"}]',
  '[{"kind":"else"}]',
  '[{"kind":"toString"}]',
  '[null]',
  '[{"kind":"how","settled":true}]',
  '[{"kind":"done","at":"","wheel":"","joint":"","label":"","entry":{"kind":"tightened"}}]',
  '[{"kind":"done","at":"","wheel":"","joint":"","entry":null}]',
])('what is no list of edits is not used: %s', (text) => {
  kept.set('axlewright/1/edits/a/1', text)
  expect(keptEdits(place)).toEqual([])
})

test('a device that refuses to keep says so', () => {
  full = true
  expect(keepEdits(place, edits)).toBe(false)
})

test('no edits leave nothing behind', () => {
  keepEdits(place, edits)
  expect(keepEdits(place, [])).toBe(true)
  expect(kept.size).toBe(0)
})
