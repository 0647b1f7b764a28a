// Front corners with two wishbones: coil on the lower arm, coil on the upper arm, torsion bar.
import { bonded, compose, joint, points } from './compose.mjs'
import { antiRollBar, centreLinkSteering, rack } from './steering-and-bar.mjs'
import { boltedHub, discBrake, driveShaft, speedLead, taperRollerHub, wheel } from './wheel-and-brake.mjs'

const wheelOff = { partOff: 'wheel' }

/** A tapered stud with castle nut between a ball joint and the knuckle. */
const castle = (name, joins, at, { thread, spanner, pin }, more = {}) =>
  joint('tapered stud, castle nut', joins, {
    name,
    at,
    thread,
    spanner: `${spanner} mm`,
    slots: 6,
    pin: `${pin} mm`,
    tool: 'separator',
    reuse: 'new pin',
    consumables: [`split pin ${pin} × ${pin === 4 ? 40 : 32}`],
    red: true,
    access: [wheelOff],
    ...more,
  })

/** A pivot bolt of an arm in its bonded bush. */
const pivot = (name, joins, at, [thread, spanner], stiffness, more = {}) =>
  joint(more.adjuster ? 'eccentric bolt' : 'bolt', joins, {
    name,
    at,
    thread,
    class: '10.9',
    spanner: `${spanner} mm`,
    ...bonded(stiffness),
    reuse: more.adjuster ? 'inspect' : 'new',
    red: true,
    minutes: [4, 8, 30],
    ...more,
  })

const eccentric = (name, moves) => ({
  kind: 'eccentric',
  name,
  moves,
  along: [0, 1, 0],
  throw: '5 mm',
  range: ['-90°', '90°'],
  step: '3°',
  play: '2°',
  seenFrom: 'front',
  positiveLooks: 'clockwise',
  markAt: "12 o'clock",
})
const eccentricMarks = ['clock position of both washers', 'which way round the bolt stands']

const coilSeats = (on, body, { top, bottom }) => ({
  'coil-top-seat': joint('seat', ['coil', body], {
    name: 'upper seat of the coil',
    at: 'coil-top',
    marks: ['which end is up', 'where the coil ends in its seat', 'rubber seat'],
    ...(top.length > 0 ? { access: top } : {}),
  }),
  'coil-bottom-seat': joint('seat', ['coil', on], {
    name: 'lower seat of the coil',
    at: 'coil-bottom',
    marks: ['where the coil ends in its seat'],
    ...(bottom.length > 0 ? { access: bottom } : {}),
  }),
})

