import { expect, test } from 'vitest'
import { type Kit, readKit, thresholdFor, wearLimitsFor, writeKit } from '../../../src/kit/index.ts'
import { readSpec, type Spec, thresholdFaults, writeSpec } from '../../../src/spec/index.ts'
import { demo } from '../corner/demo.ts'

type Loose = Record<string, unknown>
const kitWith = (members: Loose): Kit => {
  const read = readKit({ ...(demo('port-kit.kit.json') as Loose), ...members })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const specFile = demo('port-unit-07/port-unit-07.spec.json') as Loose & { wear: Loose[] }
const specWith = (members: Loose): Spec => {
  const read = readSpec({ ...specFile, ...members })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const ball = { axle: 'front', joint: 'lower-ball-joint', kind: 'tapered stud, castle nut' } as const
const own = { what: 'ball joints', jointKind: ball.kind, limit: '1 mm', source: 'our own rule' }

test('KI5 the workshop’s own limit of wear comes first, then the maker’s, then an inspection’s', () => {
  const kit = kitWith({ thresholds: { wear: [own, { ...own, jointKind: 'wheel nuts' }] } })
  const wear = specFile.wear[0]!
  const spec = specWith({
    wear: [
      { ...wear, whose: 'the inspection', limit: '3 mm' },
      { ...wear, limit: '2.5 mm' },
      { ...wear, whose: 'the maker', limit: '2 mm' },
      { ...wear, whose: 'the workshop', limit: '1.2 mm' },
      { ...wear, axle: 'rear', whose: 'the workshop', limit: '0.1 mm' },
      { ...wear, joint: 'tie-rod-end', whose: 'the workshop', limit: '0.2 mm' },
    ],
  })
  expect(wearLimitsFor({ spec, kit, ...ball }).map((w) => [w.text, w.whose])).toEqual([
    ['1 mm', 'the workshop'],
    ['1.2 mm', 'the workshop'],
    ['2 mm', 'the maker'],
    ['3 mm', 'the inspection'],
    ['2.5 mm', 'not said'],
  ])
})
test('KI5 where nobody typed a limit there is none', () => {
  expect(wearLimitsFor({ spec: null, kit: null, ...ball })).toEqual([])
  expect(wearLimitsFor({ spec: specWith({}), kit: kitWith({}), ...ball, joint: 'rack-bolts' })).toEqual([])
})

test('KI6 the stricter of two thresholds counts', () => {
  const kit = kitWith({ thresholds: { inside: '90 %' } })
  const strict = specWith({ thresholds: { inside: '99 %' } })
  const loose = specWith({ thresholds: { inside: '80 %' } })
  expect(thresholdFor({ spec: strict, kit })).toEqual({ text: '99 %', value: 0.99 })
  expect(thresholdFor({ spec: loose, kit })?.text).toBe('90 %')
  expect(thresholdFor({ spec: loose, kit: null })?.text).toBe('80 %')
  expect(thresholdFor({ spec: null, kit })?.text).toBe('90 %')
  expect(thresholdFor({ spec: specWith({}), kit: kitWith({}) })).toBeNull()
})

test('SP12 a threshold below an even chance, or of certainty, is a fault in both files', () => {
  for (const [inside, faults] of [
    ['49.9 %', 1],
    ['50 %', 0],
    ['99.9 %', 0],
    ['100 %', 1],
  ] as const) {
    const spec = readSpec({ ...specFile, thresholds: { inside } })
    const kit = readKit({ ...(demo('port-kit.kit.json') as Loose), thresholds: { inside } })
    expect(thresholdFaults(inside, 'thresholds.inside')).toHaveLength(faults)
    for (const read of [spec, kit])
      expect(read.ok ? [] : read.problems.map((p) => p.field)).toEqual(
        new Array(faults).fill('thresholds.inside'),
      )
  }
  const none = readKit({ ...(demo('port-kit.kit.json') as Loose), thresholds: { inside: 'sure' } })
  expect(none.ok ? [] : none.problems).toHaveLength(1)
})

test('KI1 SP1 the new members are written as typed', () => {
  const members = {
    sockets: ['24 mm', '15/16 in'],
    thresholds: { inside: '97,5 %', jurisdiction: 'the island’s own vehicle office, invented', wear: [own] },
    wrenches: {
      w: {
        name: 'w',
        kind: 'clicking',
        range: ['20 N·m', '200 N·m'],
        resolution: '1 N·m',
        accuracy: '4 %',
        lever: '400 mm',
        calibrated: '2025-11-18',
        calibrationDue: '2026-11-18',
      },
    },
  }
  expect(writeKit(kitWith(members))).toMatchObject(members)
  expect(writeSpec(specWith({ thresholds: { inside: '95 %' } }))).toMatchObject({
    thresholds: { inside: '95 %' },
  })
})
