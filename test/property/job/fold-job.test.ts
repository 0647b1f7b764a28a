import fc from 'fast-check'
import { expect, test } from 'vitest'
import { adjustersOf } from '../../../src/corner/index.ts'
import { type Entry, foldJob, type JobState, standOf, wheelNames } from '../../../src/job/index.ts'
import { deg } from '../../../src/quantity/index.ts'
import { law } from '../../support/law.ts'
import { demoCorner } from '../corner/demo.ts'

const height = (wheel: string, mm: number): Entry => ({
  kind: 'ride height',
  data: { wheel, when: 'settled', rule: 'rule', readings: [`${mm} mm`] },
})
const round = (number: number): Entry => ({
  kind: 'round',
  data: { number, purpose: 'provisional', settled: true },
})
const reading = (wheel: string, degrees: number): Entry => ({
  kind: 'reading',
  data: {
    method: 'inclinometer',
    wheel,
    gauge: 'inclinometer',
    readings: [{ wheelTurn: '0°', reading: `${degrees}°` }],
  },
})
const found = (adjuster: string, wheel: string, said: Record<string, unknown>): Entry => ({
  kind: 'as found',
  data: { adjuster, wheel, ...said },
})
const moved = (adjuster: string, wheel: string, said: Record<string, unknown>): Entry => ({
  kind: 'moved',
  data: { adjuster, wheel, ...said },
})
const correction = (of: number, data: unknown): Entry => ({ kind: 'correction', data: { of, data } })
const note = (text: string): Entry => ({ kind: 'note', data: { text } })

const tightened = (joint: string, wheel: string, said: Record<string, unknown>): Entry => ({
  kind: 'tightened',
  data: { joint, wheel, hand: 'T', ...said },
})
const undone = (joint: string, wheel: string): Entry => ({
  kind: 'undone',
  data: { joint, wheel, to: 'open' },
})
const checked = (joint: string, wheel: string): Entry => ({
  kind: 'checked',
  data: { joint, wheel, by: 'another person', how: 'looked at and felt', passed: true, hand: 'K' },
})

const front = adjustersOf(demoCorner('07'))
const standing = (state: JobState, wheel: 'front left' | 'front right') =>
  Object.fromEntries(
    standOf({ settings: state.settings, adjusters: front, wheel }).map((s) => [s.adjuster.id, s.setting]),
  )

// Random logs: facts of every kind that this version knows, corrections of any earlier entry among them.
const anyWheel = fc.constantFrom(...wheelNames)
const anyAdjuster = fc.constantFrom('lower-front-eccentric', 'lower-rear-eccentric', 'tie-rod')
const anyJoint = fc.constantFrom('lower-front-bolt', 'wheel-nuts')
const anyFact: fc.Arbitrary<Entry> = fc.oneof(
  fc.tuple(anyWheel, fc.integer({ min: 300, max: 500 })).map(([wheel, mm]) => height(wheel, mm)),
  fc.tuple(anyWheel, fc.integer({ min: -30, max: 30 })).map(([wheel, tenths]) => reading(wheel, tenths / 10)),
  fc
    .tuple(anyAdjuster, anyWheel, fc.integer({ min: -80, max: 80 }))
    .map(([adjuster, wheel, d]) =>
      found(adjuster, wheel, { setting: adjuster === 'tie-rod' ? `${d / 40} turns` : `${d}°` }),
    ),
  fc
    .tuple(anyAdjuster, anyWheel, fc.integer({ min: -20, max: 20 }), fc.boolean())
    .map(([adjuster, wheel, d, to]) =>
      moved(adjuster, wheel, { [to ? 'to' : 'by']: adjuster === 'tie-rod' ? `${d / 40} turns` : `${d}°` }),
    ),
  fc.string({ minLength: 1 }).map((text) => note(`n ${text}`)),
  fc.tuple(anyWheel, fc.constantFrom('coil', 'lower-arm')).map(([wheel, part]) => ({
    kind: 'part renewed',
    data: { part, wheels: [wheel] },
  })),
  fc
    .tuple(anyWheel, anyJoint, fc.constantFrom('run up', 'final'), fc.integer({ min: 180, max: 182 }))
    .map(([wheel, joint, stage, torque]) => tightened(joint, wheel, { stage, torque: `${torque} N·m` })),
  fc.tuple(anyWheel, anyJoint).map(([wheel, joint]) => undone(joint, wheel)),
  fc.tuple(anyWheel, anyJoint).map(([wheel, joint]) => checked(joint, wheel)),
  fc
    .constantFrom('asked', 'yes', 'no')
    .map((answer) => ({ kind: 'extra work', data: { what: 'dampers', answer } })),
  fc.constant<Entry>({ kind: 'floor', data: { bay: 'bay-2' } }),
  fc.constant<Entry>({ kind: 'magnetic survey', data: {} }),
)
const anyLog = fc
  .array(fc.tuple(anyFact, fc.nat(9), fc.nat()), { minLength: 2, maxLength: 30 })
  .map((facts) => {
    const log: Entry[] = []
    let rounds = 0
    for (const [fact, dice, pick] of facts) {
      if (dice === 0) log.push(round(++rounds))
      else if (dice === 1 && log.length > 0) {
        const of = pick % log.length
        // A correction that says something of the same kind: the note's text, the height's reading.
        const kind = log[of]!.kind
        if (kind === 'note') log.push(correction(of, { text: `corrected ${pick}` }))
        else if (kind === 'ride height') log.push(correction(of, { readings: [`${300 + (pick % 200)} mm`] }))
        else log.push(fact)
      } else log.push(fact)
    }
    return log
  })

