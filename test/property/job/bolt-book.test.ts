import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Corner, readCorner } from '../../../src/corner/index.ts'
import { type BoltLine, boltBook, type Entry, foldJob } from '../../../src/job/index.ts'
import { type Kit, readKit } from '../../../src/kit/index.ts'
import { readSpec, type Spec } from '../../../src/spec/index.ts'
import { law } from '../../support/law.ts'
import { demo } from '../corner/demo.ts'

type Data = Record<string, unknown>
function whole<T>(reading: { ok: true; value: T } | { ok: false; problems: unknown }): T {
  if (reading.ok) return reading.value
  throw new Error(JSON.stringify(reading.problems))
}
// Values of the invented demo: pivot bolts 180-200 N·m at ride height, lower ball joint 105-130 N·m by castle slot.
const cornerFile = demo('../test/formats/frozen/format-1.corner.json') as {
  joints: Record<string, Data>
} & Data
const specFile = demo('../test/formats/frozen/format-1.spec.json') as Data & {
  tightening: { front: Record<string, Data> }
}
const corner: Corner = whole(readCorner(cornerFile))
const spec: Spec = whole(readSpec(specFile))
const kitFile = demo('port-kit.kit.json') as Data & { wrenches: Record<string, Data> }
const dated = (due: string | undefined): Kit =>
  whole(
    readKit({
      ...kitFile,
      wrenches: {
        ...kitFile.wrenches,
        'long-wrench': { ...kitFile.wrenches['long-wrench'], calibrationDue: due },
      },
    }),
  )
const kit = dated('2026-11-18')

const entry = (kind: string, data: Data, at = '2026-03-10T09:00:00+01:00'): Entry => ({ kind, data, at })
const fl = { wheel: 'front left' }
const height = entry('ride height', { ...fl, when: 'settled', rule: 'rule', readings: ['440 mm'] })
const tightened = (joint: string, stage: string, more: Data = {}) =>
  entry('tightened', { ...fl, joint, stage, hand: 'T', ...more })
const undone = (joint: string, to = 'open') => entry('undone', { ...fl, joint, to })
const checked = (joint: string, more: Data = {}) =>
  entry('checked', {
    ...fl,
    joint,
    by: 'another person',
    how: 'looked at and felt',
    passed: true,
    hand: 'K',
    ...more,
  })
const pinned = (joint: string, more: Data = {}) =>
  entry('pinned', { ...fl, joint, pin: 'new', legsBent: true, hand: 'T', ...more })
const moved = entry('moved', { adjuster: 'lower-front-eccentric', wheel: 'front left', by: '5°' })
const bolt = 'lower-front-bolt'
const ball = 'lower-ball-joint'
const nuts = 'wheel-nuts'
const pivot = { torque: '190 N·m', position: ['at ride height'] }
const final = tightened(bolt, 'final', pivot)

interface Beside {
  readonly corner?: Corner
  readonly spec?: Spec | null
  readonly kit?: Kit | null
}
const book = (log: readonly Entry[], beside: Beside = {}) =>
  boltBook({
    state: foldJob(log),
    corners: { front: beside.corner ?? corner, rear: null },
    spec: beside.spec === undefined ? spec : beside.spec,
    kit: beside.kit === undefined ? kit : beside.kit,
  })
const line = (log: readonly Entry[], joint: string, beside: Beside = {}): BoltLine =>
  book(log, beside).find((l) => l.joint === joint && l.wheel === 'front left')!
const said = (log: readonly Entry[], joint: string, beside: Beside = {}) => {
  const { state, toDo } = line(log, joint, beside)
  return [state, ...toDo.map(({ rule }) => rule)]
}
const withJoint = (joint: string, more: Data): Corner =>
  whole(
    readCorner({
      ...cornerFile,
      joints: { ...cornerFile.joints, [joint]: { ...cornerFile.joints[joint], ...more } },
    }),
  )
const withTightening = (joint: string, value: Data): Spec =>
  whole(
    readSpec({
      ...specFile,
      tightening: { front: { ...specFile.tightening.front, [joint]: value } },
    }),
  )

test('JO21 every joint of every wheel with a corner model has one line, and an untouched one is done', () => {
  const lines = book([])
  // The rack's bolts to the frame are the axle's, and stand once.
  const ofAxle = Object.values(corner.joints).filter((j) => j.joins.join(' ') === 'rack frame')
  expect(ofAxle).toHaveLength(1)
  expect(lines).toHaveLength(2 * Object.keys(corner.joints).length - ofAxle.length)
  expect(lines.every((l) => l.state === 'closed' && l.done && l.toDo.length === 0)).toBe(true)
  expect(boltBook({ state: foldJob([final]), corners: { front: null, rear: null }, spec, kit })).toEqual([])
})

test('JO21 what is not done stands first, the furthest from done at the top, untouched joints last', () => {
  const log = [
    height,
    undone(ball),
    tightened('tie-rod-end', 'started'),
    undone('damper-bottom-bolt', 'cracked'),
    undone('damper-top-nut', 'on a few threads'),
    final,
    tightened('upper-front-bolt', 'run up', { fastener: 'new' }),
    tightened('upper-rear-bolt', 'final', {
      torque: '120 N·m',
      position: ['at ride height'],
      fastener: 'new',
    }),
  ]
  expect(
    book(log)
      .filter((l) => l.state !== 'closed')
      .map((l) => [l.joint, l.state, l.done]),
  ).toEqual([
    [ball, 'open', false],
    // The wheel is in the way of the ball joint.
    [nuts, 'open', false],
    ['damper-top-nut', 'retained', false],
    ['damper-bottom-bolt', 'cracked', false],
    ['tie-rod-end', 'started', false],
    ['upper-front-bolt', 'run up', false],
    [bolt, 'final', false],
    ['upper-rear-bolt', 'final', true],
  ])
  const states = book(log).map((l) => l.state === 'closed')
  expect(states.lastIndexOf(false)).toBeLessThan(states.indexOf(true))
})