/** Light van or bus: upper arm on a pivot shaft with shims, coil and damper on the lower arm, rack. */
function coilOnLower() {
  const centre = [0, 775, 335]
  return compose(
    {
      id: 'typical-wishbone-coil-lower',
      name: 'Double wishbone, coil on the lower arm, front',
      layout: 'double-wishbone, coil on lower arm',
      axle: 'front',
      wheel: {
        tyre: '225/70R15',
        loadedRadius: '335 mm',
        width: '225 mm',
        rim: '402 mm',
        studs: 5,
        camber: '-0.3°',
        toe: '0.08°',
      },
      wheelRate: '32 N/mm',
    },
    points({
      'upper-front-pivot': [115, 445, 545],
      'upper-rear-pivot': [-128, 450, 531],
      'upper-outer': [-16, 672, 556],
      'lower-front-pivot': [190, 355, 270],
      'lower-rear-pivot': [-205, 358, 264],
      'lower-outer': [6, 724, 236],
      'tie-inner': [-158, 356, 297],
      'tie-outer': [-140, 696, 274],
      'wheel-centre': centre,
    }),
    points(
      {
        'coil-top': [5, 470, 490],
        'coil-bottom': [2, 545, 250],
        'damper-top': [4, 462, 560],
        'damper-bottom': [0, 550, 240],
        'shaft-front': [75, 440, 545],
        'shaft-rear': [-88, 444, 534],
      },
      15,
    ),
    {
      parts: {
        frame: { kind: 'body' },
        'lower-arm': {
          kind: 'arm',
          links: [
            ['lower-front-pivot', 'lower-outer'],
            ['lower-rear-pivot', 'lower-outer'],
          ],
          wears: ['bush'],
        },
        'lower-ball-joint': { kind: 'ball joint', wears: ['joint', 'boot'] },
        'upper-arm': {
          kind: 'arm',
          links: [
            ['upper-front-pivot', 'upper-outer'],
            ['upper-rear-pivot', 'upper-outer'],
          ],
          wears: ['bush'],
        },
        'upper-ball-joint': { kind: 'ball joint', wears: ['joint', 'boot'] },
        'pivot-shaft': {
          kind: 'rod',
          name: 'pivot shaft of the upper arm',
          links: [['upper-front-pivot', 'upper-rear-pivot']],
        },
        knuckle: { kind: 'knuckle' },
        coil: {
          kind: 'spring',
          between: ['frame', 'lower-arm'],
          ends: ['coil-top', 'coil-bottom'],
          stores: 'coil',
          wears: ['spring'],
        },
        damper: {
          kind: 'damper',
          between: ['frame', 'lower-arm'],
          ends: ['damper-top', 'damper-bottom'],
          wears: ['damper', 'bush'],
        },
      },
      joints: {
        'lower-front-bolt': pivot(
          'lower front pivot bolt',
          ['lower-arm', 'frame'],
          'lower-front-pivot',
          ['M14x1.5', 21],
          1.9,
          {
            access: [{ steering: 'left lock', why: 'the rack boot is in the way of the bolt' }],
          },
        ),
        'lower-rear-bolt': pivot(
          'lower rear pivot bolt',
          ['lower-arm', 'frame'],
          'lower-rear-pivot',
          ['M14x1.5', 21],
          2.3,
        ),
        'lower-ball-joint-stud': castle(
          'stud of the lower ball joint',
          ['lower-ball-joint', 'knuckle'],
          'lower-outer',
          { thread: 'M16x1.5', spanner: 24, pin: 4 },
        ),
        'lower-ball-joint-fit': joint('press fit', ['lower-ball-joint', 'lower-arm'], {
          name: 'press fit of the lower ball joint in the arm',
          tool: 'press',
          reuse: 'new',
          red: true,
          minutes: [8, 15, 40],
          access: [{ jointOpen: 'lower-ball-joint-stud', why: 'the knuckle is swung clear of the press' }],
        }),
        'upper-front-bush-nut': pivot(
          'nut of the upper front bush',
          ['upper-arm', 'pivot-shaft'],
          'upper-front-pivot',
          ['M12x1.5', 18],
          1.3,
        ),
        'upper-rear-bush-nut': pivot(
          'nut of the upper rear bush',
          ['upper-arm', 'pivot-shaft'],
          'upper-rear-pivot',
          ['M12x1.5', 18],
          1.3,
        ),
        'upper-bush-fit': joint('press fit', ['upper-arm', 'pivot-shaft'], {
          name: 'bushes of the upper arm over the ends of the pivot shaft',
          tool: 'press',
          reuse: 'new',
          minutes: [10, 20, 45],
          access: ['upper-front-bush-nut', 'upper-rear-bush-nut', 'shaft-front-bolt', 'shaft-rear-bolt'].map(
            (name) => ({
              jointOpen: name,
              why: 'arm and shaft come off together; the bushes are pressed on the bench',
            }),
          ),
        }),
        'shaft-front-bolt': joint('bolt', ['pivot-shaft', 'frame'], {
          name: 'front bolt of the pivot shaft, with its shims',
          at: 'shaft-front',
          thread: 'M14x1.5',
          class: '10.9',
          spanner: '21 mm',
          reuse: 'inspect',
          red: true,
          adjuster: 'front-shims',
          marks: ['shims: how many and how thick'],
        }),
        'shaft-rear-bolt': joint('bolt', ['pivot-shaft', 'frame'], {
          name: 'rear bolt of the pivot shaft, with its shims',
          at: 'shaft-rear',
          thread: 'M14x1.5',
          class: '10.9',
          spanner: '21 mm',
          reuse: 'inspect',
          red: true,
          adjuster: 'rear-shims',
          marks: ['shims: how many and how thick'],
        }),
        'upper-ball-joint-stud': castle(
          'stud of the upper ball joint',
          ['upper-ball-joint', 'knuckle'],
          'upper-outer',
          { thread: 'M14x1.5', spanner: 22, pin: 3.2 },
        ),
        'upper-ball-joint-bolts': joint('ball-joint bolts', ['upper-ball-joint', 'upper-arm'], {
          name: 'bolts of the upper ball joint in the arm',
          thread: 'M8x1.25',
          class: '10.9',
          spanner: '13 mm',
          count: 4,
          reuse: 'new',
          consumables: ['bolts and nuts that come with the new ball joint'],
          red: true,
          access: [wheelOff],
        }),
        'damper-top-nut': joint('stud nuts', ['damper', 'frame'], {
          name: 'upper nut of the damper',
          at: 'damper-top',
          thread: 'M10x1.25',
          spanner: '16 mm',
          count: 1,
          reuse: 'new',
          marks: ['order of washers and cushions'],
        }),
        'damper-bottom-bolts': joint('bolt', ['damper', 'lower-arm'], {
          name: 'lower bolts of the damper',
          at: 'damper-bottom',
          thread: 'M10x1.5',
          class: '10.9',
          spanner: '16 mm',
          count: 2,
          reuse: 'new',
        }),
        ...coilSeats('lower-arm', 'frame', {
          top: [{ arm: 'lowered', why: 'the coil is longer than the gap until the arm hangs' }],
          bottom: [
            { partOff: 'damper', why: 'it stands inside the coil' },
            { jointOpen: 'drop-link-to-wheel', why: 'the arm goes lower than the link lets it' },
            { jointOpen: 'lower-ball-joint-stud', why: 'the arm goes lower than the knuckle lets it' },
            { arm: 'lowered', why: 'the coil has no load left' },
          ],
        }),
      },
      adjusters: {
        'front-shims': shims('front shims of the pivot shaft', 'upper-front-pivot'),
        'rear-shims': shims('rear shims of the pivot shaft', 'upper-rear-pivot'),
      },
      holds: {
        coil: {
          heldBy: [
            ['lower-front-bolt', 'lower-rear-bolt', 'damper-top-nut', 'damper-bottom-bolts'],
            [
              'lower-front-bolt',
              'lower-rear-bolt',
              'lower-ball-joint-fit',
              'lower-ball-joint-stud',
              'upper-ball-joint-stud',
              'upper-ball-joint-bolts',
              'upper-front-bush-nut',
              'upper-rear-bush-nut',
              'shaft-front-bolt',
              'shaft-rear-bolt',
            ],
          ],
          standIn: [
            'jack under the lower arm, far outboard, its saddle located; coil tethered to the frame',
            'spring compressor in the coil',
          ],
          standInKinds: ['jack under the arm', 'spring compressor'],
          letDown: 'with the jack',
          droopStop: ['damper-top-nut', 'damper-bottom-bolts'],
        },
      },
    },
    wheel({ on: 'hub', thread: 'M14x1.5', spanner: 21, studs: 5 }),
    taperRollerHub({ on: 'knuckle' }),
    discBrake({
      on: 'knuckle',
      hub: 'hub',
      body: 'frame',
      bracket: 'upper-arm',
      at: centre,
      reach: 110,
      carrier: ['M14x1.5', 21],
      disc: 'bolts',
    }),
    speedLead({ on: 'knuckle', by: 'upper-arm', body: 'frame', reach: 90 }),
    antiRollBar({
      on: 'frame',
      to: 'lower-arm',
      clamp: [260, 380, 300],
      top: [150, 590, 330],
      bottom: [110, 600, 245],
      barEnd: 'top',
    }),
    rack({
      on: 'frame',
      body: 'frame',
      stud: 'castle',
      tieThread: [-143, 628, 279],
      mount: [-150, 250, 305],
    }),
  )
}