const frozen = <T>(value: T): T => {
  if (typeof value === 'object' && value !== null) for (const inner of Object.values(value)) frozen(inner)
  return Object.freeze(value)
}

law('JO7 folding is pure: the same log gives the same state and is left as it was', anyLog, (log) => {
  const before = JSON.stringify(log)
  expect(foldJob(frozen(log))).toEqual(foldJob(JSON.parse(before)))
  return JSON.stringify(log) === before
})

law(
  'JO8 the clock does not order: any stamps give the same state',
  fc.tuple(anyLog, fc.infiniteStream(fc.integer({ min: 0, max: 59 }))),
  ([log, clock]) => {
    const stamped = log.map((entry) => ({
      ...entry,
      at: `2026-03-10T07:${String(clock.next().value).padStart(2, '0')}:00Z`,
    }))
    const without = (state: JobState) =>
      JSON.parse(JSON.stringify(state).replace(/"at":("[^"]*"|null)/g, '"at":null'))
    expect(without(foldJob(stamped))).toEqual(without(foldJob(log)))
    return true
  },
)

/** The state with entries named by what they were before a change of order, and lists as sets. */
function asSets(state: JobState, was: (entry: number) => number): unknown {
  const renamed = JSON.parse(JSON.stringify(state), (key, value) =>
    (key === 'entry' || key === 'of') && typeof value === 'number'
      ? was(value)
      : key === 'id' && typeof value === 'string' && value.startsWith('entry ')
        ? `entry ${was(Number(value.slice(6)))}`
        : (key === 'entries' || key === 'correctedBy' || key === 'choice') && Array.isArray(value)
          ? value.map(was)
          : value,
  )
  const sorted = (value: unknown): unknown =>
    Array.isArray(value)
      ? value.map(sorted).sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1))
      : typeof value === 'object' && value !== null
        ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, sorted(v)]))
        : value
  return sorted(renamed)
}

/** What an entry touches: two entries that touch nothing in common are told in either order. */
function touches({ kind, data }: Entry): readonly string[] | 'everything' {
  switch (kind) {
    case 'ride height':
      return [`height ${String(data.wheel)}`]
    case 'as found':
      return [`${String(data.wheel)} ${String(data.adjuster)}`]
    case 'reading':
      return ['round']
    case 'note':
    case 'magnetic survey':
      return []
    case 'tightened':
    case 'undone':
    case 'checked':
      return [`joint ${String(data.wheel)} ${String(data.joint)}`]
    case 'extra work':
      return ['answers']
    case 'moved':
      return [`${String(data.wheel)} ${String(data.adjuster)}`, 'round']
    default:
      return 'everything'
  }
}

law(
  'JO8 two neighbours that touch nothing in common may change places',
  fc.tuple(anyLog, fc.nat()),
  ([log, pick]) => {
    const places = log.flatMap((entry, i) => {
      const [a, b] = [touches(entry), i + 1 < log.length ? touches(log[i + 1]!) : 'everything']
      // A move opens whatever joint carries it: the fold knows only its wheel.
      const [one, two] = [entry, log[i + 1]]
      const kinds = [one.kind, two?.kind]
      if (kinds.includes('moved') && kinds.includes('tightened') && one.data.wheel === two!.data.wheel)
        return []
      return a === 'everything' || b === 'everything' || a.some((x) => b.includes(x)) ? [] : [i]
    })
    if (places.length === 0) return true
    const at = places[pick % places.length]!
    const swapped = (i: number) => (i === at ? at + 1 : i === at + 1 ? at : i)
    const other = log
      .map((_, i) => log[swapped(i)]!)
      .map((entry) =>
        entry.kind === 'correction'
          ? { ...entry, data: { ...entry.data, of: swapped(entry.data.of as number) } }
          : entry,
      )
    expect(asSets(foldJob(other), swapped)).toEqual(asSets(foldJob(log), (i) => i))
    return true
  },
  { runs: 500 },
)

