// Port unit 07: a worn ball joint, a sagged coil, eccentrics far from the middle.
import { displacementOf } from '../../src/adjust/index.ts'
import { adjustersOf, readCorner } from '../../src/corner/index.ts'
import { file, must, write } from './files.mjs'
import { joint } from './joint-entries.mjs'
import { DEGREE, MM } from './truth.mjs'
import { vehicle } from './vehicle.mjs'

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

/** Writes the job of unit 07. */
export function unit07() {
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
        corners: { front: 'port-unit-07-front', rear: 'port-unit-07-rear' },
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
