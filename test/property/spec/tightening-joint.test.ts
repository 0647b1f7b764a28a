import { expect, test } from 'vitest'
import { type Corner, readCorner } from '../../../src/corner/index.ts'
import { checkJoint, positionsOf, stepsOf } from '../../../src/fasten/index.ts'
import { deg, inDegrees } from '../../../src/quantity/index.ts'
import {
  readSpec,
  type Spec,
  specAgainstCorner,
  tighteningJoint,
  turnWithin,
  typedValueDoubts,
} from '../../../src/spec/index.ts'
import { demo, demoCorner } from '../corner/demo.ts'

type Data = Record<string, unknown>
const file = demo('port-unit-07/port-unit-07.spec.json') as Data & {
  tightening: { front: Record<string, Data> }
}
const cornerFile = demo('port-unit-07/front.corner.json') as Data & { joints: Record<string, Data> }
const corner = demoCorner('07')
const sheet = (joint: string, value: Data): Spec => {
  const read = readSpec({ ...file, tightening: { front: { [joint]: value } } })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const cornerWith = (joint: string, more: Data): Corner => {
  const read = readCorner({
    ...cornerFile,
    joints: { ...cornerFile.joints, [joint]: { ...cornerFile.joints[joint], ...more } },
  })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const made = (joint: string, value: Data, of = corner) =>
  tighteningJoint(of, joint, sheet(joint, value).tightening!.front![joint]!)
const bolt = 'lower-front-bolt'
const torque = { procedure: 'torque', low: '180 N·m', high: '200 N·m', condition: 'dry' }

test('SP13 a pivot bolt comes over with its thread, rubber, positions and the middle of its range', () => {
  const joint = made(bolt, { ...torque, position: 'at ride height' })
  expect(joint).toMatchObject({
    kind: 'bolted',
    name: 'lower front pivot bolt',
    strength: '10.9',
    singleUse: false,
    condition: 'dry',
    rubber: 'bonded bush',
    procedure: { kind: 'torque', stated: { torque: 190, floor: 180, ceiling: 200 } },
  })
  expect(joint.thread?.designation).toBe('M16x1.5')
  expect(positionsOf(joint)).toEqual(['ride height', 'after the last move'])
  // Where the sheet is silent the joint's own position counts; "any position" asks for none but the rubber's.
  expect(positionsOf(made(bolt, torque))).toEqual(['ride height', 'after the last move'])
  expect(positionsOf(made(bolt, { ...torque, position: 'any position' }))).toEqual([
    'after the last move',
    'ride height',
  ])
})

test('SP13 a castle nut, stages, a turn and wheel nuts come over, and their steps can be told', () => {
  const nut = made('lower-ball-joint', { procedure: 'castle slot', low: '105 N·m', high: '130 N·m' })
  expect(nut).toMatchObject({ kind: 'tapered stud', procedure: { floor: 105, ceiling: 130, slots: 6 } })
  expect(stepsOf(nut, { hand: null }).map((step) => step.act)).toEqual(['run up', 'pull', 'to slot', 'pin'])
  const nuts = made('wheel-nuts', { procedure: 'stages', stages: ['60 N·m', '160 N·m'] })
  expect(positionsOf(nuts)).toEqual(['on the ground'])
  expect(stepsOf(nuts, { hand: null }).map((step) => step.act)).toEqual(['run up', 'pull', 'pull'])
  const turn = { procedure: 'torque then angle', torque: '60 N·m', angle: '90°' }
  expect(made(bolt, turn).procedure).toMatchObject({ turn: { angle: deg(90), within: deg(5) } })
  expect(made(bolt, { procedure: 'hand snug' }).procedure).toEqual({ kind: 'hand snug' })
  const rod = cornerWith('tie-rod-end', { bush: { bonded: true } })
  const end = { procedure: 'castle slot', low: '45 N·m', high: '60 N·m', position: 'wheels straight' }
  expect(made('tie-rod-end', end, rod).rubber).toBe('tie-rod end')
  expect(made('tie-rod-end', end).rubber).toBe('none')
  expect(made('damper-bottom-bolt', torque).singleUse).toBe(true)
})

test('SP13 how far off a turn may be is the sheet’s own where it says so', () => {
  const turn = { procedure: 'torque then angle', torque: '60 N·m', angle: '90°' }
  const of = (more: Data) =>
    inDegrees(turnWithin(sheet(bolt, { ...turn, ...more }).tightening!.front![bolt]!))
  expect(of({})).toBeCloseTo(5, 12)
  expect(of({ within: '3°' })).toBeCloseTo(3, 12)
})

test('SP13 a thread that cannot be read leaves its value unchecked, and stops nothing', () => {
  const odd = cornerWith(bolt, { thread: 'as fitted' })
  expect(made(bolt, torque, odd).thread).toBeNull()
  expect(typedValueDoubts(sheet(bolt, { ...torque, low: '900 N·m', high: '901 N·m' }), odd)).toEqual([])
})

test('SP14 the demo sheets have nothing against them', () => {
  for (const unit of ['07', '12'] as const) {
    const read = readSpec(demo(`port-unit-${unit}/port-unit-${unit}.spec.json`))
    if (!read.ok) throw new Error('not read')
    expect(typedValueDoubts(read.value, demoCorner(unit)).filter((d) => d.refused)).toEqual([])
  }
})

test('SP14 a value past the proof load is refused, one far too low is a warning', () => {
  const [past] = typedValueDoubts(sheet(bolt, { ...torque, low: '880 N·m', high: '900 N·m' }), corner)
  expect(past).toMatchObject({ joint: bolt, refused: true })
  expect(past!.sentence).toContain('proof load')
  const [low] = typedValueDoubts(sheet(bolt, { ...torque, low: '10 N·m', high: '12 N·m' }), corner)
  expect(low).toMatchObject({ joint: bolt, refused: false })
  expect(typedValueDoubts(sheet('no-such-joint', torque), corner)).toEqual([])
})

test('SP14 SP7 the rule of an adjustable hub on any other joint is refused, in the file and by the joint', () => {
  const hub = {
    procedure: 'seat and back off',
    seat: '30 N·m',
    back: ['60°', '90°'],
    endFloat: ['0.02 mm', '0.1 mm'],
  }
  for (const joint of ['lower-ball-joint', bolt]) {
    const spec = sheet(joint, hub)
    expect(specAgainstCorner(spec, corner).map((p) => p.field)).toEqual([
      `tightening.front.${joint}.procedure`,
    ])
    expect(typedValueDoubts(spec, corner)).toMatchObject([{ joint, refused: true }])
  }
  expect(() => checkJoint(made('lower-ball-joint', hub))).toThrow()
})

test('SP13 an adjustable taper-roller hub is seated and backed off, and nothing else', () => {
  const read = readCorner(demo('port-unit-03/front.corner.json'))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const hub = (value: Data) => made('hub-nut', value, read.value)
  const seat = { procedure: 'seat and back off', seat: '60 N·m', back: ['30°', '60°'] }
  expect(hub(seat)).toMatchObject({ kind: 'adjustable taper-roller hub', procedure: { seat: 60 } })
  expect(checkJoint(hub(seat))).toEqual([])
  const against = (value: Data) =>
    specAgainstCorner(sheet('hub-nut', value), read.value)
      .filter(({ field }) => field.startsWith('tightening'))
      .map(({ wrong }) => wrong)
  expect(against(seat)).toEqual([])
  expect(against({ procedure: 'torque', low: '80 N·m', high: '90 N·m' })).toEqual([
    '“hub-nut” is an adjustable taper-roller hub; “torque” would clamp its bearings.',
  ])
  expect(against({ procedure: 'castle slot', low: '80 N·m', high: '90 N·m' })).toHaveLength(1)
  expect(against({ procedure: 'hand snug' })).toHaveLength(1)
})