test('JO21 a joint that was never opened, but has something to put right, stands before what is done', () => {
  const log = [
    tightened('tie-rod-lock-nut', 'final', { torque: '65 N·m' }),
    entry('deviation', { ...fl, joint: 'rack-bolts', what: 'rounded head' }),
  ]
  expect(
    book(log)
      .slice(0, 2)
      .map((l) => [l.joint, l.state, l.done]),
  ).toEqual([
    ['rack-bolts', 'closed', false],
    ['tie-rod-lock-nut', 'final', true],
  ])
})

test('JO21 the line says what is asked for, whose value it is and what carries which letter', () => {
  const { required, letter, name } = line([], bolt)
  expect(required).toMatchObject({
    procedure: 'torque',
    said: '180 N·m to 200 N·m, dry, at ride height',
    source: 'invented for the demo',
    secondCheck: true,
    positions: ['at ride height'],
    fastener: 'inspect',
    pin: null,
  })
  expect([letter, name]).toEqual(['A', 'lower front pivot bolt'])
  expect(line([], ball).required.said).toBe('105 N·m, then forward to the next slot, never past 130 N·m, dry')
  expect(line([], ball).required.pin).toBe('new')
  expect(line([], nuts).required.said).toBe('60 N·m, then 160 N·m, on the ground')
  expect(line([], 'rack-bolts').letter).toBeNull()
})

test('JO34 a joint of the axle has one line, and entries that name either wheel count for it', () => {
  const rack = withTightening('rack-bolts', { procedure: 'torque', low: '50 N·m', high: '60 N·m' })
  const of = (log: readonly Entry[]) => book(log, { spec: rack }).filter((l) => l.joint === 'rack-bolts')
  expect(of([]).map((l) => [l.place, l.wheel, l.wheels])).toEqual([
    ['front axle', 'front left', ['front left', 'front right']],
  ])
  const right = (one: Entry): Entry => ({ ...one, data: { ...one.data, wheel: 'front right' } })
  const open = undone('rack-bolts')
  const done = tightened('rack-bolts', 'final', { torque: '55 N·m' })
  for (const log of [
    [open, done],
    [right(open), done],
    [open, right(done)],
    [right(open), right(done)],
  ]) {
    expect(of(log).map((l) => [l.state, l.done])).toEqual([['final', true]])
    expect(of(log.slice(0, 1)).map((l) => [l.state, l.done])).toEqual([['open', false]])
  }
  expect(of([right(open)])[0]!.toDo[0]!.sentence).toContain('of the front axle')
  // Two values under two names are still two values.
  const other = right(tightened('rack-bolts', 'final', { torque: '59 N·m' }))
  expect(of([open, done, other])[0]!.toDo.map(({ rule }) => rule)).toContain('two values')
  // An opened joint of one wheel opens nothing on the axle's line.
  expect(of([undone(bolt)])[0]!.state).toBe('closed')
})

test('JO34 a part that the axle has once, and a joint that stands on one side, are found in the model', () => {
  const parts = (cornerFile as unknown as { parts: Record<string, Data> }).parts
  const joints = cornerFile.joints
  const drawn = (more: Data, joint: Data): Corner =>
    whole(
      readCorner({
        ...cornerFile,
        parts: { ...parts, beam: { kind: 'axle beam', ...more } },
        joints: { ...joints, 'beam-bolt': { kind: 'bolt', joins: ['beam', 'frame'], ...joint } },
      }),
    )
  const places = (model: Corner) =>
    book([], { corner: model })
      .filter((l) => l.joint === 'beam-bolt')
      .map((l) => l.place)
  expect(places(drawn({}, {}))).toEqual(['front axle'])
  expect(places(drawn({ kind: 'shield' }, {}))).toEqual(['front left', 'front right'])
  expect(places(drawn({ kind: 'shield', span: 'axle' }, {}))).toEqual(['front axle'])
  expect(places(drawn({}, { side: 'right' }))).toEqual(['front right'])
})

test('JO24 I7 a bush of the axle asks for the height of both wheels', () => {
  const bonded = withJoint('rack-bolts', { bush: { bonded: true }, at: 'tie-inner' })
  const sheet = withTightening('rack-bolts', { procedure: 'torque', low: '50 N·m', high: '60 N·m' })
  const rack = tightened('rack-bolts', 'final', { torque: '55 N·m', position: ['at ride height'] })
  const other = { ...height, data: { ...height.data, wheel: 'front right' } }
  const at = (log: readonly Entry[]) => said(log, 'rack-bolts', { corner: bonded, spec: sheet })
  expect(at([height, rack])).toEqual(['run up', 'I7'])
  expect(at([height, other, rack])).toEqual(['final'])
})

test('JO28 the torque of a castle nut is that of its floor: the slot has none', () => {
  const floor = (torque: string, more: Data = {}) => tightened(ball, 'stage', { number: 1, torque, ...more })
  const slot = tightened(ball, 'final')
  expect(said([slot, pinned(ball)], ball)).toEqual(['run up', 'value', 'I21'])
  expect(said([floor('105 N·m'), slot, pinned(ball)], ball)).toEqual(['final', 'I21'])
  expect(said([floor('90 N·m'), slot, pinned(ball)], ball)).toEqual(['run up', 'value', 'I21'])
  expect(line([floor('90 N·m'), slot, pinned(ball)], ball).toDo[0]!.sentence).toContain('90 N·m')
  // Read on a wrench that does not reach down to it.
  const far = floor('105 N·m', { wrench: 'short-wrench', setting: '105 N·m' })
  expect(said([far, slot, pinned(ball)], ball)).toEqual(['run up', 'wrench', 'I21'])
  // A stage of another procedure is no value.
  const stage = tightened(bolt, 'stage', { number: 1, torque: '190 N·m' })
  expect(said([height, stage, tightened(bolt, 'final', { position: ['at ride height'] })], bolt)[1]).toBe(
    'value',
  )
})

test('JO27 what drops a wheel is looked at twice: by its kind, or because the model says so', () => {
  const asks = (more: Data) =>
    line([], 'rack-bolts', { corner: withJoint('rack-bolts', more) }).required.secondCheck
  expect(asks({})).toBe(false)
  expect(asks({ red: true })).toBe(true)
  for (const kind of ['axle nut', 'ball-joint bolts', 'ball-joint rivets']) expect(asks({ kind })).toBe(true)
  const parts = (cornerFile as unknown as { parts: Record<string, Data> }).parts
  const hub = whole(
    readCorner({
      ...cornerFile,
      parts: { ...parts, hub: { kind: 'hub' } },
      joints: {
        ...cornerFile.joints,
        'hub-nut': { kind: 'adjustable taper-roller hub', joins: ['hub', 'knuckle'] },
      },
    }),
  )
  expect(line([], 'hub-nut', { corner: hub }).required.secondCheck).toBe(true)
})