test('JO6 a correction of a correction is laid over as it reads after that', () => {
  const log = [
    height('front left', 482),
    correction(0, { readings: ['428 mm'] }),
    correction(1, { data: { readings: ['429 mm'] } }),
  ]
  const state = foldJob(log)
  expect(state.troubles).toEqual([])
  expect(state.heights[0]!.observation.readings).toEqual([0.429])
  expect(state.heights[0]!.correctedBy).toEqual([1])
  expect(state.corrections).toEqual([
    { entry: 1, of: 0 },
    { entry: 2, of: 1 },
  ])
  // Taken back altogether: what was first typed stands again.
  expect(foldJob([...log, correction(1, { data: null })]).heights[0]!.observation.readings).toEqual([0.482])
  // Turned to another entry.
  const turned = foldJob([
    height('front left', 1),
    height('rear left', 2),
    correction(0, { readings: ['3 mm'] }),
    correction(2, { of: 1 }),
  ])
  expect(turned.heights.map((h) => h.observation.readings[0])).toEqual([0.001, 0.003])
})

test('JO6 corrections of different members of one entry stand together; of the same, the later one', () => {
  const log = [
    height('front left', 482),
    correction(0, { readings: ['428 mm'] }),
    correction(0, { wheel: 'front right' }),
    correction(0, { readings: ['427 mm'] }),
  ]
  expect(foldJob(log).heights[0]).toMatchObject({ wheel: 'front right', correctedBy: [1, 2, 3] })
  expect(foldJob(log).heights[0]!.observation.readings).toEqual([0.427])
})

test('JO6 a correction that spoils an entry is trouble, and the entry says nothing meanwhile', () => {
  const state = foldJob([height('front left', 441), correction(0, { readings: ['428'] })])
  expect(state.heights).toEqual([])
  expect(state.troubles).toHaveLength(1)
  expect(state.troubles[0]!.entries).toEqual([0, 1])
})

test('JO6 a correction of what does not stand before it is trouble', () => {
  expect(foldJob([correction(0, {})]).troubles).toHaveLength(1)
  expect(foldJob([note('a'), correction(2, {}), note('b')]).troubles).toHaveLength(1)
  expect(
    foldJob([note('a'), { kind: 'correction', data: { of: 'ab'.repeat(32), data: {} } }]).troubles,
  ).toHaveLength(1)
})

test('JO9 two as-found values of one adjuster are trouble until a correction decides', () => {
  const log = [
    found('lower-front-eccentric', 'front left', { setting: '10°' }),
    found('lower-front-eccentric', 'front left', { setting: '12°' }),
  ]
  const state = foldJob(log)
  expect(state.troubles).toHaveLength(1)
  expect(state.troubles[0]!.entries).toEqual([0, 1])
  expect(standing(state, 'front left')['lower-front-eccentric']).toBeNull()
  const decided = foldJob([...log, correction(1, { setting: '10°' })])
  expect(decided.troubles).toEqual([])
  expect(standing(decided, 'front left')['lower-front-eccentric']).toBeCloseTo(deg(10), 12)
  // The same value twice, in other words, is no conflict; another wheel's is another fact.
  const alike = foldJob([log[0]!, found('lower-front-eccentric', 'front left', { setting: '600′' })])
  expect(alike.troubles).toEqual([])
  const right = foldJob([log[0]!, found('lower-front-eccentric', 'front right', { setting: '12°' })])
  expect(right.troubles).toEqual([])
})

test('JO9 two ride heights of one wheel in one state are trouble', () => {
  expect(foldJob([height('front left', 441), height('front left', 442)]).troubles).toHaveLength(1)
  expect(foldJob([height('front left', 441), round(1), height('front left', 442)]).troubles).toEqual([])
})

test('JO10 settings now are as found plus moves; a move to a setting starts from there', () => {
  const log = [
    found('lower-front-eccentric', 'front right', { setting: '10°' }),
    round(1),
    reading('front right', -1),
    moved('lower-front-eccentric', 'front right', { by: '-34°' }),
    moved('tie-rod', 'front right', { by: '5/12 turn' }),
  ]
  const state = foldJob(log)
  expect(state.troubles).toEqual([])
  expect(standing(state, 'front right')['lower-front-eccentric']).toBeCloseTo(deg(-24), 12)
  expect(standing(state, 'front right')['tie-rod']).toBeCloseTo(5 / 12, 12)
  expect(standing(state, 'front right')['lower-rear-eccentric']).toBeNull()
  // What a thread counts from is how it was found.
  expect(standing(state, 'front left')['tie-rod']).toBe(0)
  const after = foldJob([...log, moved('lower-front-eccentric', 'front right', { from: '-24°', to: '5°' })])
  expect(after.troubles).toEqual([])
  expect(standing(after, 'front right')['lower-front-eccentric']).toBeCloseTo(deg(5), 12)
  expect(state.rounds[0]!.moves).toHaveLength(2)
  expect(state.rounds[0]!.settings.map((s) => s.movedBy)).toEqual([0])
})

