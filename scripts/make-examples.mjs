// Makes the three demo jobs: what gauges would show on invented vehicles whose true state is known here.
// Run by hand after a change of the corner models:
//   node --import tsx scripts/make-examples.mjs && npx biome check --write examples
// The truth: exact poses of the corner models at the settings below, with the faults below, standing on the
// floor of bay 2; then the errors of the kit's gauges, drawn from a seeded generator, and their scales' steps.
import { readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { displacementOf, strokeOf } from '../src/adjust/index.ts'
import {
  adjustersOf,
  axleAdjustersOf,
  cornerPoints,
  isWholeAxle,
  readCorner,
  readJsonText,
  wholeAxlePoints,
} from '../src/corner/index.ts'
import { readJob, writeJob } from '../src/job/index.ts'
import { floorMapOf, readKit } from '../src/kit/index.ts'
import {
  axlePoseAt,
  mechanism,
  mirrorPoint,
  poseAt,
  sleeveTilt,
  solidAxle,
  sumOfDisplacements,
} from '../src/linkage/index.ts'

const examples = join(dirname(dirname(fileURLToPath(import.meta.url))), 'examples')
const must = (read) => {
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 1))
  return read.value
}
const file = (path) => must(readJsonText(readFileSync(join(examples, path), 'utf8')))
const DEGREE = Math.PI / 180
const MM = 1e-3

/** mulberry32: small, seeded, good enough for reading errors. */
function seeded(seed) {
  let a = seed
  return () => {
    a = (a + 0x6d2b79f5) | 0
    let t = Math.imul(a ^ (a >>> 15), 1 | a)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

const text = (value, step, unit) => {
  const places = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9))
  const rounded = Math.round(value / step) * step
  return `${rounded.toFixed(places).replace(/^-(0(\.0+)?)$/, '$1')}${unit}`
}

const kit = must(readKit(file('port-kit.kit.json')))
const floor = floorMapOf(kit, 'bay-2')