test('JO33 each open thing says what puts it right', () => {
  const mends = (log: readonly Entry[], joint: string) =>
    line(log, joint).toDo.map(({ rule, mend }) => [rule, mend])
  const at = (more: Data) => [height, tightened(bolt, 'final', { ...pivot, ...more })]
  expect(mends([undone(bolt)], bolt)).toEqual([['not closed', 'tighten']])
  expect(mends(at({ torque: '150 N·m' }), bolt)[0]).toEqual(['value', 'tighten'])
  expect(mends(at({ torque: '250 N·m' }), bolt)[0]).toEqual(['value', 'begin anew'])
  expect(mends(at({ position: ['hanging'] }), bolt)[0]).toEqual(['I7', 'begin anew'])
  expect(mends([final], bolt)[0]).toEqual(['I7', 'elsewhere'])
  expect(mends(at({ condition: 'oiled' }), bolt)[0]).toEqual(['condition', 'begin anew'])
  expect(mends(at({}), bolt)).toEqual([['I21', 'look']])
  expect(mends([...at({}), checked(bolt, { passed: false })], bolt)[0]).toEqual(['I21', 'tighten'])
  expect(mends([tightened(ball, 'final', { torque: '110 N·m' })], ball)[0]).toEqual(['I9', 'pin'])
  const nut = [
    tightened(ball, 'final', { torque: '110 N·m' }),
    pinned(ball),
    checked(ball, { passed: false }),
  ]
  expect(mends(nut, ball)[0]).toEqual(['I21', 'begin anew'])
})

test('JO22 a joint goes open, started, run up, final, checked', () => {
  const log = [
    undone(bolt),
    height,
    tightened(bolt, 'started'),
    tightened(bolt, 'run up'),
    final,
    checked(bolt),
  ]
  expect([2, 3, 4, 5, 6].map((n) => line(log.slice(0, n), bolt).state)).toEqual([
    'open',
    'started',
    'run up',
    'final',
    'checked',
  ])
  expect(line(log, bolt).toDo).toEqual([])
  expect(line(log, bolt).done).toBe(true)
  expect(said(log.slice(0, 2), bolt)).toEqual(['open', 'not closed'])
  expect(said(log.slice(0, 4), bolt)).toEqual(['run up', 'not final'])
})

test('JO22 a joint that was run up is named as that, and what to do is its value', () => {
  const [todo] = line(
    [undone('rack-bolts'), tightened('damper-bottom-bolt', 'run up', { fastener: 'new' })],
    'damper-bottom-bolt',
  ).toDo
  expect(todo!.sentence).toContain('not final')
  expect(todo!.remedy).toContain('70 N·m to 80 N·m')
  expect(todo!.entries).toEqual([1])
})

test('JO23 a bolt that carries an adjuster stays run up until the last move; a move after its final opens it', () => {
  expect(said([height, moved], bolt)).toEqual(['run up', 'not final'])
  expect(line([height, moved], bolt).toDo[0]!.sentence).toContain('adjuster')
  const done = [height, moved, final, checked(bolt)]
  expect(said(done, bolt)).toEqual(['checked'])
  const again = line([...done, moved], bolt)
  expect([again.state, again.done, ...again.toDo.map((t) => t.rule)]).toEqual(['run up', false, 'fell'])
  expect(again.toDo[0]!.entries).toEqual([3, 4])
  expect(again.record.fell).toEqual({ was: 'checked', entry: 3, by: 4 })
  expect(said([...done, moved, final], bolt)).toEqual(['final', 'I21'])
  expect(said([...done, moved, final, checked(bolt)], bolt)).toEqual(['checked'])
  // Another adjuster, or the same on the other wheel, opens nothing.
  const other = entry('moved', { adjuster: 'lower-rear-eccentric', wheel: 'front left', by: '5°' })
  const right = entry('moved', { adjuster: 'lower-front-eccentric', wheel: 'front right', by: '5°' })
  expect(said([...done, other, right], bolt)).toEqual(['checked'])
  expect(said([...done, other], 'lower-rear-bolt')).toEqual(['run up', 'not final'])
})

test('JO23 a lock nut is a joint of its own: a toe move after it was final opens it', () => {
  const lock = tightened('tie-rod-lock-nut', 'final', { torque: '65 N·m' })
  const toe = entry('moved', { adjuster: 'tie-rod', wheel: 'front left', by: '1/12 turn' })
  expect(said([toe, lock], 'tie-rod-lock-nut')).toEqual(['final'])
  expect(said([toe, lock, toe], 'tie-rod-lock-nut')).toEqual(['run up', 'fell'])
})

test('JO24 I7 a bonded bush is final only at ride height, and that height is on record', () => {
  const at = (position: string[] | undefined) =>
    said([height, tightened(bolt, 'final', { torque: '190 N·m', position })], bolt)
  expect(at(['hanging'])).toEqual(['run up', 'I7', 'I21'])
  expect(at(undefined)).toEqual(['run up', 'I7', 'I21'])
  expect(at(['on the ground', 'at ride height'])).toEqual(['final', 'I21'])
  expect(said([final], bolt)).toEqual(['run up', 'I7', 'I21'])
  expect(said([{ ...height, data: { ...height.data, when: 'hanging' } }, final], bolt)[1]).toBe('I7')
  expect(said([{ ...height, data: { ...height.data, wheel: 'front right' } }, final], bolt)[1]).toBe('I7')
  // Measured after it was tightened, as it stands, serves as well.
  expect(said([final, height], bolt)).toEqual(['final', 'I21'])
})

