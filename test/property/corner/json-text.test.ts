import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readJsonText } from '../../../src/corner/index.ts'
import { law } from '../../support/law.ts'

const problems = (text: string) => {
  const read = readJsonText(text)
  return read.ok ? [] : read.problems
}

law(
  'CO9 JSON text means what the platform says it means',
  fc.tuple(fc.jsonValue(), fc.constantFrom(0, 1, '\t', ' \t')),
  ([value, indent]) => {
    const text = JSON.stringify(value, null, indent)
    expect(readJsonText(text)).toEqual({ ok: true, value: JSON.parse(text) })
    return true
  },
  { runs: 500 },
)

const anyDamage = fc.tuple(
  fc.jsonValue(),
  fc.nat(),
  fc.constantFrom('', '"', ',', '{', '}', '[', ']', ':', '\\', '-', '0', '1.', 'e', '\n', "'", 'x', '﻿'),
  fc.nat(3),
)
law(
  'CO9 damaged JSON text is taken exactly when the platform takes it, unless a member is written twice',
  anyDamage,
  ([value, where, piece, cut]) => {
    const text = JSON.stringify(value)
    const at = where % (text.length + 1)
    const damaged = text.slice(0, at) + piece + text.slice(at + cut)
    let platform: { value: unknown } | null = null
    try {
      platform = { value: JSON.parse(damaged.replace(/^\ufeff/, '')) }
    } catch {
      // Refused there; it must be refused here too.
    }
    const read = readJsonText(damaged)
    if (read.ok) expect({ value: read.value }).toEqual(platform)
    else if (platform !== null) expect(read.problems.every((p) => p.wrong.includes('twice'))).toBe(true)
    return true
  },
  { runs: 3000 },
)

test('CO9 a member written twice is told, each with its place', () => {
  const found = problems('{\n "a": 1,\n "b": {"c": 1, "c": 2},\n "a": 3\n}')
  expect(found.map((p) => p.field)).toEqual(['line 3, column 16', 'line 4, column 2'])
})

test.each([
  ['', 'line 1, column 1'],
  ['{"a": 1,}', 'line 1, column 9'],
  ['{"a": 352 mm}', 'line 1, column 11'],
  ['{"a": 12mm}', 'line 1, column 9'],
  ['{\r\n"a": tru}', 'line 2, column 6'],
  ['{"a": "x}\n', 'line 1, column 10'],
  ['[1, 2', 'line 1, column 6'],
  ['[1] 2', 'line 1, column 5'],
  ['{"a": 01}', 'line 1, column 8'],
  ['{"a": .5}', 'line 1, column 7'],
  ['{"a": NaN}', 'line 1, column 7'],
  ["{'a': 1}", 'line 1, column 2'],
  ['["\\x"]', 'line 1, column 3'],
  ['["a\tb"]', 'line 1, column 4'],
])('CO9 broken JSON %j is told at %s', (text, field) => {
  const found = problems(text)
  expect(found).toHaveLength(1)
  expect(found[0]!.field).toBe(field)
  expect(found[0]!.right.length).toBeGreaterThan(2)
})

test('CO9 a file nested without end is refused, not run into the ground', () => {
  expect(problems('['.repeat(200_000))).toHaveLength(1)
})

test('CO9 a member named __proto__ stays a member', () => {
  const read = readJsonText('{"__proto__": {"polluted": true}}')
  expect(read.ok && Object.hasOwn(read.value as object, '__proto__')).toBe(true)
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
})