/** One vehicle with gauges on it. `truth` gives each front wheel's displacement, the rear's angles, the tracks. */
function vehicle({ corner, seed, size, rear }) {
  const random = seeded(seed)
  const whole = isWholeAxle(corner.layout)
  const points = whole ? wholeAxlePoints(corner) : cornerPoints(corner)
  const design = corner.rideHeight.at
  /** Rectangular error of half-width `half`. */
  const error = (half) => (2 * random() - 1) * half
  const angle = (value, half = 0.05) => text((value + error(half * DEGREE)) / DEGREE, 0.05, '°')
  const length = (value, half = 0.25, step = 0.5) => text((value + error(half * MM)) / MM, step, ' mm')

  /** Roll of an axle on its pads: + leans to the left. */
  const roll = (end) =>
    Math.atan((floor.heights[`${end} right`] - floor.heights[`${end} left`]) / (size[`${end}Track`] * MM))
  const leaned = (end, side, camber) => camber + (side === 'left' ? roll(end) : -roll(end))
  /** Pitch of the vehicle on its pads: + nose down. A steered wheel's spin axis has a part along x that it tilts. */
  const mean = (end) => (floor.heights[`${end} left`] + floor.heights[`${end} right`]) / 2
  const noseDown = Math.atan((mean('rear') - mean('front')) / (size.wheelbase * MM))
  const pitched = ({ camber, spinAxis }) => camber + noseDown * spinAxis[0]

  const travel = (state, side) => design - state.height[side] * MM
  const machine = (state, side) => mechanism(points, sumOfDisplacements(state[side]))
  /** Pose of one front wheel as a left one; `steer` is the rack (m), or the drop arm's turn (rad). */
  const poseOf = whole ? axleWheel : cornerWheel
  function cornerWheel(state, side, steer = 0) {
    return poseAt(machine(state, side), { travel: travel(state, side), rack: steer })
  }
  function axleWheel(state, side, steer = 0) {
    const [left, right] = [travel(state, 'left'), travel(state, 'right')]
    const across = points.left.wheelCentre[1] - points.right.wheelCentre[1]
    const drive = { heave: (left + right) / 2, roll: Math.asin((left - right) / across), drop: steer }
    const wheel = axlePoseAt(solidAxle(points, state.settings), drive)[side]
    const drawnLeft = side === 'left' ? (p) => p : mirrorPoint
    return { ...wheel, spinAxis: drawnLeft(wheel.spinAxis), wheelCentre: drawnLeft(wheel.wheelCentre) }
  }

  const camberEntry = (state, end, side) => {
    const camber = end === 'front' ? pitched(poseOf(state, side)) : rear[side].camber * DEGREE
    // The rim is clamped a little askew: a tilt that turns with the wheel.
    const askew = (0.08 + 0.1 * random()) * DEGREE
    const phase = 2 * Math.PI * random()
    return {
      method: 'inclinometer',
      wheel: `${end} ${side}`,
      gauge: 'inclinometer',
      readings: [0, 180].map((turn) => ({
        wheelTurn: `${turn}°`,
        reading: angle(leaned(end, side, camber) + askew * Math.sin(phase + turn * DEGREE)),
      })),
    }
  }

  const stringsEntry = (state) => {
    const span = 402
    const yaw = error(0.15 * DEGREE)
    const shift = error(6 * MM)
    const out = 0.14
    const wheels = {}
    const hubs = {}
    for (const end of ['front', 'rear'])
      for (const side of ['left', 'right']) {
        const sign = side === 'left' ? 1 : -1
        const half = (size[`${end}Track`] / 2) * MM
        const pose = end === 'front' ? poseOf(state, side) : null
        const toe = pose ? pose.toe : rear[side].toe * DEGREE
        const [dx, y] = pose ? [pose.wheelCentre[0], pose.wheelCentre[1]] : [0, half]
        const x = (end === 'front' ? 0 : -size.wheelbase * MM) + dx
        const string = (at) => size.frontTrack * 0.5 * MM + out + sign * (shift + yaw * at)
        // The measuring points stand on the rim's edge, a little inboard of the hub's face.
        const edge = (ahead) =>
          string(x + ahead * (span / 2) * MM * Math.cos(toe)) -
          (y + 0.03 - ahead * (span / 2) * MM * Math.sin(toe))
        wheels[`${end} ${side}`] = {
          front: [length(edge(1)), length(edge(1))],
          rear: [length(edge(-1)), length(edge(-1))],
          span: `${span} mm`,
        }
        hubs[`${end} ${side}`] = length(string(x) - (y + 0.05))
      }
    return {
      method: 'strings and rule',
      rule: 'rule',
      strings: 'strings',
      wheels,
      hubs,
      wheelbase: `${size.wheelbase} mm`,
    }
  }

  /** Rack, or turn of the drop arm, at which a front wheel stands `steer` to the left of straight ahead. */
  const rackFor = (state, side, steer) => {
    const straight = poseOf(state, side).toe
    const toLeft = (rack) => (side === 'left' ? -1 : 1) * (poseOf(state, side, rack).toe - straight)
    const [low, high] = whole ? [-0.33, 0.33] : [-0.055, 0.055]
    const rising = toLeft(high) > toLeft(low)
    let [a, b] = [low, high]
    for (let i = 0; i < 60; i++) {
      const middle = (a + b) / 2
      if (toLeft(middle) < steer === rising) a = middle
      else b = middle
    }
    return (a + b) / 2
  }

  const sweepEntry = (state, side, withTilt) => {
    const zero = error(0.15 * DEGREE)
    // Only a gauge along the wheel sees how the wheel tilts.
    const home = withTilt ? poseOf(state, side) : null
    const forward = home && unit(cross(home.spinAxis, [0, 0, 1]))
    const place = (aim) => {
      const steer = (aim + error(0.4)) * DEGREE
      const pose = poseOf(state, side, rackFor(state, side, steer))
      const ahead = home && (whole ? aboutPin(home, pose, side) : carried(frame(home), frame(pose)))(forward)
      return {
        steer: text((steer + zero + error(0.15 * DEGREE)) / DEGREE, 0.5, '°'),
        camber: angle(leaned('front', side, pitched(pose))),
        ...(withTilt ? { tilt: angle(Math.asin(ahead[2] - noseDown * ahead[0])) } : {}),
      }
    }
    return {
      method: 'steer sweep',
      side,
      gauge: 'inclinometer',
      steerGauge: 'turn-plates',
      sweeps: [0, 1, 2].map(() => ({ left: place(20), right: place(-20) })),
    }
  }

  const heightEntry = (wheel, when, height) => ({
    wheel,
    when,
    rule: 'rule',
    readings: [`${height} mm`],
  })
  const truth = (state) =>
    ['left', 'right'].map((side) => {
      const { camber, caster, toe, sai } = poseOf(state, side)
      return `${side}: ${Object.entries({ camber, caster, toe, sai })
        .map(([name, value]) => `${name} ${(value / DEGREE).toFixed(2)}°`)
        .join(', ')}`
    })
  return { points, camberEntry, stringsEntry, sweepEntry, heightEntry, truth, random }
}

