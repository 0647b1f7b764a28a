// Port unit 12: a bent strut, out of reach of its slot.
import { displacementOf } from '../../src/adjust/index.ts'
import { adjustersOf, readCorner } from '../../src/corner/index.ts'
import { file, must, write } from './files.mjs'
import { joint } from './joint-entries.mjs'
import { MM } from './truth.mjs'
import { vehicle } from './vehicle.mjs'

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
    right.final('axle-nut', '200 N·m', { condition: 'dry', position: ['wheel held'] }),
    right.pinned('axle-nut'),
    right.checked('axle-nut'),
    right.runUp('wheel-nuts'),
    right.stage('wheel-nuts', 1, '50 N·m', { position: ['on the ground'] }),
    right.final('wheel-nuts', '110 N·m', { position: ['on the ground'] }),
  ]
}

/** Writes the job of unit 12. */
export function unit12() {
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
        corners: { front: 'port-unit-12-front', rear: 'port-unit-12-rear' },
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
    joint('front right').undone('wheel-nuts', 'cracked'),
    joint('front right').undone('wheel-nuts'),
    joint('front right').undone('axle-nut', 'cracked', 'lifted, brake held'),
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