test('JO24 I7 a height from before the joint was opened, or before a part was renewed, does not count', () => {
  const renewed = entry('part renewed', { part: 'coil', wheels: ['front left'] })
  expect(said([height, undone(bolt), final], bolt)).toEqual(['run up', 'I7', 'I21'])
  expect(said([undone(bolt), height, final], bolt)).toEqual(['final', 'I21'])
  expect(said([height, renewed, final], bolt)).toEqual(['run up', 'I7', 'I21'])
  expect(said([renewed, height, final], bolt)).toEqual(['final', 'I21'])
  // Another wheel's coil, or one written down after the work, takes nothing away.
  const right = entry('part renewed', { part: 'coil', wheels: ['front right'] })
  expect(said([height, right, final], bolt)).toEqual(['final', 'I21'])
  expect(said([height, final, renewed], bolt)).toEqual(['final', 'I21'])
})

test('JO24 I7 no sheet takes ride height from a bonded bush; a rod end of rubber asks for straight wheels', () => {
  const any = withTightening(bolt, {
    procedure: 'torque',
    low: '180 N·m',
    high: '200 N·m',
    position: 'any position',
  })
  const hung = tightened(bolt, 'final', { torque: '190 N·m', position: ['hanging'] })
  expect(said([height, hung], bolt, { spec: any })).toEqual(['run up', 'I7'])
  const rod = (position: string[]) =>
    said(
      [tightened('tie-rod-end', 'final', { torque: '50 N·m', position }), pinned('tie-rod-end')],
      'tie-rod-end',
    )
  expect(rod(['hanging'])).toEqual(['run up', 'I7', 'I21'])
  expect(rod(['wheels straight'])).toEqual(['final', 'I21'])
  const bonded = withJoint('tie-rod-end', { bush: { bonded: true } })
  const log = [
    tightened('tie-rod-end', 'final', { torque: '50 N·m', position: ['wheels straight'] }),
    pinned('tie-rod-end'),
  ]
  expect(said(log, 'tie-rod-end', { corner: bonded })).toEqual(['final', 'I21'])
})

test('JO24 I2 wheel nuts are final on the ground, or with the wheel held', () => {
  const stage = tightened(nuts, 'stage', { number: 1, torque: '60 N·m' })
  const at = (position: string[]) =>
    said([stage, tightened(nuts, 'final', { torque: '160 N·m', position })], nuts)
  expect(at(['hanging'])).toEqual(['run up', 'I2', 'I21', 'I22'])
  expect(at(['on the ground'])).toEqual(['final', 'I21', 'I22'])
  expect(at(['wheel held'])).toEqual(['final', 'I21', 'I22'])
  // Holding the wheel is no ride height.
  expect(
    said([height, tightened(bolt, 'final', { torque: '190 N·m', position: ['wheel held'] })], bolt)[1],
  ).toBe('I7')
})

test('JO24 I2 a held wheel stands in for the ground at wheel nuts alone', () => {
  const sheet = withTightening('rack-bolts', {
    procedure: 'torque',
    low: '50 N·m',
    high: '60 N·m',
    position: 'on the ground',
  })
  const at = (position: string[]) =>
    said([tightened('rack-bolts', 'final', { torque: '55 N·m', position })], 'rack-bolts', { spec: sheet })
  expect(at(['wheel held'])).toEqual(['run up', 'I7'])
  expect(at(['on the ground'])).toEqual(['final'])
})

test('JO25 I8 a fastener that is used once is new before final, and used after it', () => {
  const damper = 'damper-bottom-bolt'
  const at = (...more: Data[]) => [
    height,
    ...more.map((m) => tightened(damper, 'final', { torque: '75 N·m', position: ['at ride height'], ...m })),
  ]
  expect(said(at({}), damper)).toEqual(['run up', 'I8'])
  expect(said(at({ fastener: 'used again' }), damper)).toEqual(['run up', 'I8'])
  expect(said(at({ fastener: 'new' }), damper)).toEqual(['final'])
  const started = tightened(damper, 'started', { fastener: 'new' })
  expect(said([started, ...at({})], damper)).toEqual(['final'])
  // Opened again, the one that was final is used.
  const again = [...at({ fastener: 'new' }), undone(damper), ...at({})]
  expect(said(again, damper)).toEqual(['run up', 'I8'])
  expect(line(again, damper).toDo[0]!.entries).toEqual([1, 4])
  expect(
    said([...again, tightened(damper, 'started', { fastener: 'new' }), ...at({}).slice(1)], damper),
  ).toEqual(['final'])
  // A joint that may be used again asks nothing.
  expect(said([height, final], bolt)).toEqual(['final', 'I21'])
})

test('JO25 I8 a new fastener on which an adjuster was moved after final is used', () => {
  const once = withJoint(bolt, { reuse: 'new' })
  const first = tightened(bolt, 'final', { ...pivot, fastener: 'new' })
  expect(said([height, first, checked(bolt)], bolt, { corner: once })).toEqual(['checked'])
  expect(said([height, first, moved, final], bolt, { corner: once })).toEqual(['run up', 'I8', 'I21'])
  // Moved while it was only run up, it is still new.
  expect(
    said([height, tightened(bolt, 'run up', { fastener: 'new' }), moved, final, checked(bolt)], bolt, {
      corner: once,
    }),
  ).toEqual(['checked'])
})

test('JO26 I9 a castle nut is closed by its pin: after the last tightening, new, its legs bent', () => {
  const nut = tightened(ball, 'final', { torque: '110 N·m' })
  expect(said([nut], ball)).toEqual(['run up', 'I9', 'I21'])
  expect(said([nut, pinned(ball)], ball)).toEqual(['final', 'I21'])
  expect(said([nut, pinned(ball), checked(ball)], ball)).toEqual(['checked'])
  expect(said([pinned(ball), nut], ball)).toEqual(['run up', 'I9', 'I21'])
  expect(said([nut, pinned(ball, { pin: 'used again' })], ball)).toEqual(['run up', 'I9', 'I21'])
  expect(said([nut, pinned(ball, { legsBent: false })], ball)).toEqual(['run up', 'I9', 'I21'])
  // A check before the pin is no check of the whole.
  expect(said([nut, checked(ball), pinned(ball)], ball)).toEqual(['final', 'I21'])
})