const cross = ([a, b, c], [x, y, z]) => [b * z - c * y, c * x - a * z, a * y - b * x]
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const minus = (a, b) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const unit = (v) => v.map((x) => x / Math.hypot(...v))

/** Three axes that turn with the knuckle: its spin axis and two more. */
function frame({ spinAxis, points }) {
  const along = minus(points.tieOuter, points.lowerOuter)
  const across = unit(
    minus(
      along,
      spinAxis.map((x) => x * dot(along, spinAxis)),
    ),
  )
  return { spin: spinAxis, axes: [spinAxis, across, cross(spinAxis, across)] }
}
/** A direction fixed in the knuckle, from one pose to another. */
const carried = (from, to) => (v) => {
  const parts = from.axes.map((axis) => dot(axis, v))
  return [0, 1, 2].map((i) => parts.reduce((sum, part, k) => sum + part * to.axes[k][i], 0))
}

// What is done to the joints of a wheel, as entries. T works, K looks a second time.
const calibrations = { 'long-wrench': '2025-11-18', 'short-wrench': '2025-11-18' }
const joint = (wheel) => ({
  undone: (name, to = 'open', remark) => [
    'undone',
    { joint: name, wheel, to, ...(remark ? { remark } : {}), hand: 'T' },
    3,
  ],
  runUp: (name, more = {}) => ['tightened', { stage: 'run up', joint: name, wheel, ...more, hand: 'T' }, 2],
  stage: (name, number, torque, more = {}) => [
    'tightened',
    { stage: 'stage', number, joint: name, wheel, torque, ...wrenchFor(torque), ...more, hand: 'T' },
    2,
  ],
  final: (name, torque, more = {}) => [
    'tightened',
    {
      stage: 'final',
      joint: name,
      wheel,
      ...(torque ? { torque, ...wrenchFor(torque) } : {}),
      ...more,
      hand: 'T',
    },
    3,
  ],
  pinned: (name) => ['pinned', { joint: name, wheel, pin: 'new', legsBent: true, hand: 'T' }, 1],
  checked: (name, how = 'looked at and felt') => [
    'checked',
    { joint: name, wheel, by: 'another person', how, passed: true, hand: 'K' },
    2,
  ],
})
function wrenchFor(torque) {
  const wrench = Number.parseFloat(torque) > 60 ? 'long-wrench' : 'short-wrench'
  return { wrench, calibrated: calibrations[wrench] }
}

/** The same for a knuckle that turns about a kingpin, whose direction caster and SAI give. */
function aboutPin(from, to, side) {
  const k = unit([-Math.tan(from.caster), -Math.tan(from.sai), 1])
  const angle = (side === 'left' ? 1 : -1) * (to.steer - from.steer)
  const turned = (v) => {
    const across = cross(k, v)
    const along = dot(k, v) * (1 - Math.cos(angle))
    return v.map((x, i) => x * Math.cos(angle) + across[i] * Math.sin(angle) + k[i] * along)
  }
  if (Math.hypot(...minus(turned(from.spinAxis), to.spinAxis)) > 1e-9)
    throw new Error('The knuckle does not turn about its kingpin.')
  return turned
}

/** Writes a job with stamps a few minutes apart, after reading it back. */
function write(path, { job, entries, day }) {
  let minute = 0
  const stamped = entries.map(([kind, data, wait = 4]) => {
    minute += wait
    const hours = String(7 + Math.floor(minute / 60)).padStart(2, '0')
    return { kind, data, at: `${day}T${hours}:${String(minute % 60).padStart(2, '0')}:00+01:00` }
  })
  const value = must(readJob({ format: 1, workshop: 'Harbour yard, bay 2', job, entries: stamped }))
  const { format, kind, ...rest } = writeJob(value)
  writeFileSync(
    join(examples, path),
    `${JSON.stringify({ $schema: '../../schema/job.schema.json', format, kind, ...rest }, null, 2)}\n`,
  )
  console.log(`examples/${path}: ${entries.length} entries`)
}

