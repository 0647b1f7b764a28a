// Makes the two demo jobs: what gauges would show on invented vehicles whose true state is known here.
// Run by hand after a change of the corner models:
//   node --import tsx scripts/make-examples.mjs && npx biome check --write examples
// The truth: exact poses of the corner models at the settings below, with the faults below, standing on the
// floor of bay 2; then the errors of the kit's gauges, drawn from a seeded generator, and their scales' steps.
import { readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { displacementOf } from '../src/adjust/index.ts'
import { adjustersOf, cornerPoints, readCorner, readJsonText } from '../src/corner/index.ts'
import { readJob, writeJob } from '../src/job/index.ts'
import { floorMapOf, readKit } from '../src/kit/index.ts'
import { mechanism, poseAt, sumOfDisplacements } from '../src/linkage/index.ts'

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
  const points = cornerPoints(corner)
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

  const machine = (state, side) => mechanism(points, sumOfDisplacements(state[side]))
  const poseOf = (state, side, rack = 0) =>
    poseAt(machine(state, side), { travel: design - state.height[side] * MM, rack })

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

  /** Rack at which a front wheel stands `steer` to the left of straight ahead. */
  const rackFor = (state, side, steer) => {
    const straight = poseOf(state, side).toe
    const toLeft = (rack) => (side === 'left' ? -1 : 1) * (poseOf(state, side, rack).toe - straight)
    const [low, high] = [-0.055, 0.055]
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
    const home = frame(poseOf(state, side))
    const forward = unit(cross(home.spin, [0, 0, 1]))
    const place = (aim) => {
      const steer = (aim + error(0.4)) * DEGREE
      const pose = poseOf(state, side, rackFor(state, side, steer))
      const ahead = carried(home, frame(pose), forward)
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
const carried = (from, to, v) => {
  const parts = from.axes.map((axis) => dot(axis, v))
  return [0, 1, 2].map((i) => parts.reduce((sum, part, k) => sum + part * to.axes[k][i], 0))
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
    ['part renewed', { part: 'lower-arm', wheels: ['front right'], remark: 'with its joint and bushes' }, 90],
    ['part renewed', { part: 'coil', wheels: ['front left', 'front right'], remark: 'as a pair' }, 30],
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
    ['part renewed', { part: 'lower-arm', wheels: ['front right'], remark: 'bent at its outer end' }, 60],
    ['part renewed', { part: 'tie-rod', wheels: ['front right'], remark: 'outer joint only' }, 15],
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

unit07()
unit12()