test('JO25 I8 a new fastener that was never final is no used one, but it must be said again', () => {
  const damper = 'damper-bottom-bolt'
  const good = { torque: '75 N·m', position: ['at ride height'] }
  const log = [
    tightened(damper, 'final', { ...good, fastener: 'new' }),
    undone(damper),
    tightened(damper, 'started', { fastener: 'new' }),
    undone(damper),
    height,
    tightened(damper, 'final', good),
  ]
  expect(said(log, damper)).toEqual(['run up', 'I8'])
  expect(line(log, damper).toDo[0]!.entries).toEqual([5])
})

test('JO26 a bolt with a pin has it on record too, new or not', () => {
  const pins = withJoint('rack-bolts', { pin: '4 mm' })
  const sheet = withTightening('rack-bolts', { procedure: 'torque', low: '50 N·m', high: '60 N·m' })
  const done = tightened('rack-bolts', 'final', { torque: '55 N·m' })
  const at = (log: readonly Entry[]) => said(log, 'rack-bolts', { corner: pins, spec: sheet })
  expect(at([done])).toEqual(['run up', 'I9'])
  expect(at([done, pinned('rack-bolts', { pin: 'used again' })])).toEqual(['final'])
})

test('JO26 where the joint does not ask for a new pin, one used again will do', () => {
  const kept = withJoint(ball, { reuse: 'again' })
  const log = [tightened(ball, 'final', { torque: '110 N·m' }), pinned(ball, { pin: 'used again' })]
  expect(said(log, ball, { corner: kept })).toEqual(['final', 'I21'])
})

test('JO27 I21 the second look is another person’s, or the same person’s later one, recorded as that', () => {
  const look = (more: Data) => said([height, final, checked(bolt, more)], bolt)
  expect(look({})).toEqual(['checked'])
  expect(look({ hand: 'T' })).toEqual(['final', 'I21'])
  expect(look({ hand: ' t ' })).toEqual(['final', 'I21'])
  expect(look({ hand: 'T', by: 'the same person, later' })).toEqual(['checked'])
  expect(look({ passed: false, remark: 'turns by hand' })).toEqual(['run up', 'I21'])
  expect(
    line([height, final, checked(bolt, { passed: false, remark: 'turns by hand' })], bolt).toDo[0]!.sentence,
  ).toContain('turns by hand')
  // It does not pass by looking a third time, but by doing it anew.
  expect(said([height, final, checked(bolt, { passed: false }), checked(bolt)], bolt)).toEqual([
    'run up',
    'I21',
  ])
  expect(
    said([height, final, checked(bolt, { passed: false }), undone(bolt), height, final, checked(bolt)], bolt),
  ).toEqual(['checked'])
})

test('JO27 a look that nobody asked for counts too, when it came after the last tightening', () => {
  const lock = tightened('tie-rod-lock-nut', 'final', { torque: '65 N·m' })
  expect(said([lock, checked('tie-rod-lock-nut')], 'tie-rod-lock-nut')).toEqual(['checked'])
  expect(said([checked('tie-rod-lock-nut'), lock], 'tie-rod-lock-nut')).toEqual(['final'])
})

test('JO27 I21 a joint tightened by angle is checked by mark and record, not pulled again', () => {
  const turned = withTightening(bolt, {
    procedure: 'torque then angle',
    torque: '100 N·m',
    angle: '90°',
    secondCheck: true,
  })
  const done = tightened(bolt, 'final', { torque: '100 N·m', angle: '90°', position: ['at ride height'] })
  expect(said([height, done, checked(bolt, { how: 'pulled again' })], bolt, { spec: turned })).toEqual([
    'final',
    'I21',
  ])
  expect(said([height, done, checked(bolt, { how: 'mark and record' })], bolt, { spec: turned })).toEqual([
    'checked',
  ])
  expect(said([height, final, checked(bolt, { how: 'pulled again' })], bolt)).toEqual(['checked'])
})

test('JO27 what can drop a wheel or the steering has a second look even where the sheet is silent', () => {
  const silent = whole(readSpec({ ...specFile, tightening: undefined }))
  const red = book([], { spec: silent }).filter((l) => l.wheel === 'front left' && l.required.secondCheck)
  expect(red.map((l) => l.joint)).toEqual([ball, 'upper-ball-joint', 'tie-rod-end', nuts])
})

test('JO28 the value is held against the sheet alone, ends within', () => {
  const at = (torque: string) =>
    said([height, tightened(bolt, 'final', { ...pivot, torque }), checked(bolt)], bolt)
  expect(at('180 N·m')).toEqual(['checked'])
  expect(at('200 N·m')).toEqual(['checked'])
  // 132.8 lbf·ft is 180.05 N·m, 147.5 lbf·ft is 199.98 N·m.
  expect(at('132.8 lbf·ft')).toEqual(['checked'])
  expect(at('147.5 lbf·ft')).toEqual(['checked'])
  expect(at('179 N·m')).toEqual(['run up', 'value'])
  expect(at('201 N·m')).toEqual(['run up', 'value'])
  expect(
    line([height, tightened(bolt, 'final', { ...pivot, torque: '201 N·m' })], bolt).toDo[0]!.remedy,
  ).toContain('Do not slacken it back')
  const none = whole(readSpec({ ...specFile, tightening: undefined }))
  expect(said([height, final], bolt, { spec: none })).toEqual(['run up', 'no value'])
  expect(said([height, final], bolt, { spec: null })).toEqual(['run up', 'no value'])
})

test('JO28 the setting of a wrench counts where there is no adapter; with one the torque must be written down', () => {
  const with_ = (more: Data) =>
    said([height, tightened(bolt, 'final', { position: ['at ride height'], ...more }), checked(bolt)], bolt)
  expect(with_({ setting: '190 N·m' })).toEqual(['checked'])
  expect(with_({})).toEqual(['run up', 'value'])
  expect(with_({ setting: '175 N·m', adapter: { adapter: 'crowfoot-22', angle: '0°' } })).toEqual([
    'run up',
    'value',
  ])
})