/** The right lower arm is new, both coils are in: what is done, and what waits for ride height and the last move. */
function refit07() {
  const [left, right] = [joint('front left'), joint('front right')]
  const dry = { condition: 'dry' }
  return [
    right.runUp('lower-front-bolt', dry),
    right.runUp('lower-rear-bolt', dry),
    right.runUp('damper-bottom-bolt', { fastener: 'new' }),
    right.runUp('drop-link-bottom-nut', { fastener: 'new' }),
    right.stage('lower-ball-joint', 1, '105 N·m', dry),
    right.final('lower-ball-joint', '105 N·m', dry),
    right.pinned('lower-ball-joint'),
    right.checked('lower-ball-joint'),
    left.stage('lower-ball-joint', 1, '105 N·m', dry),
    left.final('lower-ball-joint', '105 N·m', dry),
    left.pinned('lower-ball-joint'),
    ...[left, right].flatMap((side) => [
      side.runUp('wheel-nuts'),
      side.stage('wheel-nuts', 1, '60 N·m', { position: ['on the ground'] }),
    ]),
    right.final('wheel-nuts', '160 N·m', { position: ['on the ground'] }),
    right.checked('wheel-nuts', 'pulled again'),
  ]
}

function unit07() {
  const corner = must(readCorner(file('port-unit-07/front.corner.json')))
  const size = { wheelbase: 3050, frontTrack: 1544, rearTrack: 1530 }
  const v = vehicle({
    corner,
    seed: 7_0412,
    size,
    rear: { left: { camber: -0.52, toe: 0.13 }, right: { camber: -0.46, toe: 0.08 } },
  })
  const [frontEccentric, rearEccentric, tieRod] = adjustersOf(corner)
  const at = (adjuster, setting) => displacementOf(adjuster, v.points, setting)
  const left = [at(frontEccentric, -6 * DEGREE), at(rearEccentric, -9 * DEGREE), at(tieRod, -0.1)]
  // The right side's upper pivots lie a little further in than drawn; its washers stand far from the middle.
  const rightBody = {
    body: { upperFrontInner: [0, -2.2 * MM, 0], upperRearInner: [0, -1.8 * MM, 0] },
  }
  const right = [
    rightBody,
    at(frontEccentric, 38 * DEGREE),
    at(rearEccentric, -24 * DEGREE),
    at(tieRod, -0.55),
  ]
  // Round 1: the worn lower joint lets the knuckle's foot come out; the right coil has sagged.
  const worn = { knuckle: { lowerOuter: [0, -0.9 * MM, 0] } }
  const before = { left, right: [...right, worn], height: { left: 441, right: 428 } }
  const after = { left, right, height: { left: 442, right: 439 } }
  console.log('unit 07, round 1 truth', v.truth(before))
  console.log('unit 07, round 2 truth', v.truth(after))

  const angles = (state) => [
    ...['front', 'rear'].flatMap((end) =>
      ['left', 'right'].map((side) => ['reading', v.camberEntry(state, end, side), 3]),
    ),
    ['reading', v.sweepEntry(state, 'left', false), 9],
    ['reading', v.sweepEntry(state, 'right', false), 9],
    ['reading', v.stringsEntry(state), 14],
  ]
  const settled = (heights) =>
    Object.entries(heights).map(([wheel, height]) => [
      'ride height',
      v.heightEntry(wheel, 'settled', height),
      1,
    ])

  const entries = [
    [
      'opened',
      {
        number: '7-0412',
        vehicle: 'Port unit 07, crew bus',
        complaint: 'sits low on the right, drifts, knocks on the ramp',
        corners: { front: 'port-unit-07-front' },
        spec: 'port-unit-07-spec',
        kit: 'port-kit',
        mileage: '148 200 km',
        invented: true,
      },
    ],
    ['set pressures', { front: '325 kPa', rear: '400 kPa' }],
    ['ride height', v.heightEntry('front left', 'before lifting', 441), 2],
    ['ride height', v.heightEntry('front right', 'before lifting', 482), 1],
    ['ride height', v.heightEntry('rear right', 'before lifting', 445), 1],
    ['ride height', v.heightEntry('rear left', 'before lifting', 447), 1],
    ['correction', { of: 3, data: { readings: ['428 mm'] }, why: 'figures changed over when typed' }, 1],
    ['floor', { bay: 'bay-2' }],
    [
      'play',
      {
        joint: 'lower-ball-joint',
        wheel: 'front right',
        direction: 'up and down',
        gauge: 'dial',
        moves: 'camber',
        swings: ['1.91 mm', '1.88 mm', '1.90 mm'],
        arm: '318 mm',
      },
      12,
    ],
    ['round', { number: 1, purpose: 'as found', settled: true }, 10],
    ...settled({ 'front left': 441, 'front right': 428, 'rear right': 445, 'rear left': 447 }),
    ...angles(before),
    ['caution acknowledged', { caution: 'spring not held' }, 20],
    ['as found', { adjuster: 'lower-front-eccentric', wheel: 'front left', clock: "12 o'clock" }],
    ['as found', { adjuster: 'lower-rear-eccentric', wheel: 'front left', clock: '11:45' }],
    ['as found', { adjuster: 'lower-front-eccentric', wheel: 'front right', clock: '10:45' }],
    [
      'as found',
      {
        adjuster: 'lower-rear-eccentric',
        wheel: 'front right',
        clock: '12:45',
        remark: 'the paint mark has slipped; a new one is scribed',
      },
    ],
    ['as found', { adjuster: 'tie-rod', wheel: 'front left', setting: '0 turns', exposedThread: '31.5 mm' }],
    ['as found', { adjuster: 'tie-rod', wheel: 'front right', setting: '0 turns', exposedThread: '28 mm' }],
    ...['front left', 'front right'].flatMap((wheel) => [
      joint(wheel).undone('wheel-nuts', 'cracked'),
      joint(wheel).undone('wheel-nuts'),
      joint(wheel).undone('lower-ball-joint', 'on a few threads', 'parted with the separator'),
      joint(wheel).undone('lower-ball-joint'),
    ]),
    ['part renewed', { part: 'lower-arm', wheels: ['front right'], remark: 'with its joint and bushes' }, 90],
    ['part renewed', { part: 'coil', wheels: ['front left', 'front right'], remark: 'as a pair' }, 30],
    ...refit07(),
    ['ride height', v.heightEntry('front left', 'hanging', 517), 2],
    ['ride height', v.heightEntry('front right', 'hanging', 516), 1],
    ['note', { text: 'Bush bolts of the lower arms stay run up until the last move.' }],
    ['round', { number: 2, purpose: 'provisional', settled: true }, 15],
    ...settled({ 'front left': 442, 'front right': 439, 'rear right': 446, 'rear left': 447 }),
    [
      'play',
      {
        joint: 'lower-ball-joint',
        wheel: 'front right',
        direction: 'up and down',
        gauge: 'dial',
        moves: 'camber',
        swings: ['0.04 mm', '0.05 mm'],
        arm: '318 mm',
      },
    ],
    ...angles(after),
  ]
  write('port-unit-07/port-unit-07.job.json', { job: '7-0412', entries, day: '2026-03-10' })
}

