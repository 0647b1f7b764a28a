// Independent rear corners: five links, semi-trailing arm. Both driven.
import { bonded, compose, joint, points } from './compose.mjs'
import { antiRollBar } from './steering-and-bar.mjs'
import { discBrake, driveShaft, parkingCable, pressedHub, speedLead, wheel } from './wheel-and-brake.mjs'

const wheelOff = { partOff: 'wheel' }
const eccentricMarks = ['clock position of both washers', 'which way round the bolt stands']

const eccentric = (name, moves, sets, more = {}) => ({
  kind: 'eccentric',
  name,
  moves,
  along: [0, 1, 0],
  throw: '5 mm',
  range: ['-90°', '90°'],
  step: '3°',
  play: '2°',
  seenFrom: 'rear',
  positiveLooks: 'anticlockwise',
  markAt: "12 o'clock",
  sets,
  ...more,
})

const seats = (on, body, more) => ({
  'coil-top-seat': joint('seat', ['coil', body], {
    name: 'upper seat of the coil',
    at: 'coil-top',
    marks: ['which end is up', 'where the coil ends in its seat', 'rubber seat'],
    access: [{ arm: 'lowered', why: 'the coil is longer than the gap until the arm hangs' }],
  }),
  'coil-bottom-seat': joint('seat', ['coil', on], {
    name: 'lower seat of the coil',
    at: 'coil-bottom',
    marks: ['where the coil ends in its seat'],
    access: [...more, { arm: 'lowered', why: 'the coil has no load left' }],
  }),
})

const subFrame = (count) =>
  joint('bolt', ['sub-frame', 'body'], {
    name: 'bolts of the sub-frame',
    at: 'sub-frame-mount',
    thread: 'M14x1.5',
    class: '10.9',
    spanner: '21 mm',
    count,
    reuse: 'new',
    red: true,
    marks: ['outline of the sub-frame on the body'],
    minutes: [8, 15, 35],
  })