const shims = (name, moves) => ({
  kind: 'shims',
  name,
  moves: [moves],
  along: [0, -1, 0],
  sizes: ['0.5 mm', '1 mm', '2 mm', '3 mm'],
  asDrawn: '4 mm',
  range: ['0 mm', '10 mm'],
  step: '0.5 mm',
})

/** Older saloon: coil and damper on the upper arm, lower arm with a radius rod, box and centre link. */
function coilOnUpper() {
  const centre = [0, 705, 295]
  return compose(
    {
      id: 'typical-wishbone-coil-upper',
      name: 'Double wishbone, coil on the upper arm, front',
      layout: 'double-wishbone, coil on upper arm',
      axle: 'front',
      wheel: {
        tyre: '185/70R14',
        loadedRadius: '295 mm',
        width: '185 mm',
        rim: '377 mm',
        studs: 5,
        camber: '0.25°',
        toe: '0.08°',
      },
      wheelRate: '20 N/mm',
    },
    points({
      'upper-front-pivot': [98, 402, 468],
      'upper-rear-pivot': [-106, 405, 459],
      'upper-outer': [-10, 610, 478],
      'lower-front-pivot': [395, 430, 232],
      'lower-rear-pivot': [-14, 300, 226],
      'lower-outer': [4, 660, 194],
      'tie-inner': [-152, 300, 248],
      'tie-outer': [-136, 632, 222],
      'wheel-centre': centre,
    }),
    points(
      {
        'coil-top': [-5, 445, 690],
        'coil-bottom': [-5, 500, 480],
        'damper-top': [-5, 440, 720],
        'damper-bottom': [-5, 505, 475],
        'radius-rod-arm': [8, 570, 205],
      },
      15,
    ),
    {
      parts: {
        body: { kind: 'body' },
        'cross-member': { kind: 'sub-frame', heavy: true },
        'upper-arm': {
          kind: 'arm',
          links: [
            ['upper-front-pivot', 'upper-outer'],
            ['upper-rear-pivot', 'upper-outer'],
          ],
          wears: ['bush'],
        },
        'upper-ball-joint': { kind: 'ball joint', wears: ['joint', 'boot'] },
        'lower-arm': { kind: 'arm', links: [['lower-rear-pivot', 'lower-outer']], wears: ['bush', 'joint'] },
        'radius-rod': {
          kind: 'rod',
          links: [['lower-front-pivot', 'lower-outer']],
          wears: ['bush', 'thread'],
        },
        knuckle: { kind: 'knuckle' },
        coil: {
          kind: 'spring',
          between: ['body', 'upper-arm'],
          ends: ['coil-top', 'coil-bottom'],
          stores: 'coil',
          wears: ['spring'],
        },
        damper: {
          kind: 'damper',
          between: ['body', 'upper-arm'],
          ends: ['damper-top', 'damper-bottom'],
          wears: ['damper', 'bush'],
        },
      },
      joints: {
        'upper-front-bolt': pivot(
          'upper front pivot bolt',
          ['upper-arm', 'body'],
          'upper-front-pivot',
          ['M12x1.5', 18],
          1.2,
        ),
        'upper-rear-bolt': pivot(
          'upper rear pivot bolt',
          ['upper-arm', 'body'],
          'upper-rear-pivot',
          ['M12x1.5', 18],
          1.2,
        ),
        'upper-ball-joint-stud': castle(
          'stud of the upper ball joint',
          ['upper-ball-joint', 'knuckle'],
          'upper-outer',
          { thread: 'M14x1.5', spanner: 22, pin: 3.2 },
        ),
        'upper-ball-joint-bolts': joint('ball-joint bolts', ['upper-ball-joint', 'upper-arm'], {
          name: 'bolts of the upper ball joint in the arm',
          thread: 'M8x1.25',
          class: '10.9',
          spanner: '13 mm',
          count: 4,
          reuse: 'new',
          red: true,
          access: [wheelOff],
        }),
        'lower-pivot-bolt': pivot(
          'lower pivot bolt',
          ['lower-arm', 'cross-member'],
          'lower-rear-pivot',
          ['M12x1.5', 18],
          1.5,
          { adjuster: 'lower-eccentric', marks: eccentricMarks },
        ),
        'lower-ball-joint-stud': castle(
          'stud of the lower ball joint',
          ['lower-arm', 'knuckle'],
          'lower-outer',
          {
            thread: 'M14x1.5',
            spanner: 22,
            pin: 3.2,
          },
        ),
        'radius-rod-nuts': joint('thread and lock nut', ['radius-rod', 'body'], {
          name: 'nuts of the radius rod at its front cushion',
          at: 'lower-front-pivot',
          thread: 'M16x1.5',
          spanner: '24 mm',
          count: 2,
          final: 'at ride height',
          reuse: 'inspect',
          red: true,
          adjuster: 'radius-rod',
          marks: ['exposed thread', 'order of washers and cushions'],
        }),
        'radius-rod-bolts': joint('bolt', ['radius-rod', 'lower-arm'], {
          name: 'bolts of radius rod and lower arm',
          at: 'radius-rod-arm',
          thread: 'M12x1.5',
          class: '10.9',
          spanner: '18 mm',
          count: 2,
          reuse: 'new',
          red: true,
        }),
        'cross-member-bolts': joint('bolt', ['cross-member', 'body'], {
          name: 'bolts of the cross-member',
          thread: 'M14x1.5',
          class: '8.8',
          spanner: '21 mm',
          count: 2,
          reuse: 'inspect',
          red: true,
        }),
        'damper-top-nuts': joint('stud nuts', ['damper', 'body'], {
          name: 'upper nuts of the damper on the tower',
          at: 'damper-top',
          thread: 'M8x1.25',
          spanner: '13 mm',
          count: 3,
          reuse: 'new',
        }),
        'damper-bottom-nuts': joint('stud nuts', ['damper', 'upper-arm'], {
          name: 'lower nuts of the damper under the spring seat',
          at: 'damper-bottom',
          thread: 'M8x1.25',
          spanner: '13 mm',
          count: 2,
          swing: 'tight',
          reuse: 'new',
          access: [wheelOff],
        }),
        ...coilSeats('upper-arm', 'body', {
          top: [{ partOff: 'damper', why: 'it stands inside the coil' }],
          bottom: [
            wheelOff,
            { partOff: 'damper', why: 'it stands inside the coil' },
            { arm: 'lowered', why: 'the compressed coil comes out over the arm' },
          ],
        }),
      },
      adjusters: {
        'lower-eccentric': { ...eccentric('eccentric of the lower arm', 'lower-rear-pivot'), sets: 'camber' },
        'radius-rod': {
          kind: 'thread',
          name: 'radius rod',
          between: ['lower-front-pivot', 'lower-outer'],
          pitch: '1.5 mm',
          sleeve: false,
          range: ['-6 turns', '6 turns'],
          step: '1/6 turn',
          play: '1/12 turn',
          seenFrom: 'front',
          positiveLooks: 'anticlockwise',
          rightSide: 'same thread',
          sets: 'caster',
        },
      },
      holds: {
        coil: {
          heldBy: [
            ['upper-front-bolt', 'upper-rear-bolt', 'damper-top-nuts', 'damper-bottom-nuts'],
            [
              'upper-front-bolt',
              'upper-rear-bolt',
              'upper-ball-joint-bolts',
              'upper-ball-joint-stud',
              'lower-ball-joint-stud',
              'lower-pivot-bolt',
              'radius-rod-bolts',
              'radius-rod-nuts',
            ],
          ],
          standIn: [
            'spring compressor in the coil',
            'block between upper arm and body, put in while the vehicle stands on its wheels: takes the load off the ball joints, but does not let the arm come off',
          ],
          standInKinds: ['spring compressor'],
          letDown: 'in the compressor',
          droopStop: ['damper-top-nuts', 'damper-bottom-nuts'],
        },
      },
    },
    wheel({ on: 'hub', thread: 'M12x1.5', spanner: 19, studs: 5 }),
    taperRollerHub({ on: 'knuckle' }),
    discBrake({
      on: 'knuckle',
      hub: 'hub',
      body: 'body',
      bracket: 'knuckle',
      at: centre,
      reach: 120,
      disc: 'bolts',
    }),
    antiRollBar({
      on: 'body',
      to: 'lower-arm',
      clamp: [320, 350, 260],
      top: [70, 520, 260],
      bottom: [60, 525, 200],
      barEnd: 'top',
    }),
    centreLinkSteering({ body: 'body', tieThread: [-143, 480, 234], dropJoint: [-152, 270, 252] }),
  )
}