/** The right lower arm and rod end are new; its pivot bolts wait for ride height, the lock nut for the last move. */
function refit12() {
  const right = joint('front right')
  const fresh = { fastener: 'new' }
  return [
    right.runUp('lower-front-bolt', fresh),
    right.runUp('lower-rear-bolt', fresh),
    right.final('lower-ball-joint', '54 N·m', fresh),
    right.checked('lower-ball-joint', 'pulled again'),
    right.final('tie-rod-end', '50 N·m', { ...fresh, position: ['wheels straight'] }),
    right.runUp('tie-rod-lock-nut'),
    right.runUp('wheel-nuts'),
    right.stage('wheel-nuts', 1, '50 N·m', { position: ['on the ground'] }),
    right.final('wheel-nuts', '110 N·m', { position: ['on the ground'] }),
    right.final('axle-nut', '200 N·m', { condition: 'dry', position: ['on the ground'] }),
    right.pinned('axle-nut'),
    right.checked('axle-nut'),
  ]
}

function unit12() {
  const corner = must(readCorner(file('port-unit-12/front.corner.json')))
  const size = { wheelbase: 2560, frontTrack: 1470, rearTrack: 1462 }
  const v = vehicle({
    corner,
    seed: 12_0077,
    size,
    rear: { left: { camber: -1.02, toe: 0.11 }, right: { camber: -0.95, toe: 0.13 } },
  })
  const [slot, tieRod] = adjustersOf(corner)
  const at = (adjuster, setting) => displacementOf(adjuster, v.points, setting)
  // A bent strut turns the knuckle against the strut's top like a slot far beyond its own end.
  const bent = displacementOf({ ...slot, range: [-10 * MM, 10 * MM] }, v.points, -2.95 * MM)
  const left = [at(slot, 0.1 * MM), at(tieRod, -0.12)]
  const right = [bent, at(slot, 0), at(tieRod, -0.9)]
  const now = { left, right, height: { left: 373, right: 371 } }
  console.log('unit 12, truth', v.truth(now))
  console.log(
    'unit 12, right slot at its end',
    v.truth({
      ...now,
      right: [
        displacementOf({ ...slot, range: [-10 * MM, 10 * MM] }, v.points, -1.55 * MM),
        at(tieRod, -0.9),
      ],
    })[1],
  )
  const entries = [
    [
      'opened',
      {
        number: '12-0077',
        vehicle: 'Port unit 12, small van',
        complaint: 'hit a kerb with the right front wheel; pulls to the left, steering wheel off centre',
        corners: { front: 'port-unit-12-front' },
        spec: 'port-unit-12-spec',
        kit: 'port-kit',
        mileage: '61 900 km',
        invented: true,
      },
    ],
    ['set pressures', { front: '240 kPa', rear: '260 kPa' }],
    ...Object.entries({ 'front left': 373, 'front right': 371, 'rear right': 383, 'rear left': 382 }).map(
      ([wheel, height]) => ['ride height', v.heightEntry(wheel, 'before lifting', height), 1],
    ),
    ['floor', { bay: 'bay-2' }],
    [
      'as found',
      { adjuster: 'strut-slot', wheel: 'front left', setting: '0 mm', remark: 'washer print in the middle' },
      10,
    ],
    [
      'as found',
      { adjuster: 'strut-slot', wheel: 'front right', setting: '0 mm', remark: 'washer print in the middle' },
    ],
    ['as found', { adjuster: 'tie-rod', wheel: 'front left', setting: '0 turns', exposedThread: '24 mm' }],
    ['as found', { adjuster: 'tie-rod', wheel: 'front right', setting: '0 turns', exposedThread: '24.5 mm' }],
    joint('front right').undone('axle-nut', 'cracked', 'on the ground, brake held'),
    joint('front right').undone('wheel-nuts', 'cracked'),
    joint('front right').undone('wheel-nuts'),
    joint('front right').undone('axle-nut', 'open', 'the shaft is pushed back to get at the ball joint'),
    ['part renewed', { part: 'lower-arm', wheels: ['front right'], remark: 'bent at its outer end' }, 60],
    ['part renewed', { part: 'tie-rod', wheels: ['front right'], remark: 'outer joint only' }, 15],
    ...refit12(),
    ['ride height', v.heightEntry('front left', 'hanging', 452), 2],
    ['ride height', v.heightEntry('front right', 'hanging', 450), 1],
    ['round', { number: 1, purpose: 'provisional', settled: true }, 15],
    ...Object.entries({ 'front left': 373, 'front right': 371, 'rear right': 383, 'rear left': 382 }).map(
      ([wheel, height]) => ['ride height', v.heightEntry(wheel, 'settled', height), 1],
    ),
    ...['front', 'rear'].flatMap((end) =>
      ['left', 'right'].map((side) => ['reading', v.camberEntry(now, end, side), 3]),
    ),
    ['reading', v.sweepEntry(now, 'left', true), 10],
    ['reading', v.sweepEntry(now, 'right', true), 10],
    ['reading', v.stringsEntry(now), 14],
  ]
  write('port-unit-12/port-unit-12.job.json', { job: '12-0077', entries, day: '2026-03-11' })
}