test('JO28 stages, angle and condition are held against the sheet', () => {
  const ground = { torque: '160 N·m', position: ['on the ground'] }
  const last = tightened(nuts, 'final', ground)
  const follow = entry('follow-up', { what: 'wheel nuts again', after: '80 km', card: true })
  expect(said([last, follow], nuts)).toEqual(['run up', 'stages', 'I21'])
  const stage = tightened(nuts, 'stage', { number: 1, torque: '60 N·m' })
  expect(said([stage, last, follow, checked(nuts)], nuts)).toEqual(['checked'])
  expect(said([stage, follow], nuts)).toEqual(['run up', 'not final'])
  const turned = withTightening(bolt, { procedure: 'torque then angle', torque: '100 N·m', angle: '90°' })
  const by = (angle: string | undefined, torque = '100 N·m') =>
    said([height, tightened(bolt, 'final', { torque, angle, position: ['at ride height'] })], bolt, {
      spec: turned,
    })
  expect(by('90°')).toEqual(['final'])
  // Five degrees either way where the sheet does not say; as it says where it does.
  expect(by('86°')).toEqual(['final'])
  expect(by('94°')).toEqual(['final'])
  expect(by('84°')).toEqual(['run up', 'value'])
  expect(by('96°')).toEqual(['run up', 'value'])
  const close = withTightening(bolt, {
    procedure: 'torque then angle',
    torque: '100 N·m',
    angle: '90°',
    within: '2°',
  })
  const turnedBy = tightened(bolt, 'final', { torque: '100 N·m', angle: '86°', position: ['at ride height'] })
  expect(said([height, turnedBy], bolt, { spec: close })).toEqual(['run up', 'value'])
  expect(by('-90°')).toEqual(['run up', 'value'])
  expect(by(undefined)).toEqual(['run up', 'value'])
  expect(by('90°', '73.8 lbf·ft')).toEqual(['final'])
  expect(by('90°', '110 N·m')).toEqual(['run up', 'value'])
  expect(
    said([height, tightened(bolt, 'final', { ...pivot, condition: 'oiled' }), checked(bolt)], bolt),
  ).toEqual(['run up', 'condition'])
  expect(
    said([height, tightened(bolt, 'final', { ...pivot, condition: 'dry' }), checked(bolt)], bolt),
  ).toEqual(['checked'])
})

test('JO28 every stage before the last is recorded by its number', () => {
  const sheet = withTightening(nuts, { procedure: 'stages', stages: ['40 N·m', '80 N·m', '160 N·m'] })
  const stage = (number: number) => tightened(nuts, 'stage', { number, torque: `${number * 40} N·m` })
  const last = tightened(nuts, 'final', { torque: '160 N·m', position: ['on the ground'] })
  const at = (...stages: Entry[]) => said([...stages, last], nuts, { spec: sheet })[1]
  expect(at(stage(1))).toBe('stages')
  expect(at(stage(2))).toBe('stages')
  expect(at(stage(1), stage(2))).toBe('I21')
  expect(line([stage(2), last], nuts, { spec: sheet }).toDo[0]!.sentence).toContain('1 (40 N·m)')
})

test('JO28 an adjustable hub is judged by its end float, and by what it is brought up to', () => {
  const sheet = (more: Data) =>
    withTightening('rack-bolts', {
      procedure: 'seat and back off',
      seat: '30 N·m',
      back: ['60°', '90°'],
      ...more,
    })
  const at = (spec: Spec, more: Data) =>
    said([tightened('rack-bolts', 'final', more), pinned('rack-bolts')], 'rack-bolts', { spec })
  const float = sheet({ endFloat: ['0.02 mm', '0.10 mm'] })
  expect(at(float, {})).toEqual(['run up', 'value'])
  expect(at(float, { endFloat: '0.05 mm' })).toEqual(['final'])
  expect(at(float, { endFloat: '0.02 mm' })).toEqual(['final'])
  expect(at(float, { endFloat: '0.01 mm' })).toEqual(['run up', 'value'])
  expect(at(float, { endFloat: '0.12 mm' })).toEqual(['run up', 'value'])
  expect(at(sheet({ bringUpTo: '5 N·m' }), { torque: '5 N·m' })).toEqual(['final'])
  expect(at(sheet({ bringUpTo: '5 N·m' }), { torque: '30 N·m' })).toEqual(['run up', 'value'])
  // Its nut has a pin, as a castle nut has.
  expect(
    said([tightened('rack-bolts', 'final', { endFloat: '0.05 mm' })], 'rack-bolts', { spec: float }),
  ).toEqual(['run up', 'I9'])
  expect(line([], 'rack-bolts', { spec: float }).required.said).toBe(
    'seated and backed off, end float 0.02 mm to 0.10 mm',
  )
})

test('JO28 a stated torque is met by the nearest mark of the wrench that made it', () => {
  const sheet = withTightening('rack-bolts', {
    procedure: 'torque then angle',
    torque: '70 N·m',
    angle: '90°',
  })
  const at = (more: Data) =>
    said([tightened('rack-bolts', 'final', { angle: '90°', ...more })], 'rack-bolts', { spec: sheet })
  expect(at({ torque: '70.3 N·m' })).toEqual(['final'])
  expect(at({ torque: '70.5 N·m' })).toEqual(['run up', 'value'])
  // Half of its step of 1 N·m, and no more.
  expect(at({ torque: '70.5 N·m', wrench: 'long-wrench' })).toEqual(['final'])
  expect(at({ torque: '69.5 N·m', wrench: 'long-wrench' })).toEqual(['final'])
  expect(at({ torque: '71 N·m', wrench: 'long-wrench' })).toEqual(['run up', 'value'])
  expect(at({ torque: '70.5 N·m', wrench: 'short-wrench' })).toEqual(['run up', 'value'])
  // A range has its own ends; no mark widens them.
  const under = tightened(bolt, 'final', {
    torque: '179.6 N·m',
    position: ['at ride height'],
    wrench: 'long-wrench',
  })
  expect(said([height, under], bolt)[1]).toBe('value')
})

test('JO28 hand snug and what only snaps in ask for no value', () => {
  const snug = withTightening(bolt, { procedure: 'hand snug', position: 'at ride height' })
  expect(
    said([height, tightened(bolt, 'final', { position: ['at ride height'] })], bolt, { spec: snug }),
  ).toEqual(['final'])
  const clip = withJoint('rack-bolts', { kind: 'clip' })
  expect(said([undone('rack-bolts')], 'rack-bolts', { corner: clip })).toEqual(['open', 'not closed'])
  expect(
    said([undone('rack-bolts'), tightened('rack-bolts', 'final')], 'rack-bolts', { corner: clip }),
  ).toEqual(['final'])
})