/** Four-wheel-drive pick-up: torsion bar in the lower arm, eccentrics in the upper one, driven, box and centre link. */
function torsionBar() {
  const centre = [0, 780, 362]
  return compose(
    {
      id: 'typical-wishbone-torsion-bar',
      name: 'Double wishbone, torsion bar, front, driven',
      layout: 'double-wishbone, torsion bar',
      axle: 'front',
      wheel: {
        tyre: '245/70R16',
        loadedRadius: '362 mm',
        width: '245 mm',
        rim: '428 mm',
        studs: 6,
        camber: '0.1°',
        toe: '0.08°',
      },
      wheelRate: '38 N/mm',
    },
    points({
      'upper-front-pivot': [112, 440, 562],
      'upper-rear-pivot': [-122, 446, 546],
      'upper-outer': [-19, 656, 578],
      'lower-front-pivot': [172, 330, 290],
      'lower-rear-pivot': [-190, 333, 284],
      'lower-outer': [6, 716, 262],
      'tie-inner': [-160, 334, 318],
      'tie-outer': [-148, 692, 300],
      'wheel-centre': centre,
    }),
    points(
      {
        'torsion-bar-front': [-215, 333, 284],
        'torsion-bar-anchor': [-1150, 336, 278],
        'damper-top': [70, 470, 560],
        'damper-bottom': [60, 590, 285],
      },
      15,
    ),
    {
      parts: {
        frame: { kind: 'body' },
        'lower-arm': {
          kind: 'arm',
          links: [
            ['lower-front-pivot', 'lower-outer'],
            ['lower-rear-pivot', 'lower-outer'],
          ],
          wears: ['bush'],
        },
        'lower-ball-joint': { kind: 'ball joint', wears: ['joint', 'boot'] },
        'upper-arm': {
          kind: 'arm',
          links: [
            ['upper-front-pivot', 'upper-outer'],
            ['upper-rear-pivot', 'upper-outer'],
          ],
          wears: ['bush', 'joint'],
        },
        knuckle: { kind: 'knuckle' },
        'torsion-bar': {
          kind: 'spring',
          name: 'torsion bar',
          between: ['frame', 'lower-arm'],
          ends: ['torsion-bar-anchor', 'torsion-bar-front'],
          stores: 'torsion bar',
          wears: ['spring'],
        },
        damper: {
          kind: 'damper',
          between: ['frame', 'lower-arm'],
          ends: ['damper-top', 'damper-bottom'],
          wears: ['damper', 'bush'],
        },
      },
      joints: {
        'lower-front-bolt': pivot(
          'lower front pivot bolt',
          ['lower-arm', 'frame'],
          'lower-front-pivot',
          ['M18x1.5', 27],
          2.4,
          {
            marks: ['which way round the bolt stands'],
          },
        ),
        'lower-rear-bolt': pivot(
          'lower rear pivot bolt',
          ['lower-arm', 'frame'],
          'lower-rear-pivot',
          ['M18x1.5', 27],
          2.4,
          {
            marks: ['which way round the bolt stands'],
            access: [{ jointOpen: 'torsion-bar-spline', why: 'the bar sits in the arm behind the bolt' }],
          },
        ),
        'lower-ball-joint-stud': castle(
          'stud of the lower ball joint',
          ['lower-ball-joint', 'knuckle'],
          'lower-outer',
          { thread: 'M18x1.5', spanner: 27, pin: 4 },
        ),
        'lower-ball-joint-bolts': joint('ball-joint bolts', ['lower-ball-joint', 'lower-arm'], {
          name: 'bolts of the lower ball joint in the arm',
          thread: 'M10x1.5',
          class: '10.9',
          spanner: '16 mm',
          count: 4,
          reuse: 'new',
          red: true,
          access: [wheelOff],
        }),
        'upper-front-bolt': pivot(
          'upper front pivot bolt',
          ['upper-arm', 'frame'],
          'upper-front-pivot',
          ['M14x1.5', 21],
          1.4,
          {
            adjuster: 'upper-front-eccentric',
            marks: eccentricMarks,
          },
        ),
        'upper-rear-bolt': pivot(
          'upper rear pivot bolt',
          ['upper-arm', 'frame'],
          'upper-rear-pivot',
          ['M14x1.5', 21],
          1.4,
          {
            adjuster: 'upper-rear-eccentric',
            marks: eccentricMarks,
          },
        ),
        'upper-ball-joint-stud': castle(
          'stud of the upper ball joint',
          ['upper-arm', 'knuckle'],
          'upper-outer',
          {
            thread: 'M14x1.5',
            spanner: 22,
            pin: 3.2,
          },
        ),
        'torsion-bar-spline': joint('spline', ['torsion-bar', 'lower-arm'], {
          name: 'torsion bar in the lower arm',
          at: 'torsion-bar-front',
          reuse: 'inspect',
          consumables: ['grease for splines'],
          marks: ['bar to arm', 'left bar and right bar kept apart'],
          access: [{ jointOpen: 'torsion-bar-anchor-bolt', why: 'the bar has no twist left' }],
        }),
        'torsion-bar-anchor-bolt': joint('anchor bolt', ['torsion-bar', 'frame'], {
          name: 'anchor bolt of the torsion bar',
          at: 'torsion-bar-anchor',
          thread: 'M16x1.5',
          class: '10.9',
          spanner: '24 mm',
          reuse: 'inspect',
          consumables: ['grease for the thread'],
          minutes: [6, 12, 25],
          marks: ['exposed thread of the anchor bolt', 'turns until the bar is loose', 'bar to anchor arm'],
          access: [{ station: 'hanging', why: 'the bar has least twist with the wheel hanging' }],
        }),
        'damper-top-nut': joint('stud nuts', ['damper', 'frame'], {
          name: 'upper nut of the damper',
          at: 'damper-top',
          thread: 'M10x1.25',
          spanner: '16 mm',
          count: 1,
          reuse: 'new',
          marks: ['order of washers and cushions'],
        }),
        'damper-bottom-bolt': joint('bolt', ['damper', 'lower-arm'], {
          name: 'lower bolt of the damper',
          at: 'damper-bottom',
          thread: 'M12x1.5',
          class: '10.9',
          spanner: '18 mm',
          final: 'at ride height',
          reuse: 'new',
        }),
      },
      adjusters: {
        'upper-front-eccentric': eccentric('upper front eccentric', 'upper-front-pivot'),
        'upper-rear-eccentric': eccentric('upper rear eccentric', 'upper-rear-pivot'),
      },
      holds: {
        'torsion-bar': {
          heldBy: [
            [
              'torsion-bar-anchor-bolt',
              'torsion-bar-spline',
              'lower-front-bolt',
              'lower-rear-bolt',
              'lower-ball-joint-bolts',
              'lower-ball-joint-stud',
              'upper-ball-joint-stud',
              'upper-front-bolt',
              'upper-rear-bolt',
            ],
          ],
          standIn: [
            'bar unwound at its anchor bolt, turns and thread written down',
            'jack under the lower arm, far outboard, its saddle located',
          ],
          standInKinds: ['torsion bar unwound', 'jack under the arm'],
          letDown: 'by its anchor bolt',
          droopStop: ['upper-ball-joint-stud', 'upper-front-bolt', 'upper-rear-bolt'],
        },
      },
    },
    wheel({ on: 'hub', thread: 'M14x1.5', spanner: 21, studs: 6 }),
    boltedHub({ on: 'knuckle', driven: true }),
    driveShaft({
      inner: 'flange',
      body: 'frame',
      reach: 110,
      inboard: [
        { jointOpen: 'drive-shaft-spline' },
        {
          jointOpen: 'lower-ball-joint-stud',
          why: 'the knuckle swings out far enough only with its lower joint open',
        },
      ],
    }),
    discBrake({
      on: 'knuckle',
      hub: 'hub',
      body: 'frame',
      bracket: 'knuckle',
      at: centre,
      reach: 120,
      carrier: ['M14x1.5', 21],
    }),
    speedLead({ on: 'knuckle', by: 'upper-arm', body: 'frame', reach: 100 }),
    antiRollBar({
      on: 'frame',
      to: 'lower-arm',
      clamp: [290, 360, 330],
      top: [150, 610, 360],
      bottom: [110, 615, 280],
      barEnd: 'top',
    }),
    centreLinkSteering({ body: 'frame', tieThread: [-153, 520, 309], dropJoint: [-160, 300, 322] }),
  )
}

export const wishbones = {
  'wishbone-coil-lower': coilOnLower,
  'wishbone-coil-upper': coilOnUpper,
  'wishbone-torsion-bar': torsionBar,
}