/** Both front springs and the right kingpin are new: every stage of a bolt book at once. */
function refit03() {
  const [left, right] = [joint('front left'), joint('front right')]
  const dry = { condition: 'dry' }
  const ground = { position: ['on the ground'] }
  const straight = { position: ['wheels straight'] }
  return [
    right.final('kingpin-bushes', null, { fastener: 'new', remark: 'reamed in line, cap greased' }),
    right.checked('kingpin-bushes'),
    right.final('kingpin-cotter', '55 N·m', { ...dry, fastener: 'new' }),
    right.checked('kingpin-cotter', 'pulled again'),
    right.runUp('kingpin-sleeve-clamp', dry),
    right.stage('tie-rod-end', 1, '120 N·m', { ...dry, ...straight }),
    right.final('tie-rod-end', '120 N·m', { ...dry, ...straight }),
    right.pinned('tie-rod-end'),
    right.checked('tie-rod-end'),
    right.final('hub-nut', null, { endFloat: '0.06 mm', remark: 'seated at 60 N·m turning, backed off 45°' }),
    right.pinned('hub-nut'),
    right.checked('hub-nut'),
    right.final('caliper-bolts', '160 N·m', { condition: 'locking compound', fastener: 'new' }),
    ...[left, right].flatMap((side) => [
      side.runUp('spring-front-eye'),
      side.runUp('shackle-bottom-bolt'),
      side.runUp('u-bolts', { ...dry, fastener: 'new' }),
      side.runUp('wheel-nuts', dry),
      side.stage('wheel-nuts', 1, '80 N·m', { ...dry, ...ground }),
      side.stage('u-bolts', 1, '50 N·m', { ...dry, ...ground }),
      side.stage('u-bolts', 2, '100 N·m', { ...dry, ...ground }),
    ]),
    left.final('u-bolts', '145 N·m', { ...dry, ...ground }),
    left.checked('u-bolts', 'pulled again'),
    right.final('wheel-nuts', '190 N·m', { ...dry, ...ground }),
    left.undone('drag-link-rear-end', 'on a few threads', 'parted to feel the joint by itself'),
    left.runUp('drag-link-rear-end', straight),
  ]
}

