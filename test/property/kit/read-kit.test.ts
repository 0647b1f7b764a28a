import { expect, test } from 'vitest'
import { floorMapOf, instrumentsOf, type Kit, readKit, writeKit } from '../../../src/kit/index.ts'
import { deg, mm } from '../../../src/quantity/index.ts'
import { demo, spoil } from '../corner/demo.ts'

const file = () => demo('port-kit.kit.json')
const kitOf = (json: unknown): Kit => {
  const read = readKit(json)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const fields = (json: unknown) => {
  const read = readKit(json)
  return read.ok ? [] : read.problems.map((p) => p.field)
}

test('KI1 the demo kit is read and written as typed', () => {
  expect(writeKit(kitOf(file()))).toEqual(file())
})

test('KI2 a kit with many faults tells them all at once', () => {
  const json = file()
  spoil(json, ['gauges', 'rule', 'resolution'], '0.5')
  spoil(json, ['gauges', 'rule', 'acuracy'], '1 mm')
  spoil(json, ['gauges', 'dial', 'kind'], 'dail indicator')
  spoil(json, ['gauges', 'tape', 'accuracy'], '0.0005')
  spoil(json, ['gauges', 'inclinometer', 'zeroing'], 'sometimes')
  spoil(json, ['gauges', 'strings', 'length'], '0 m')
  spoil(json, ['floors', 'bay-2', 'heights', 'rear left'], undefined)
  spoil(json, ['wrenches', 'long-wrench', 'range'], ['60 N·m'])
  spoil(json, ['wrenches', 'short-wrench', 'range'], ['100 N·m', '10 N·m'])
  expect(fields(json).sort()).toEqual(
    [
      'wrenches.short-wrench.range',
      'gauges.rule.resolution',
      'gauges.rule.acuracy',
      'gauges.dial.kind',
      'gauges.tape.accuracy',
      'gauges.inclinometer.zeroing',
      'gauges.strings.length',
      'floors.bay-2.heights.rear left',
      'wrenches.long-wrench.range',
    ].sort(),
  )
})

test('KI2 a wrench whose scale runs backwards is told', () => {
  expect(fields(spoil(file(), ['wrenches', 'long-wrench', 'range'], ['320 N·m', '60 N·m']))).toEqual([
    'wrenches.long-wrench.range',
  ])
})

test('KI3 gauges come over with their names, kinds and SI numbers', () => {
  const instruments = instrumentsOf(kitOf(file()))
  expect(instruments.find((i) => i.id === 'inclinometer')).toEqual({
    id: 'inclinometer',
    kind: 'inclinometer',
    name: 'digital inclinometer on the rim',
    resolution: deg(0.05),
    placing: deg(0.05),
    accuracy: deg(0.05),
    zeroError: deg(0.05),
    zeroing: 'by reversal',
  })
  expect(instruments.find((i) => i.id === 'tape')).toMatchObject({ resolution: mm(1), accuracy: 0.0005 })
  expect(instruments).toHaveLength(6)
})

test('KI4 a bay’s floor comes over; one that is not there is null', () => {
  const kit = kitOf(file())
  expect(floorMapOf(kit, 'bay-2')).toEqual({
    id: 'bay-2',
    name: 'bay 2',
    heights: { 'front left': 0, 'front right': mm(3), 'rear left': mm(1.5), 'rear right': mm(4) },
    spread: { 'front left': mm(0.5), 'front right': mm(0.5), 'rear left': mm(0.5), 'rear right': mm(0.5) },
    found: 'with a level',
  })
  expect(floorMapOf(kit, 'bay-9')).toBeNull()
  expect(floorMapOf(kit, 'constructor')).toBeNull()
})