/** Executive saloon: five links, coil on the lower rear one, gas damper, height-sensor rod. */
function fiveLink() {
  const x = -2700
  const centre = [x, 770, 315]
  const inner = (name, part, n, stiffness, adjuster) =>
    joint(adjuster ? 'eccentric bolt' : 'bolt', [part, 'sub-frame'], {
      name,
      at: `link-${n}-inner`,
      thread: 'M12x1.5',
      class: '10.9',
      spanner: '18 mm',
      ...bonded(stiffness),
      reuse: adjuster ? 'inspect' : 'new',
      red: true,
      minutes: [4, 8, 25],
      ...(adjuster ? { adjuster, marks: eccentricMarks } : {}),
    })
  const outer = (name, part, n, more = {}) =>
    joint('bolt', [part, 'knuckle'], {
      name,
      at: `link-${n}-outer`,
      thread: 'M12x1.5',
      class: '10.9',
      spanner: '18 mm',
      final: 'at ride height',
      reuse: 'new',
      red: true,
      access: [wheelOff],
      ...more,
    })
  const link = (n, wears = ['bush']) => ({
    kind: 'rod',
    links: [[`link-${n}-inner`, `link-${n}-outer`]],
    wears,
  })
  return compose(
    {
      id: 'typical-five-link-rear',
      name: 'Five-link, rear, driven',
      layout: 'five-link',
      axle: 'rear',
      wheel: {
        tyre: '225/50R17',
        loadedRadius: '315 mm',
        width: '225 mm',
        rim: '453 mm',
        studs: 5,
        camber: '-1.5°',
        toe: '0.12°',
      },
      wheelRate: '26 N/mm',
    },
    points({
      'link-1-inner': [x + 120, 425, 468],
      'link-1-outer': [x + 25, 700, 490],
      'link-2-inner': [x - 110, 405, 478],
      'link-2-outer': [x - 40, 692, 496],
      'link-3-inner': [x + 230, 385, 236],
      'link-3-outer': [x + 40, 730, 216],
      'link-4-inner': [x - 120, 265, 226],
      'link-4-outer': [x - 60, 726, 206],
      'link-5-inner': [x - 190, 305, 269],
      'link-5-outer': [x - 150, 716, 256],
      'wheel-centre': centre,
    }),
    points(
      {
        'coil-top': [x - 105, 470, 450],
        'coil-bottom': [x - 98, 480, 232],
        'damper-top': [x + 10, 560, 640],
        'damper-bottom': [x + 5, 690, 250],
        'sub-frame-mount': [x + 330, 500, 300],
        'height-rod-top': [x + 150, 380, 330],
        'height-rod-bottom': [x + 165, 500, 232],
      },
      15,
    ),
    {
      parts: {
        body: { kind: 'body' },
        'sub-frame': { kind: 'sub-frame', heavy: true },
        'upper-front-link': link(1),
        'upper-rear-link': link(2),
        'lower-front-link': link(3),
        'spring-link': { ...link(4), kind: 'arm' },
        'toe-link': link(5, ['bush', 'joint']),
        knuckle: { kind: 'knuckle' },
        coil: {
          kind: 'spring',
          between: ['body', 'spring-link'],
          ends: ['coil-top', 'coil-bottom'],
          stores: 'coil',
          wears: ['spring'],
        },
        damper: {
          kind: 'damper',
          between: ['body', 'knuckle'],
          ends: ['damper-top', 'damper-bottom'],
          stores: 'gas',
          wears: ['damper', 'bush'],
        },
        'height-rod': {
          kind: 'height-sensor rod',
          name: 'rod of the height sensor',
          links: [['height-rod-top', 'height-rod-bottom']],
          wears: ['joint'],
        },
      },
      joints: {
        'upper-front-inner-bolt': inner('inner bolt of the upper front link', 'upper-front-link', 1, 0.9),
        'upper-front-outer-bolt': outer('outer bolt of the upper front link', 'upper-front-link', 1),
        'upper-rear-inner-bolt': inner('inner bolt of the upper rear link', 'upper-rear-link', 2, 0.9),
        'upper-rear-outer-bolt': outer('outer bolt of the upper rear link', 'upper-rear-link', 2),
        'lower-front-inner-bolt': inner('inner bolt of the lower front link', 'lower-front-link', 3, 1.1),
        'lower-front-outer-bolt': outer('outer bolt of the lower front link', 'lower-front-link', 3),
        'spring-link-inner-bolt': inner(
          'inner bolt of the spring link',
          'spring-link',
          4,
          1.6,
          'camber-eccentric',
        ),
        'spring-link-outer-bolt': outer('outer bolt of the spring link', 'spring-link', 4),
        'toe-link-inner-bolt': inner('inner bolt of the toe link', 'toe-link', 5, 0.7, 'toe-eccentric'),
        'toe-link-outer-nut': joint('tapered stud, lock nut', ['toe-link', 'knuckle'], {
          name: 'stud of the toe link',
          at: 'link-5-outer',
          thread: 'M12x1.5',
          spanner: '18 mm',
          tool: 'separator',
          reuse: 'new',
          consumables: ['self-locking nut M12x1.5'],
          red: true,
          access: [wheelOff],
        }),
        'damper-top-bolts': joint('bolt', ['damper', 'body'], {
          name: 'upper bolts of the damper',
          at: 'damper-top',
          thread: 'M10x1.5',
          class: '8.8',
          spanner: '16 mm',
          count: 2,
          reuse: 'inspect',
          access: [wheelOff],
        }),
        'damper-bottom-bolt': joint('bolt', ['damper', 'knuckle'], {
          name: 'lower bolt of the damper',
          at: 'damper-bottom',
          thread: 'M12x1.5',
          class: '10.9',
          spanner: '18 mm',
          final: 'at ride height',
          reuse: 'new',
          access: [wheelOff],
        }),
        ...seats('spring-link', 'body', [
          { jointOpen: 'spring-link-outer-bolt', why: 'the link swings down about its inner bolt' },
          { jointOpen: 'height-rod-bottom-clip', why: 'the rod does not reach as far down' },
        ]),
        'sub-frame-bolts': subFrame(2),
        'height-rod-top-clip': joint('clip', ['height-rod', 'body'], {
          name: 'upper ball of the height-sensor rod',
          at: 'height-rod-top',
          reuse: 'again',
          marks: ['angle of the sensor arm'],
        }),
        'height-rod-bottom-clip': joint('clip', ['height-rod', 'spring-link'], {
          name: 'lower ball of the height-sensor rod',
          at: 'height-rod-bottom',
          reuse: 'again',
        }),
      },
      adjusters: {
        'camber-eccentric': eccentric('camber eccentric of the spring link', 'link-4-inner', 'camber'),
        'toe-eccentric': eccentric('toe eccentric of the toe link', 'link-5-inner', 'toe'),
      },
      holds: {
        coil: {
          heldBy: [
            ['spring-link-inner-bolt', 'spring-link-outer-bolt', 'damper-top-bolts', 'damper-bottom-bolt'],
          ],
          standIn: [
            'jack under the spring link, its saddle located; coil tethered to the body',
            'spring compressor in the coil',
          ],
          standInKinds: ['jack under the arm', 'spring compressor'],
          letDown: 'in the compressor',
          droopStop: ['damper-top-bolts', 'damper-bottom-bolt'],
        },
      },
    },
    wheel({ on: 'hub', thread: 'M14x1.5', spanner: 22, studs: 5 }),
    pressedHub({
      on: 'knuckle',
      free: [
        'upper-front-outer-bolt',
        'upper-rear-outer-bolt',
        'lower-front-outer-bolt',
        'spring-link-outer-bolt',
        'toe-link-outer-nut',
        'damper-bottom-bolt',
        'drop-link-to-wheel',
        'hose-bracket',
        'speed-sensor-screw',
      ],
    }),
    driveShaft({
      inner: 'flange',
      body: 'sub-frame',
      reach: 90,
      free: [
        { jointOpen: 'drive-shaft-inner', why: 'the shaft is drawn inward off its flange and tilted out' },
      ],
    }),
    discBrake({ on: 'knuckle', hub: 'hub', body: 'body', bracket: 'knuckle', at: centre, reach: 100 }),
    parkingCable({ by: 'spring-link', body: 'body', reach: 90 }),
    speedLead({ on: 'knuckle', by: 'upper-rear-link', body: 'body', reach: 80 }),
    antiRollBar({
      on: 'sub-frame',
      to: 'knuckle',
      clamp: [x - 240, 400, 330],
      top: [x - 120, 640, 330],
      bottom: [x - 110, 660, 240],
      barEnd: 'top',
    }),
  )
}