test('JO10 a clock position is read on each side as it is seen', () => {
  const clock = (wheel: 'front left' | 'front right') =>
    standing(foldJob([found('lower-front-eccentric', wheel, { clock: "1 o'clock" })]), wheel)[
      'lower-front-eccentric'
    ]!
  expect(clock('front left')).toBeCloseTo(deg(30), 12)
  expect(clock('front right')).toBeCloseTo(deg(-30), 12)
})

test('JO10 a washer found turned round is handed on as that', () => {
  const state = foldJob([
    found('lower-front-eccentric', 'front left', { setting: '5°', fitted: 'turned round' }),
  ])
  const [stand] = standOf({ settings: state.settings, adjusters: front, wheel: 'front left' })
  expect(stand!.adjuster).toMatchObject({ fitted: 'turned round' })
})

test('JO10 a mark found after readings tells how it stood at those readings', () => {
  const state = foldJob([
    round(1),
    reading('front left', -1),
    found('tie-rod', 'front left', { setting: '2 turns' }),
    moved('tie-rod', 'front left', { by: '1 turn' }),
    round(2),
    reading('front left', -1),
  ])
  expect(state.troubles).toEqual([])
  const at = (i: number) =>
    standOf({ settings: state.rounds[i]!.settings, adjusters: front, wheel: 'front left' })[2]!.setting
  expect([at(0), at(1)]).toEqual([2, 3])
})

test.each<[string, readonly Entry[]]>([
  [
    'a move that starts elsewhere',
    [
      found('tie-rod', 'front left', { setting: '0 turns' }),
      moved('tie-rod', 'front left', { from: '1 turn', to: '2 turns' }),
    ],
  ],
  [
    'a setting in two units',
    [found('tie-rod', 'front left', { setting: '0 turns' }), moved('tie-rod', 'front left', { by: '1°' })],
  ],
  [
    'a mark after a move',
    [
      moved('tie-rod', 'front left', { by: '1 turn' }),
      found('tie-rod', 'front left', { setting: '0 turns' }),
    ],
  ],
  [
    'a reading after a move in one round',
    [
      round(1),
      reading('front left', 0),
      moved('tie-rod', 'front left', { by: '1 turn' }),
      reading('front left', 0),
    ],
  ],
  [
    'a reading after a part was renewed in one round',
    [
      round(1),
      reading('front left', 0),
      { kind: 'part renewed', data: { part: 'coil', wheels: ['front left'] } },
      reading('front left', 0),
    ],
  ],
  ['a round that goes back', [round(2), round(1)]],
  ['a round opened twice', [round(1), round(1)]],
  ['a faulty entry', [{ kind: 'note', data: { text: 5 } }]],
  [
    'a job opened twice',
    [1, 2].map(() => ({
      kind: 'opened',
      data: { number: '1', vehicle: 'v', complaint: 'c', corners: { front: 'f' } },
    })),
  ],
])('JO9 %s is trouble', (_, log) => {
  const { troubles } = foldJob(log)
  expect(troubles).toHaveLength(1)
  expect(troubles[0]!.sentence.length).toBeGreaterThan(10)
  expect(troubles[0]!.remedy.length).toBeGreaterThan(10)
})

test('JO7 heights and play come over with their numbers in SI', () => {
  const { heights, play } = foldJob([
    height('rear left', 447),
    {
      kind: 'play',
      data: {
        joint: 'j',
        wheel: 'front right',
        gauge: 'dial',
        moves: 'camber',
        swings: ['1.9 mm', '1.8 mm'],
        arm: '318 mm',
      },
    },
  ])
  expect(heights[0]!.observation).toEqual({
    id: 'entry 0',
    method: 'ride height by rule',
    wheel: 'rear left',
    rule: 'rule',
    readings: [0.447],
  })
  expect(play[0]).toMatchObject({
    entry: 1,
    joint: 'j',
    wheel: 'front right',
    direction: null,
    at: null,
    round: 0,
  })
  expect(play[0]!.observation).toEqual({
    id: 'entry 1',
    method: 'dial indicator',
    wheel: 'front right',
    gauge: 'dial',
    moves: 'camber',
    swings: [0.0019, 0.0018],
    arm: 0.318,
  })
})

test('JO7 readings before any round are kept in round 0', () => {
  const state = foldJob([reading('front left', -1), round(1), reading('front left', -1)])
  expect(state.rounds.map((r) => [r.number, r.entry, r.readings.length])).toEqual([
    [0, null, 1],
    [1, 1, 1],
  ])
})

test('JO7 an empty log is a job of which nothing is known', () => {
  const state = foldJob([])
  expect(state.opened).toBeNull()
  expect(state.rounds).toEqual([])
})