test('JO28 two values: decide', () => {
  const other = tightened(bolt, 'final', { ...pivot, torque: '185 N·m' })
  const log = [height, final, other, checked(bolt)]
  expect(said(log, bolt)).toEqual(['run up', 'two values'])
  expect(line(log, bolt).record.twoValues).toEqual([1, 2])
  const decision = entry('decision', { of: [1, 2], keep: 2, why: 'read again', hand: 'K' })
  expect(said([...log, decision], bolt)).toEqual(['checked'])
  // A move of another adjuster at this wheel between them does not excuse it, its own does.
  const toe = entry('moved', { adjuster: 'tie-rod', wheel: 'front left', by: '1/12 turn' })
  expect(said([height, final, toe, other, checked(bolt)], bolt)).toEqual(['run up', 'two values'])
  expect(said([height, final, moved, other, checked(bolt)], bolt)).toEqual(['checked'])
  // Each of two devices may have started it.
  expect(said([height, final, tightened(bolt, 'started'), other, checked(bolt)], bolt)).toEqual([
    'run up',
    'two values',
  ])
  // What conflicted before it was opened is past.
  expect(said([height, final, other, undone(bolt), height, final, checked(bolt)], bolt)).toEqual(['checked'])
})

test('JO29 the wrench must be able to: in range, calibrated that day, its setting giving the torque', () => {
  const by = (more: Data, beside: Beside = {}, at?: string) => {
    const made = entry('tightened', { ...fl, joint: bolt, stage: 'final', hand: 'T', ...pivot, ...more }, at)
    return said([height, made, checked(bolt)], bolt, beside)
  }
  expect(by({ wrench: 'long-wrench' })).toEqual(['checked'])
  // 100 N·m is the end of its scale.
  expect(by({ wrench: 'short-wrench' })).toEqual(['run up', 'wrench'])
  expect(by({ wrench: 'long-wrench' }, {}, '2026-11-18T23:00:00Z')).toEqual(['checked'])
  expect(by({ wrench: 'long-wrench' }, {}, '2026-11-19T07:00:00Z')).toEqual(['run up', 'wrench'])
  // Nobody wrote down until when: said, and nothing is held back.
  expect(by({ wrench: 'long-wrench' }, { kit: dated(undefined) })).toEqual(['checked', 'wrench'])
  // A wrench that the kit lacks is told against the kit, and no kit judges nothing.
  expect(by({ wrench: 'borrowed' })).toEqual(['checked'])
  expect(by({ wrench: 'short-wrench' }, { kit: null })).toEqual(['checked'])
  // Straight ahead: 560 / (560 + 46) of 190 N·m is 175.6 N·m.
  const crowfoot = (setting: string, angle = '0°') =>
    by({ wrench: 'long-wrench', setting, adapter: { adapter: 'crowfoot-22', angle } })
  expect(crowfoot('175.6 N·m')).toEqual(['checked'])
  expect(crowfoot('190 N·m')).toEqual(['run up', 'wrench'])
  expect(crowfoot('190 N·m', '90°')).toEqual(['checked'])
  expect(crowfoot('160 N·m')).toEqual(['run up', 'wrench'])
  // At an unknown angle the two numbers cannot be held against each other, and without a setting no range.
  const adapter = { adapter: 'crowfoot-22' }
  expect(by({ wrench: 'long-wrench', setting: '175.6 N·m', adapter })).toEqual(['checked'])
  expect(by({ wrench: 'short-wrench', adapter })).toEqual(['checked'])
})

test('JO30 a late entry can take a passed check away, and says so', () => {
  const log = [undone(bolt), height, final, checked(bolt)]
  expect(line(log, bolt).done).toBe(true)
  for (const late of [
    moved,
    undone(bolt, 'cracked'),
    tightened(bolt, 'started'),
    tightened(bolt, 'run up'),
    tightened(bolt, 'final', { ...pivot, torque: '181 N·m' }),
    final,
    checked(bolt, { passed: false }),
    entry('deviation', { ...fl, joint: bolt, what: 'stripped thread' }),
  ]) {
    const after = line([...log, late], bolt)
    expect(after.done, late.kind).toBe(false)
    expect(
      after.toDo.some((t) => t.entries.includes(3) || t.entries.includes(4)),
      late.kind,
    ).toBe(true)
  }
  const stale = line([...log, final], bolt).toDo[0]!
  expect(stale.sentence).toContain('entry 3')
  expect(stale.entries).toEqual([3, 4])
  // A pin that a merge brings in after the check asks for another look.
  const nut = [tightened(ball, 'final', { torque: '110 N·m' }), pinned(ball), checked(ball), pinned(ball)]
  expect(said(nut, ball)).toEqual(['final', 'I21'])
})

test('JO30 what fell is the check where one had passed, else the final', () => {
  const opened = (...checks: Entry[]) => line([height, final, ...checks, undone(bolt)], bolt)
  expect(opened(checked(bolt)).record.fell).toEqual({ was: 'checked', entry: 2, by: 3 })
  expect(opened().record.fell).toEqual({ was: 'final', entry: 1, by: 2 })
  expect(opened(checked(bolt, { passed: false })).record.fell).toEqual({ was: 'final', entry: 1, by: 3 })
  expect(opened(checked(bolt)).toDo[0]!.sentence).toContain('no longer counts')
  expect(opened(checked(bolt)).state).toBe('open')
})

test('JO30 a deviation holds its joint until it is cleared', () => {
  const log = [
    height,
    final,
    checked(bolt),
    entry('deviation', { ...fl, joint: bolt, what: 'snapped stud', remark: 'half left' }),
  ]
  expect(said(log, bolt)).toEqual(['run up', 'deviation'])
  expect(line(log, bolt).toDo[0]!.sentence).toContain('half left')
  expect(said([...log, entry('cleared', { of: 3, how: 'new stud', hand: 'T' })], bolt)).toEqual(['checked'])
  // It is this joint's, at this wheel.
  const others = book(log).filter((l) => !(l.joint === bolt && l.wheel === 'front left'))
  expect(others.every((l) => l.done && l.toDo.length === 0)).toBe(true)
})