/** Older rear-driven saloon: semi-trailing arm, coil and damper apart. */
function semiTrailing() {
  const x = -2600
  const centre = [x, 712, 300]
  const bolt = (name, at, stiffness, more) =>
    joint('bolt', ['trailing-arm', 'sub-frame'], {
      name,
      at,
      thread: 'M14x1.5',
      class: '10.9',
      spanner: '21 mm',
      ...bonded(stiffness),
      reuse: 'new',
      red: true,
      minutes: [4, 8, 30],
      ...more,
    })
  return compose(
    {
      id: 'typical-semi-trailing-rear',
      name: 'Semi-trailing arm, rear, driven',
      layout: 'semi-trailing arm',
      axle: 'rear',
      wheel: {
        tyre: '205/60R15',
        loadedRadius: '300 mm',
        width: '205 mm',
        rim: '402 mm',
        studs: 5,
        camber: '-1.3°',
        toe: '0.15°',
      },
      wheelRate: '22 N/mm',
    },
    points({
      'arm-front-pivot': [x + 385, 610, 308],
      'arm-rear-pivot': [x + 285, 195, 300],
      'wheel-centre': centre,
    }),
    points(
      {
        'coil-top': [x + 130, 500, 470],
        'coil-bottom': [x + 125, 510, 255],
        'damper-top': [x - 60, 560, 640],
        'damper-bottom': [x - 75, 600, 250],
        'sub-frame-mount': [x + 330, 520, 360],
      },
      15,
    ),
    {
      parts: {
        body: { kind: 'body' },
        'sub-frame': { kind: 'sub-frame', heavy: true },
        'trailing-arm': {
          kind: 'arm',
          links: [
            ['arm-front-pivot', 'wheel-centre'],
            ['arm-rear-pivot', 'wheel-centre'],
          ],
          wears: ['bush'],
        },
        coil: {
          kind: 'spring',
          between: ['body', 'trailing-arm'],
          ends: ['coil-top', 'coil-bottom'],
          stores: 'coil',
          wears: ['spring'],
        },
        damper: {
          kind: 'damper',
          between: ['body', 'trailing-arm'],
          ends: ['damper-top', 'damper-bottom'],
          wears: ['damper', 'bush'],
        },
      },
      joints: {
        'arm-front-bolt': {
          ...bolt('outer pivot bolt of the arm', 'arm-front-pivot', 2.2, {
            reuse: 'inspect',
            adjuster: 'arm-eccentric',
            marks: eccentricMarks,
          }),
          kind: 'eccentric bolt',
        },
        'arm-rear-bolt': bolt('inner pivot bolt of the arm, its bracket in a slot', 'arm-rear-pivot', 2.2, {
          adjuster: 'arm-slide',
          marks: ['place of the bracket in its slot: a line across both'],
        }),
        'damper-top-nut': joint('stud nuts', ['damper', 'body'], {
          name: 'upper nut of the damper',
          at: 'damper-top',
          thread: 'M10x1.25',
          spanner: '16 mm',
          count: 1,
          reuse: 'new',
          marks: ['order of washers and cushions'],
        }),
        'damper-bottom-bolt': joint('bolt', ['damper', 'trailing-arm'], {
          name: 'lower bolt of the damper',
          at: 'damper-bottom',
          thread: 'M12x1.5',
          class: '10.9',
          spanner: '18 mm',
          final: 'at ride height',
          reuse: 'new',
          access: [wheelOff],
        }),
        ...seats('trailing-arm', 'body', [
          { jointOpen: 'damper-bottom-bolt', why: 'the arm goes lower than the damper lets it' },
          { jointOpen: 'drop-link-to-wheel', why: 'the arm goes lower than the link lets it' },
          { jointOpen: 'hose-bracket', why: 'the arm goes lower than the hose reaches' },
          { jointOpen: 'parking-cable-clip', why: 'the arm goes lower than the cable reaches' },
          { jointOpen: 'speed-lead-clip', why: 'the arm goes lower than the lead reaches' },
          { jointOpen: 'drive-shaft-inner', why: 'the shaft would be bent beyond its joints' },
        ]),
        'sub-frame-bolts': subFrame(2),
      },
      adjusters: {
        'arm-eccentric': eccentric('eccentric of the outer pivot', 'arm-front-pivot', 'camber', {
          along: [0, 0, 1],
          seenFrom: 'outside',
          markAt: "3 o'clock",
        }),
        'arm-slide': {
          kind: 'slide',
          name: 'bracket of the inner pivot in its slot',
          moves: ['arm-rear-pivot'],
          along: [1, 0, 0],
          range: ['-5 mm', '5 mm'],
          step: '0.5 mm',
          play: '0.3 mm',
          seenFrom: 'below',
          sets: 'toe',
        },
      },
      holds: {
        coil: {
          heldBy: [['arm-front-bolt', 'arm-rear-bolt', 'damper-top-nut', 'damper-bottom-bolt']],
          standIn: [
            'jack under the arm, its saddle located; coil tethered to the body',
            'spring compressor in the coil',
          ],
          standInKinds: ['jack under the arm', 'spring compressor'],
          letDown: 'with the jack',
          droopStop: ['damper-top-nut', 'damper-bottom-bolt'],
        },
      },
    },
    wheel({ on: 'hub', thread: 'M12x1.5', spanner: 19, studs: 5 }),
    pressedHub({ on: 'trailing-arm', free: [] }),
    driveShaft({
      inner: 'flange',
      body: 'sub-frame',
      reach: 100,
      outer: [{ jointOpen: 'drive-shaft-inner', why: 'the shaft is drawn inward out of the hub' }],
    }),
    discBrake({
      on: 'trailing-arm',
      hub: 'hub',
      body: 'body',
      bracket: 'trailing-arm',
      at: centre,
      reach: 100,
    }),
    parkingCable({ by: 'trailing-arm', body: 'body', reach: 100 }),
    speedLead({ on: 'trailing-arm', by: 'trailing-arm', body: 'body', reach: 100 }),
    antiRollBar({
      on: 'sub-frame',
      to: 'trailing-arm',
      clamp: [x + 230, 380, 380],
      top: [x + 90, 560, 360],
      bottom: [x + 95, 570, 270],
      barEnd: 'top',
    }),
  )
}

export const rearLinks = { 'five-link-rear': fiveLink, 'semi-trailing-rear': semiTrailing }