function unit03() {
  const corner = must(readCorner(file('port-unit-03/front.corner.json')))
  const size = { wheelbase: 2900, frontTrack: 1640, rearTrack: 1520 }
  const v = vehicle({
    corner,
    seed: 3_0218,
    size,
    rear: { left: { camber: 0.08, toe: 0.05 }, right: { camber: -0.06, toe: 0.02 } },
  })
  const [sleeve] = adjustersOf(corner)
  const [tieRod, dragLink] = axleAdjustersOf(corner)
  /** Sleeves as they stand, ° of their turn, and what the rods' threads are turned by. */
  const settings = ({ left, right, worn = 0 }) => {
    const tilt = (angle) => sleeveTilt([{ offset: sleeve.tilt, angle: angle * DEGREE }])
    const loose = tilt(right)
    return {
      tilt: { left: tilt(left), right: { ...loose, camber: loose.camber + worn * DEGREE } },
      // The right end of the beam is bent a little: nothing adjusts that.
      shim: { right: { camber: -0.35 * DEGREE, toe: 0 } },
      tieRod: strokeOf(tieRod, 0.4),
      dragLink: strokeOf(dragLink, 0.85),
    }
  }
  // Round 1: the worn kingpin lets the wheel lean in; the right spring's main leaf is cracked.
  const before = {
    settings: settings({ left: 90, right: 210, worn: -0.45 }),
    height: { left: 452, right: 436 },
  }
  const after = { settings: settings({ left: 90, right: 210 }), height: { left: 457, right: 455 } }
  console.log('unit 03, round 1 truth', v.truth(before))
  console.log('unit 03, round 2 truth', v.truth(after))
  console.log(
    'unit 03, right sleeve at 30°',
    v.truth({ ...after, settings: settings({ left: 90, right: 30 }) })[1],
  )
  const settled = (heights) =>
    Object.entries(heights).map(([wheel, height]) => [
      'ride height',
      v.heightEntry(wheel, 'settled', height),
      1,
    ])
  const camber = (state) =>
    ['front', 'rear'].flatMap((end) =>
      ['left', 'right'].map((side) => ['reading', v.camberEntry(state, end, side), 3]),
    )
  const play = (swings) => ({
    joint: 'kingpin-bushes',
    wheel: 'front right',
    direction: 'in and out',
    gauge: 'dial',
    moves: 'camber',
    swings,
    arm: '342 mm',
  })
  const found = (adjuster, wheel, more) => ['as found', { adjuster, wheel, ...more }]
  const entries = [
    [
      'opened',
      {
        number: '3-0218',
        vehicle: 'Port unit 03, small tipper',
        complaint: 'wanders, leans to the right, the right front tyre is worn at its inner shoulder',
        corners: { front: 'port-unit-03-front' },
        spec: 'port-unit-03-spec',
        kit: 'port-kit',
        mileage: '96 700 km',
        invented: true,
      },
    ],
    ['set pressures', { front: '375 kPa', rear: '425 kPa' }],
    ['ride height', v.heightEntry('front left', 'before lifting', 452), 2],
    ['ride height', v.heightEntry('front right', 'before lifting', 436), 1],
    ['ride height', v.heightEntry('rear right', 'before lifting', 501), 1],
    ['ride height', v.heightEntry('rear left', 'before lifting', 503), 1],
    ['floor', { bay: 'bay-2' }],
    [
      'hand check',
      {
        check: 'rock at 12 and 6',
        wheel: 'front right',
        joint: 'kingpin-bushes',
        found: ['play'],
        remark: 'stays with the brake held',
        hand: 'T',
      },
      8,
    ],
    ['play', play(['2.91 mm', '2.87 mm', '2.90 mm']), 6],
    [
      'hand check',
      {
        check: 'looked at',
        wheel: 'front right',
        part: 'leaf-spring',
        found: ['cracked'],
        remark: 'main leaf, behind the centre bolt',
        hand: 'T',
      },
    ],
    ['round', { number: 1, purpose: 'as found', settled: true }, 10],
    ...settled({ 'front left': 452, 'front right': 436, 'rear right': 501, 'rear left': 503 }),
    ...camber(before),
    ['reading', v.stringsEntry(before), 14],
    [
      'mark',
      {
        what: 'drop arm to shaft',
        wheel: 'front left',
        joint: 'drop-arm-nut',
        wayRound: 'one scribed line across both',
        remark: 'not taken off; marked to be sure',
      },
      10,
    ],
    found('kingpin-sleeve', 'front left', { clock: "3 o'clock" }),
    found('kingpin-sleeve', 'front right', {
      clock: "5 o'clock",
      remark: 'seen from above; its notch was under grease',
    }),
    found('tie-rod', 'front left', { setting: '0 turns', exposedThread: '22 mm' }),
    found('drag-link', 'front left', { setting: '0 turns', exposedThread: '19.5 mm' }),
    ['caution acknowledged', { caution: 'spring not held' }, 15],
    ...['front left', 'front right'].flatMap((wheel) => [
      joint(wheel).undone('wheel-nuts', 'cracked'),
      joint(wheel).undone('wheel-nuts'),
      joint(wheel).undone('u-bolts', 'open', 'axle on stands, springs slack'),
    ]),
    joint('front right').undone('caliper-bolts', 'open', 'caliper hung on a hook'),
    joint('front right').undone('hub-nut', 'open', 'hub off with its disc'),
    joint('front right').undone('tie-rod-end', 'on a few threads'),
    joint('front right').undone('tie-rod-end'),
    [
      'part renewed',
      { part: 'leaf-spring', wheels: ['front left', 'front right'], remark: 'as a pair' },
      120,
    ],
    [
      'part renewed',
      { part: 'kingpin', wheels: ['front right'], remark: 'with its bushes and thrust bearing' },
      90,
    ],
    ...refit03(),
    ['ride height', v.heightEntry('front left', 'hanging', 541), 2],
    ['ride height', v.heightEntry('front right', 'hanging', 540), 1],
    ['note', { text: 'Spring eyes and shackles stay run up until the vehicle has settled.' }],
    ['round', { number: 2, purpose: 'provisional', settled: true }, 15],
    ...settled({ 'front left': 457, 'front right': 455, 'rear right': 501, 'rear left': 503 }),
    ['play', play(['0.09 mm', '0.08 mm']), 5],
    ...camber(after),
    ['reading', v.sweepEntry(after, 'left', true), 9],
    ['reading', v.sweepEntry(after, 'right', true), 9],
    ['reading', v.stringsEntry(after), 14],
  ]
  write('port-unit-03/port-unit-03.job.json', { job: '3-0218', entries, day: '2026-03-12' })
}

unit07()
unit12()
unit03()