test('JO31 a renewed part leaves its joints open, and whatever must come off to reach them, until they are recorded', () => {
  const renewed = entry('part renewed', { part: 'lower-arm', wheels: ['front left'] })
  const open = book([renewed]).filter((l) => l.state === 'open')
  expect(open.map((l) => l.joint).sort()).toEqual(
    ['damper-bottom-bolt', ball, bolt, 'lower-rear-bolt', nuts].sort(),
  )
  expect(open.every((l) => l.wheel === 'front left' && !l.done)).toBe(true)
  expect(line([renewed], bolt).toDo[0]!.sentence).toContain('was renewed')
  expect(line([renewed], nuts).toDo[0]!.sentence).toContain('must come off')
  expect(said([undone(ball)], nuts)).toEqual(['open', 'not closed'])
  // Written down after the work it opens nothing again.
  expect(said([height, final, checked(bolt), renewed], bolt)).toEqual(['checked'])
})

test('JO32 I22 wheel nuts that were final ask for an appointment, which holds nothing back', () => {
  const log = [
    tightened(nuts, 'stage', { number: 1, torque: '60 N·m' }),
    tightened(nuts, 'final', { torque: '160 N·m', position: ['on the ground'] }),
    checked(nuts),
  ]
  expect(said(log, nuts)).toEqual(['checked', 'I22'])
  expect(line(log, nuts).done).toBe(true)
  expect(line(log, nuts).toDo[0]!.sentence).toContain('80 km')
  const follow = (wheels?: string[], what = 'wheel nuts again') =>
    said([...log, entry('follow-up', { what, wheels })], nuts)
  expect(follow()).toEqual(['checked'])
  expect(follow(['front left'])).toEqual(['checked'])
  expect(follow(['front right'])).toEqual(['checked', 'I22'])
  expect(follow(undefined, 'grease')).toEqual(['checked', 'I22'])
})

// Any log of one bolt with an adjuster, told in letters.
const letters = {
  u: [undone(bolt), height],
  m: moved,
  s: tightened(bolt, 'started'),
  r: tightened(bolt, 'run up'),
  F: final,
  h: tightened(bolt, 'final', { ...pivot, position: ['hanging'] }),
  l: tightened(bolt, 'final', { ...pivot, torque: '150 N·m' }),
  c: checked(bolt),
  x: checked(bolt, { passed: false }),
} as const
const anyTold = fc
  .array(fc.constantFrom(...(Object.keys(letters) as (keyof typeof letters)[])), { maxLength: 8 })
  .map((all) => all.join(''))

/** Judged by walking through the letters once, with no records: h is hung, l too low, x a look that failed. */
function isDone(told: string): boolean {
  let last = ''
  let values = new Set<string>()
  let looks = ''
  for (const letter of told) {
    if (letter === 'u' || letter === 'm') values = new Set()
    if ('umsr'.includes(letter)) last = ''
    if ('Fhl'.includes(letter)) {
      last = letter
      looks = ''
      values.add(letter === 'l' ? 'low' : 'right')
    }
    if ('cx'.includes(letter)) looks += letter
  }
  const touched = /[usrmFhl]/.test(told)
  return !touched || (last === 'F' && values.size === 1 && looks.includes('c') && !looks.includes('x'))
}
law(
  'JO33 a bolt is done exactly when its last final is right, the only value, and was looked at since',
  anyTold,
  (told) => {
    const log = [height, ...[...told].flatMap((letter) => letters[letter as keyof typeof letters])]
    return line(log, bolt).done === isDone(told)
  },
  { runs: 2000 },
)

law('JO33 every open thing says why and what to do, and names entries that stand', anyTold, (told) => {
  const log = [height, ...[...told].flatMap((letter) => letters[letter as keyof typeof letters])]
  for (const { toDo, done } of book(log)) {
    if (done !== toDo.every(({ holdsAt }) => holdsAt === null)) return false
    for (const { sentence, remedy, entries } of toDo)
      if (
        sentence.length < 20 ||
        remedy.length < 15 ||
        entries.length === 0 ||
        entries.some((e) => !(e < log.length))
      )
        return false
  }
  return true
})

law(
  'JO33 the right wheel is judged as the left one, and making the book changes nothing',
  anyTold,
  (told) => {
    const log = [height, ...[...told].flatMap((letter) => letters[letter as keyof typeof letters])]
    const right = log.map((e) => ({ ...e, data: { ...e.data, wheel: 'front right' } }))
    const before = JSON.stringify(foldJob(log))
    const state = foldJob(log)
    const make = () => boltBook({ state, corners: { front: corner, rear: null }, spec, kit })
    const short = (lines: readonly BoltLine[], wheel: string) =>
      lines.filter((l) => l.place === wheel).map((l) => [l.joint, l.state, l.toDo.map((t) => t.rule)])
    expect(make()).toEqual(make())
    expect(JSON.stringify(state)).toBe(before)
    expect(short(book(right), 'front right')).toEqual(short(make(), 'front left'))
    return true
  },
)

const nutLetters = {
  u: undone(ball),
  F: tightened(ball, 'final', { torque: '110 N·m' }),
  l: tightened(ball, 'final', { torque: '90 N·m' }),
  p: pinned(ball),
  c: checked(ball),
} as const
law(
  'JO30 in whatever order the entries of two joints are merged, both are judged the same',
  fc.tuple(
    anyTold,
    fc.array(fc.constantFrom(...(Object.keys(nutLetters) as (keyof typeof nutLetters)[])), { maxLength: 8 }),
    fc.infiniteStream(fc.boolean()),
  ),
  ([told, nut, coin]) => {
    const one = [...told].flatMap((letter) => letters[letter as keyof typeof letters])
    const other = nut.map((letter) => nutLetters[letter])
    const merged: Entry[] = [height]
    const [a, b] = [[...one], [...other]]
    while (a.length > 0 || b.length > 0) {
      const from = b.length === 0 || (a.length > 0 && coin.next().value) ? a : b
      merged.push(from.shift()!)
    }
    expect(said(merged, bolt)).toEqual(said([height, ...one], bolt))
    expect(said(merged, ball)).toEqual(said([height, ...other], ball))
    return true
  },
)
