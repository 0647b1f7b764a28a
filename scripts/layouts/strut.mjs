// Front corner with a strut: lower arm on a sub-frame, rack, drive shaft.
import { bonded, compose, joint, points } from './compose.mjs'
import { antiRollBar, rack } from './steering-and-bar.mjs'
import { discBrake, driveShaft, pressedHub, speedLead, wheel } from './wheel-and-brake.mjs'

const wheelOff = { partOff: 'wheel' }

/** Small car or van: two slotted places, at the strut's foot and at its top. */
function strut() {
  const centre = [0, 742, 303]
  const armBolt = (name, at, stiffness) =>
    joint('bolt', ['lower-arm', 'sub-frame'], {
      name,
      at,
      thread: 'M12x1.5',
      class: '10.9',
      spanner: '18 mm',
      ...bonded(stiffness),
      reuse: 'new',
      red: true,
      minutes: [4, 8, 25],
    })
  const footBolt = (kind, name, at, more) =>
    joint(kind, ['strut', 'knuckle'], {
      name,
      at,
      thread: 'M14x1.5',
      class: '10.9',
      spanner: '21 mm',
      reuse: 'new',
      red: true,
      access: [wheelOff],
      ...more,
    })
  return compose(
    {
      id: 'typical-strut-front',
      name: 'Strut, front, driven',
      layout: 'strut',
      axle: 'front',
      wheel: {
        tyre: '195/65R15',
        loadedRadius: '303 mm',
        width: '195 mm',
        rim: '402 mm',
        studs: 5,
        camber: '-0.5°',
        toe: '0.05°',
      },
      wheelRate: '22 N/mm',
    },
    points({
      'lower-front-pivot': [24, 362, 192],
      'lower-rear-pivot': [-292, 356, 203],
      'lower-outer': [6, 695, 180],
      'strut-top': [-33, 553, 852],
      'strut-lower': [-5, 612, 412],
      'tie-inner': [-148, 340, 250],
      'tie-outer': [-132, 674, 240],
      'wheel-centre': centre,
    }),
    points(
      {
        'strut-upper-bolt': [-4, 636, 394],
        'strut-lower-bolt': [-3, 644, 334],
        'coil-top': [-30, 562, 815],
        'coil-bottom': [-12, 596, 560],
        'sub-frame-mount': [120, 430, 230],
      },
      15,
    ),
    {
      parts: {
        body: { kind: 'body' },
        'sub-frame': { kind: 'sub-frame', heavy: true },
        'lower-arm': {
          kind: 'arm',
          links: [
            ['lower-front-pivot', 'lower-outer'],
            ['lower-rear-pivot', 'lower-outer'],
          ],
          wears: ['bush'],
        },
        'lower-ball-joint': { kind: 'ball joint', wears: ['joint', 'boot'] },
        knuckle: { kind: 'knuckle' },
        strut: { kind: 'strut', links: [['strut-lower', 'strut-top']], wears: ['damper'] },
        coil: {
          kind: 'spring',
          between: ['strut', 'top-mount'],
          ends: ['coil-bottom', 'coil-top'],
          stores: 'coil',
          wears: ['spring'],
        },
        'top-mount': { kind: 'top mount', wears: ['bearing', 'bush'] },
        'arch-liner': { kind: 'shield', name: 'liner of the wheel arch' },
      },
      joints: {
        'lower-front-bolt': armBolt('lower front pivot bolt', 'lower-front-pivot', 1.1),
        'lower-rear-bolt': armBolt('lower rear pivot bolt', 'lower-rear-pivot', 1.6),
        'lower-ball-joint-pinch-bolt': joint('pinch bolt', ['lower-ball-joint', 'knuckle'], {
          name: 'pinch bolt of the lower ball joint',
          at: 'lower-outer',
          thread: 'M10x1.5',
          class: '10.9',
          spanner: '16 mm',
          tool: 'drift',
          reuse: 'new',
          red: true,
          marks: ['which way round the bolt stands'],
          access: [wheelOff],
        }),
        'lower-ball-joint-rivets': joint('ball-joint rivets', ['lower-ball-joint', 'lower-arm'], {
          name: 'rivets of the lower ball joint in the arm',
          count: 3,
          reuse: 'new',
          consumables: ['bolts and nuts that come with the new ball joint'],
          red: true,
          minutes: [15, 25, 45],
          access: [
            { jointOpen: 'lower-ball-joint-pinch-bolt', why: 'the arm is pulled down clear of the knuckle' },
          ],
        }),
        'strut-upper-bolt': footBolt(
          'slotted bolt',
          'upper bolt of strut and knuckle, in its slot',
          'strut-upper-bolt',
          {
            adjuster: 'strut-slot',
            marks: ['place of the bolt in the slot: a line across strut and knuckle'],
          },
        ),
        'strut-lower-bolt': footBolt('bolt', 'lower bolt of strut and knuckle', 'strut-lower-bolt', {}),
        'top-mount-nuts': joint('stud nuts', ['top-mount', 'body'], {
          name: 'nuts of the top mount on the body',
          at: 'strut-top',
          thread: 'M8x1.25',
          spanner: '13 mm',
          count: 3,
          reuse: 'new',
          red: true,
          adjuster: 'top-plate',
          marks: ['place of the studs in their slots', 'top mount to body'],
        }),
        'strut-top-nut': joint('strut top nut', ['strut', 'top-mount'], {
          name: 'nut of the piston rod on the top mount',
          thread: 'M14x1.5',
          spanner: '21 mm',
          tool: 'spring compressor',
          reuse: 'new',
          red: true,
          marks: ['order of the parts on the rod'],
          minutes: [10, 18, 30],
          access: [
            { jointOpen: 'top-mount-nuts', why: 'the strut is on the bench, its coil in a compressor' },
            { jointOpen: 'strut-upper-bolt', why: 'the strut is on the bench' },
            ...['strut-lower-bolt', 'hose-bracket', 'speed-lead-clip', 'drop-link-to-wheel'].map((name) => ({
              jointOpen: name,
              why: 'the strut is on the bench',
            })),
          ],
        }),
        'coil-top-seat': joint('seat', ['coil', 'top-mount'], {
          name: 'upper seat of the coil',
          at: 'coil-top',
          marks: ['which end is up', 'where the coil ends in its seat'],
          access: [{ jointOpen: 'strut-top-nut' }],
        }),
        'coil-bottom-seat': joint('seat', ['coil', 'strut'], {
          name: 'lower seat of the coil',
          at: 'coil-bottom',
          marks: ['where the coil ends in its seat'],
          access: [{ jointOpen: 'strut-top-nut' }],
        }),
        'sub-frame-bolts': joint('bolt', ['sub-frame', 'body'], {
          name: 'bolts of the sub-frame',
          at: 'sub-frame-mount',
          thread: 'M14x1.5',
          class: '10.9',
          spanner: '21 mm',
          count: 2,
          reuse: 'new',
          red: true,
          adjuster: 'sub-frame-shift',
          marks: ['outline of the sub-frame on the body'],
          minutes: [8, 15, 35],
        }),
        'arch-liner-clips': joint('clip', ['arch-liner', 'body'], {
          name: 'clips of the arch liner',
          count: 8,
          reuse: 'inspect',
          consumables: ['liner clips'],
          access: [wheelOff],
        }),
      },
      adjusters: {
        'strut-slot': {
          kind: 'slotted bolt',
          name: 'slotted strut bolt',
          turns: 'strut',
          pivot: 'strut-lower-bolt',
          axis: [-1, 0, 0],
          boltSpacing: '60.5 mm',
          range: ['-1.4 mm', '1.4 mm'],
          step: '0.1 mm',
          play: '0.05 mm',
          seenFrom: 'front',
          sets: 'camber',
        },
        'top-plate': {
          kind: 'top plate',
          name: 'top mount in its slots',
          moves: 'strut-top',
          along: [0, 1, 0],
          range: ['-6 mm', '6 mm'],
          step: '1 mm',
          play: '0.5 mm',
          seenFrom: 'above',
          sets: 'camber',
        },
        'sub-frame-shift': {
          kind: 'sub-frame shift',
          name: 'sub-frame across the vehicle',
          along: 'y',
          moves: ['lower-front-pivot', 'lower-rear-pivot', 'tie-inner'],
          range: ['-3 mm', '3 mm'],
          step: '0.5 mm',
          play: '0.5 mm',
          seenFrom: 'below',
          sets: 'camber',
        },
      },
      holds: {
        coil: {
          heldBy: [['strut-top-nut']],
          standIn: ['spring compressor on the coil'],
          standInKinds: ['spring compressor'],
          letDown: 'in the compressor',
        },
      },
    },
    wheel({ on: 'hub', thread: 'M12x1.5', spanner: 19, studs: 5 }),
    pressedHub({
      on: 'knuckle',
      free: [
        'lower-ball-joint-pinch-bolt',
        'strut-upper-bolt',
        'strut-lower-bolt',
        'tie-rod-end-stud',
        'speed-sensor-screw',
      ],
    }),
    driveShaft({
      inner: 'ring',
      body: 'body',
      reach: 100,
      inboard: [{ jointOpen: 'drive-shaft-spline', why: 'the outer end comes out first' }],
      outer: [
        {
          jointOpen: 'lower-ball-joint-pinch-bolt',
          why: 'the knuckle swings out far enough only with its lower joint open',
        },
      ],
    }),
    discBrake({ on: 'knuckle', hub: 'hub', body: 'body', bracket: 'strut', at: centre, reach: 120 }),
    speedLead({ on: 'knuckle', by: 'strut', body: 'body', reach: 90, behind: 'arch-liner' }),
    antiRollBar({
      on: 'sub-frame',
      to: 'strut',
      clamp: [-190, 330, 290],
      top: [-70, 590, 560],
      bottom: [-90, 600, 270],
    }),
    rack({
      on: 'sub-frame',
      body: 'body',
      stud: 'lock nut',
      tieThread: [-134, 606, 242],
      mount: [-140, 230, 262],
      mountAccess: [{ jointOpen: 'bar-clamp', why: 'the bar is swung up out of the way of the bolt' }],
    }),
  )
}

export const struts = { 'strut-front': strut }
