import { expect, test } from 'vitest'
import { instrumentsOf, readKit, startingKit, torqueWrenchesOf } from '../../../src/kit/index.ts'

test('KI8 the kit to start from is read, measures what a first job needs, and claims nothing of its own', () => {
  const kit = readKit(startingKit)
  if (!kit.ok) throw new Error(JSON.stringify(kit.problems))
  const kinds = Object.values(startingKit.gauges).map(({ kind }) => kind)
  expect(kinds).toEqual(expect.arrayContaining(['inclinometer', 'strings', 'rule', 'tape', 'turn plates']))
  expect(instrumentsOf(kit.value)).toHaveLength(kinds.length)
  expect(startingKit.floors).toBeUndefined()
  const wrenches = Object.values(startingKit.wrenches ?? {})
  expect(wrenches.length).toBeGreaterThan(0)
  expect(wrenches.some((wrench) => 'calibrationDue' in wrench || 'calibrated' in wrench)).toBe(false)
  expect(Object.keys(torqueWrenchesOf(kit.value))).toHaveLength(wrenches.length)
})
