import { expect, test } from 'vitest'
import { adapterOf, type Kit, readKit, torqueWrenchesOf } from '../../../src/kit/index.ts'
import { deg, inDegrees } from '../../../src/quantity/index.ts'
import { demo } from '../corner/demo.ts'

type Loose = Record<string, unknown>
const file = demo('port-kit.kit.json') as Loose & {
  wrenches: Record<string, Loose>
  adapters: Record<string, Loose>
}
const kitWith = (wrench: Loose, adapter: Loose = {}): Kit => {
  const read = readKit({
    ...file,
    wrenches: { w: { ...file.wrenches['long-wrench'], ...wrench } },
    adapters: { a: { ...file.adapters['crowfoot-22'], ...adapter } },
  })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

test('KI7 a wrench comes over in SI, with its unit and the last day of its calibration', () => {
  expect(torqueWrenchesOf(kitWith({})).w).toEqual({
    name: 'long clicking wrench',
    kind: 'II A',
    scale: { low: 60, high: 320, step: 1 },
    unit: 'N·m',
    reach: 0.56,
    handSpread: 0.02,
    deviation: 0.04,
    calibratedUntil: '2026-11-18',
  })
  const other = torqueWrenchesOf(
    kitWith({
      kind: 'dial',
      range: ['20 lbf·ft', '150 lbf·ft'],
      resolution: '1 lbf·ft',
      handSpread: '15 mm',
      calibrationDue: undefined,
    }),
  ).w!
  expect(other).toMatchObject({ kind: 'I B', unit: 'lbf·ft', handSpread: 0.015, calibratedUntil: null })
  expect(other.scale.high).toBeCloseTo(203.373, 3)
})

test('KI7 the unit is the one in which the upper end was typed', () => {
  const unit = (high: string) => torqueWrenchesOf(kitWith({ range: ['1 N·m', high] })).w!.unit
  expect(['300 Nm', '2500 lbf·in', '150 lbf·ft', '30 kgf·m', '3000 kgf·cm'].map(unit)).toEqual([
    'N·m',
    'lbf·in',
    'lbf·ft',
    'kgf·m',
    'kgf·cm',
  ])
})

test('KI7 an adapter comes over at its angle; one that the kit lacks is null', () => {
  const adapter = adapterOf(kitWith({}), 'a', deg(45))!
  expect(adapter).toMatchObject({ name: 'open crowfoot, 22 mm', offset: 0.046, offsetSpread: 0.001 })
  expect(inDegrees(adapter.angle)).toBeCloseTo(45, 12)
  expect(inDegrees(adapter.angleSpread)).toBeCloseTo(5, 12)
  const known = adapterOf(kitWith({}, { offsetSpread: '0.5 mm', angleSpread: '2°' }), 'a', deg(0))!
  expect(known.offsetSpread).toBeCloseTo(0.0005, 12)
  expect(inDegrees(known.angleSpread)).toBeCloseTo(2, 12)
  expect(adapterOf(kitWith({}), 'b', deg(0))).toBeNull()
  expect(adapterOf(kitWith({}), 'constructor', deg(0))).toBeNull()
})
