// Port unit 03: a solid axle on leaf springs, a worn kingpin, a cracked spring, a beam a little bent.
import { strokeOf } from '../../src/adjust/index.ts'
import { adjustersOf, axleAdjustersOf, readCorner } from '../../src/corner/index.ts'
import { sleeveTilt } from '../../src/linkage/index.ts'
import { file, must, write } from './files.mjs'
import { joint } from './joint-entries.mjs'
import { DEGREE } from './truth.mjs'
import { vehicle } from './vehicle.mjs'

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

/** Writes the job of unit 03. */
export function unit03() {
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
