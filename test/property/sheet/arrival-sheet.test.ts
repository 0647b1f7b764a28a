import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Entry } from '../../../src/job/index.ts'
import { arrivalSheetFrom } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { law } from '../../support/law.ts'

const bus = demoSources('07')
const opened = bus.job.entries[0]!
const at = '2026-03-10T06:12:00Z'
const sheetOf = (...more: Entry[]) =>
  arrivalSheetFrom(
    { ...bus, job: { ...bus.job, entries: [opened, ...more] } },
    { offset: '+01:00', today: '2026-03-10' },
  )
const arrival: Entry = {
  kind: 'arrival',
  data: { asked: 'find the knock', mileage: '148 200 km', cautions: ['gas strut', 'ladder on the roof'] },
  at,
}
const height = (wheel: string): Entry => ({
  kind: 'ride height',
  data: { wheel, when: 'before lifting', rule: 'rule', readings: ['441 mm'] },
})
const wheels = ['front left', 'front right', 'rear right', 'rear left'] as const

test('SH50 what is noted stands as it was typed, on the clock of whoever reads; a correction says that it is one', () => {
  expect(sheetOf(arrival).arrival).toEqual({
    entry: 1,
    of: 1,
    words: 'noted 07:12',
    texts: {
      asked: 'find the knock',
      mileage: '148 200 km',
      'cautions[0]': 'gas strut',
      'cautions[1]': 'ladder on the roof',
    },
  })
  const correction: Entry = {
    kind: 'correction',
    data: { of: 1, data: { mileage: '148 300 km' } },
    at: '2026-03-11T08:00:00+02:00',
  }
  const after = sheetOf(arrival, correction).arrival!
  expect(after.words).toBe('corrected 2026-03-11 08:00')
  expect(after.texts['mileage']).toBe('148 300 km')
})

test('SH50 a sealed entry is named by its id, with whose hand it was, on the clock of its device; erased is said', () => {
  const seal = { format: 1, workshop: 'w', job: 'j', device: 'd', seq: 1, after: [], signature: '' }
  const plate = `private:${'a'.repeat(64)}`
  const sealed = {
    ...arrival,
    data: { ...arrival.data, plate },
    at,
    ...seal,
    offset: '-02:00',
    person: 'KB',
    id: 'f'.repeat(64),
  }
  const told = sheetOf(sealed as Entry).arrival!
  expect(told.of).toBe('f'.repeat(64))
  expect(told.words).toBe('noted 04:12 by KB')
  expect(told.texts['plate']).toBe('erased')
})

const some = fc.subarray([...wheels])
law(
  'SH51 what is noted is not called missing, and what is not noted is, wheel by wheel',
  some,
  (measured) => {
    const { missing, wheels: told } = sheetOf(arrival, ...measured.map(height))
    const line = missing.find(({ place }) => place === 'heights')
    const names = told.filter(({ height: one }) => one === null).map(({ wheel }) => wheel)
    if (names.length === 0) return line === undefined
    return (
      line !== undefined &&
      wheels.every((wheel) => names.length === 4 || names.includes(wheel) === line.what.includes(wheel))
    )
  },
)

test('SH51 every line says why it matters; once it is lifted, heights before lifting are not asked for any more', () => {
  const empty = sheetOf()
  expect(empty.missing.map(({ what }) => what)).toEqual([
    'What the owner asked for',
    'What is agreed, and up to which limit',
    'Whether it may be driven for a first test',
    'VIN',
    'Tyre pressures as found',
    'Tread, three depths a wheel',
    'Pressures as set',
    'Ride heights before it is lifted',
  ])
  expect(empty.missing.every(({ why }) => why.length > 10)).toBe(true)
  const lifted = sheetOf({ kind: 'carried', data: { axle: 'front', by: 'jack' } })
  expect(lifted.heightWhen).toBe('settled')
  const undone = (to: string): Entry => ({
    kind: 'undone',
    data: { joint: 'wheel-nuts', wheel: 'front left', to },
  })
  expect(sheetOf(undone('cracked')).heightWhen).toBe('before lifting')
  expect(sheetOf(undone('open')).heightWhen).toBe('settled')
  expect(lifted.missing.at(-1)).toMatchObject({ what: 'Ride heights' })
  expect(lifted.next.sentence).not.toContain('before it is lifted')
})

test('SH52 the next thing is one: what was told, the pressures, the heights while there are any, then the findings', () => {
  const pressures: Entry = { kind: 'set pressures', data: { front: '325 kPa', rear: '400 kPa' } }
  const steps = [[], [arrival], [arrival, pressures], [arrival, pressures, ...wheels.map(height)]]
  expect(steps.map((log) => sheetOf(...log).next.place)).toEqual(['told', 'pressures', 'heights', null])
  expect(sheetOf(arrival, pressures).next.sentence).toBe(
    'Measure the ride heights now: once it is lifted they are gone.',
  )
})

test('SH52 cautions come from what stores energy in the corner models; what was said stays, whoever offers it', () => {
  const said = sheetOf(arrival).cautions.filter((one) => one.said)
  expect(said.map(({ words }) => words)).toEqual(['gas strut', 'ladder on the roof'])
  const torsion = {
    ...bus,
    corners: {
      ...bus.corners,
      front: {
        ...bus.corners.front,
        parts: { bar: { kind: 'spring', stores: 'torsion bar', name: 'torsion bar' } },
      },
    },
  }
  const offered = arrivalSheetFrom(torsion as never).cautions.map(({ words }) => words)
  expect(offered).toContain('torsion bar')
  expect(offered).not.toContain('coil spring')
})

// By the weights of 49 CFR 565.15, Table IV, a VIN of ones sums to 89: 8 · 11 + 1, so its check digit is 1.
test('SH50 a VIN whose check digit does not agree is a hint', () => {
  const vin = (text: string) => sheetOf({ ...arrival, data: { ...arrival.data, vin: text } })
  expect(vin('11111111111111111').vinHint).toBe(null)
  expect(vin('11111111211111111').vinHint).toContain('would be 1')
})
