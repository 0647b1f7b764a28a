// Axles that are computed whole: twist beam, solid axle on leaf springs, solid axle on coils.
import { bonded, compose, joint, points } from './compose.mjs'
import { steeringBox, tieRodEnd } from './steering-and-bar.mjs'
import { boltedHub, discBrake, parkingCable, speedLead, taperRollerHub, wheel } from './wheel-and-brake.mjs'

const wheelOff = { partOff: 'wheel' }
const once = { span: 'axle' }

const damper = (from, to) => ({
  kind: 'damper',
  between: [from, to],
  ends: ['damper-top', 'damper-bottom'],
  wears: ['damper', 'bush'],
})

const damperJoints = (body, to) => ({
  'damper-top-bolt': joint('bolt', ['damper', body], {
    name: 'upper bolt of the damper',
    at: 'damper-top',
    thread: 'M12x1.5',
    class: '8.8',
    spanner: '18 mm',
    final: 'at ride height',
    reuse: 'inspect',
  }),
  'damper-bottom-bolt': joint('bolt', ['damper', to], {
    name: 'lower bolt of the damper',
    at: 'damper-bottom',
    thread: 'M12x1.5',
    class: '8.8',
    spanner: '18 mm',
    final: 'at ride height',
    reuse: 'inspect',
  }),
})

const coilBetween = (body, on, more) => ({
  parts: {
    coil: {
      kind: 'spring',
      between: [body, on],
      ends: ['coil-top', 'coil-bottom'],
      stores: 'coil',
      wears: ['spring'],
    },
    damper: damper(body, on),
  },
  joints: {
    ...damperJoints(body, on),
    'coil-top-seat': joint('seat', ['coil', body], {
      name: 'upper seat of the coil',
      at: 'coil-top',
      marks: ['which end is up', 'where the coil ends in its seat', 'rubber seat'],
      access: [{ arm: 'lowered', why: 'the coil is longer than the gap until the axle hangs' }],
    }),
    'coil-bottom-seat': joint('seat', ['coil', on], {
      name: 'lower seat of the coil',
      at: 'coil-bottom',
      marks: ['where the coil ends in its seat'],
      access: [
        { jointOpen: 'damper-bottom-bolt', why: 'the axle goes lower than the damper lets it' },
        ...more,
        { arm: 'lowered', why: 'the coil has no load left' },
      ],
    }),
  },
})

/** Small front-driven car: twist beam, hub units on it, wedge-shaped shims behind them. */
function twistBeam() {
  const x = -2550
  const centre = [x, 730, 298]
  return compose(
    {
      id: 'typical-twist-beam-rear',
      name: 'Twist beam, rear',
      layout: 'twist beam',
      axle: 'rear',
      wheel: {
        tyre: '185/65R15',
        loadedRadius: '298 mm',
        width: '185 mm',
        rim: '402 mm',
        studs: 5,
        camber: '-1.4°',
        toe: '0.15°',
      },
      wheelRate: '20 N/mm',
      beamShape: 1,
    },
    points({
      'beam-pivot': [x + 420, 560, 318],
      'shear-centre': [x + 290, 0, 345],
      'wheel-centre': centre,
    }),
    points(
      {
        'coil-top': [x + 90, 470, 470],
        'coil-bottom': [x + 85, 480, 260],
        'damper-top': [x - 40, 560, 620],
        'damper-bottom': [x - 70, 600, 240],
      },
      15,
    ),
    {
      parts: {
        body: { kind: 'body' },
        'axle-beam': { kind: 'axle beam', name: 'twist beam', ...once, heavy: true, wears: ['bush'] },
      },
      joints: {
        'beam-pivot-bolt': joint('bolt', ['axle-beam', 'body'], {
          name: 'pivot bolt of the twist beam',
          at: 'beam-pivot',
          thread: 'M12x1.5',
          class: '10.9',
          spanner: '18 mm',
          ...bonded(2.6),
          reuse: 'new',
          red: true,
          marks: ['which way round the bolt stands', 'angle of the bush in its eye'],
          minutes: [4, 8, 30],
        }),
      },
      adjusters: {
        'toe-wedge': {
          kind: 'wedge',
          name: 'wedge behind the hub unit',
          tilts: 'toe',
          sizes: ['0.25°', '0.5°', '0.75°', '1°'],
          range: ['-1°', '1°'],
          step: '0.25°',
          seenFrom: 'above',
          sets: 'toe',
        },
      },
      holds: {
        coil: {
          heldBy: [['beam-pivot-bolt', 'damper-top-bolt', 'damper-bottom-bolt']],
          standIn: ['jack under the beam at this side, its saddle located; both coils tethered to the body'],
          standInKinds: ['jack under the arm', 'axle on stands'],
          letDown: 'with the jack',
          droopStop: ['damper-top-bolt', 'damper-bottom-bolt'],
        },
      },
    },
    coilBetween('body', 'axle-beam', [
      { jointOpen: 'hose-bracket', why: 'the beam goes lower than the hose reaches' },
      { jointOpen: 'parking-cable-clip', why: 'the beam goes lower than the cable reaches' },
      { jointOpen: 'speed-lead-clip', why: 'the beam goes lower than the lead reaches' },
    ]),
    wheel({ on: 'hub', thread: 'M12x1.5', spanner: 19, studs: 5 }),
    boltedHub({
      on: 'axle-beam',
      driven: false,
      thread: 'M10x1.5',
      spanner: 16,
      more: { adjuster: 'toe-wedge', marks: ['wedge: how thick and which way its thick end stands'] },
    }),
    discBrake({
      on: 'axle-beam',
      hub: 'hub',
      body: 'body',
      bracket: 'axle-beam',
      at: centre,
      reach: 120,
      carrier: ['M10x1.5', 16],
    }),
    parkingCable({ by: 'axle-beam', body: 'body', reach: 110 }),
    speedLead({ on: 'axle-beam', by: 'axle-beam', body: 'body', reach: 110 }),
  )
}

const rodStud = (name, joins, at, more) =>
  joint('tapered stud, castle nut', joins, {
    name,
    at,
    thread: 'M14x1.5',
    spanner: '22 mm',
    slots: 6,
    pin: '3.2 mm',
    tool: 'separator',
    reuse: 'new pin',
    consumables: ['split pin 3.2 × 32'],
    red: true,
    ...more,
  })

/** Small tipper: steered beam axle on leaf springs, kingpins, box and drag link. */
function leafFront() {
  const centre = [0, 826, 345]
  const shackle = (name, joins, at) =>
    joint('shackle bolt', joins, {
      name,
      at,
      thread: 'M14x1.5',
      class: '8.8',
      spanner: '22 mm',
      final: 'at ride height',
      reuse: 'inspect',
      red: true,
      minutes: [4, 8, 30],
    })
  const axleThread = (name, between, more) => ({
    kind: 'thread',
    name,
    between,
    span: 'axle',
    pitch: '1.5 mm',
    sleeve: true,
    range: ['-4 turns', '4 turns'],
    step: '1/12 turn',
    play: '1/36 turn',
    ...more,
  })
  const clamp = (name, joins, adjuster, more) =>
    joint('thread and lock nut', joins, {
      name,
      thread: 'M10x1.5',
      class: '8.8',
      spanner: '16 mm',
      reuse: 'inspect',
      red: true,
      adjuster,
      marks: ['exposed thread', 'length from joint centre to joint centre', 'where the clamps open'],
      ...more,
    })
  const box = steeringBox({ body: 'frame' })
  return compose(
    {
      id: 'typical-solid-axle-leaf-front',
      name: 'Solid axle, leaf springs, front, steered',
      layout: 'solid axle, leaf springs',
      axle: 'front',
      wheel: {
        tyre: '205/75R16C',
        loadedRadius: '345 mm',
        width: '205 mm',
        rim: '428 mm',
        studs: 6,
        camber: '0.75°',
        toe: '0.08°',
      },
      wheelRate: '75 N/mm',
      travel: { droop: '70 mm', bump: '70 mm' },
    },
    points({
      'roll-axis-rear': [-600, 0, 428],
      'roll-axis-front': [600, 0, 418],
      'kingpin-lower': [10, 738, 262],
      'kingpin-upper': [-6, 716, 446],
      'drop-axis-from': [700, 420, 640],
      'drop-axis-to': [700, 520, 640],
      'drag-inner': [695, 500, 440],
      'drag-outer': [30, 540, 441],
      'tie-outer': [-168, 690, 272],
      'wheel-centre': centre,
    }),
    points(
      {
        'spring-front-eye': [610, 470, 430],
        'spring-rear-eye': [-570, 470, 455],
        'shackle-top': [-600, 470, 540],
        'spring-seat': [0, 470, 395],
        'damper-top': [-60, 430, 660],
        'damper-bottom': [-50, 520, 330],
      },
      15,
    ),
    {
      parts: {
        frame: { kind: 'body' },
        'axle-beam': { kind: 'axle beam', ...once, heavy: true },
        'leaf-spring': {
          kind: 'spring',
          between: ['axle-beam', 'frame'],
          ends: ['spring-rear-eye', 'spring-front-eye'],
          stores: 'leaf',
          wears: ['spring', 'bush'],
        },
        shackle: { kind: 'shackle', links: [['spring-rear-eye', 'shackle-top']], wears: ['bush'] },
        damper: damper('frame', 'axle-beam'),
        knuckle: { kind: 'knuckle', wears: ['bush'] },
        kingpin: { kind: 'kingpin', name: 'kingpin with its offset sleeve', wears: ['bearing', 'bush'] },
        'tie-rod': { kind: 'rod', links: [['tie-outer', 'tie-outer']], ...once, wears: ['thread'] },
        'tie-rod-end': { kind: 'ball joint', name: 'tie-rod end', wears: ['joint', 'thread', 'boot'] },
        'drag-link': {
          kind: 'rod',
          links: [['drag-inner', 'drag-outer']],
          ...once,
          wears: ['joint', 'thread'],
        },
        'drag-link-end': { kind: 'ball joint', ...once, wears: ['joint', 'thread', 'boot'] },
        ...box.parts,
      },
      joints: {
        'spring-front-bolt': shackleFree('front eye bolt of the leaf spring'),
        'spring-rear-shackle-bolt': shackle(
          'lower bolt of the shackle',
          ['leaf-spring', 'shackle'],
          'spring-rear-eye',
        ),
        'shackle-top-bolt': shackle('upper bolt of the shackle', ['shackle', 'frame'], 'shackle-top'),
        'spring-u-bolts': joint('U-bolts', ['leaf-spring', 'axle-beam'], {
          name: 'U-bolts of the leaf spring',
          at: 'spring-seat',
          thread: 'M14x1.5',
          class: '8.8',
          spanner: '22 mm',
          count: 4,
          final: 'on the ground',
          reuse: 'new',
          consumables: ['U-bolts and their nuts'],
          red: true,
          marks: [
            'caster wedge: how thick and which way its thick end stands',
            'dowel of the centre bolt in its hole',
          ],
          minutes: [10, 18, 45],
        }),
        'kingpin-caps': joint('retaining ring', ['kingpin', 'knuckle'], {
          name: 'end caps of the kingpin',
          reuse: 'new',
          consumables: ['caps', 'grease'],
          access: [wheelOff],
        }),
        'knuckle-on-kingpin': joint('press fit', ['knuckle', 'kingpin'], {
          name: 'bushes of the knuckle on the kingpin',
          tool: 'drift',
          reuse: 'inspect',
          consumables: ['grease'],
          red: true,
          marks: ['shims under the knuckle: how many and how thick'],
          access: [
            { jointOpen: 'kingpin-fit', why: 'the pin is driven out of the beam and the knuckle together' },
            { jointOpen: 'tie-rod-end-stud', why: 'nothing else carries the knuckle once the pin is out' },
            { jointOpen: 'drag-link-rear-stud', why: 'nothing else carries the knuckle once the pin is out' },
          ],
        }),
        'kingpin-lock-pin': joint('bolt', ['kingpin', 'axle-beam'], {
          name: 'lock pin of the kingpin',
          thread: 'M10x1.5',
          spanner: '16 mm',
          tool: 'drift',
          reuse: 'new',
          red: true,
          marks: ['which way round the pin stands'],
          minutes: [5, 12, 40],
          access: [wheelOff],
        }),
        'kingpin-fit': joint('press fit', ['kingpin', 'axle-beam'], {
          name: 'kingpin and offset sleeve in the beam’s end',
          at: 'kingpin-upper',
          tool: 'press',
          reuse: 'new',
          consumables: ['thrust bearing', 'shims for the knuckle’s end float'],
          red: true,
          adjuster: 'offset-sleeve',
          marks: ['clock position of the sleeve’s mark'],
          minutes: [15, 35, 120],
          access: [
            { jointOpen: 'kingpin-caps' },
            { jointOpen: 'kingpin-lock-pin' },
            { partOff: 'brake-carrier', why: 'the knuckle comes off with its hub as the pin goes' },
            ...['tie-rod-end-stud', 'speed-sensor-screw'].map((name) => ({
              jointOpen: name,
              why: 'the knuckle comes off with its hub as the pin goes',
            })),
          ],
        }),
        'tie-rod-end-stud': tieRodEnd('castle'),
        'tie-rod-clamp': clamp('clamp of the tie rod', ['tie-rod-end', 'tie-rod'], 'tie-rod', {}),
        'drag-link-front-stud': rodStud(
          'stud of drag link and drop arm',
          ['drag-link', 'drop-arm'],
          'drag-inner',
          {
            side: 'left',
          },
        ),
        'drag-link-rear-stud': rodStud(
          'stud of drag link and knuckle',
          ['drag-link-end', 'knuckle'],
          'drag-outer',
          {
            side: 'left',
            final: 'wheels straight',
          },
        ),
        'drag-link-clamp': clamp('clamp of the drag link', ['drag-link-end', 'drag-link'], 'drag-link', {
          side: 'left',
        }),
        ...damperJoints('frame', 'axle-beam'),
        ...box.joints,
      },
      adjusters: {
        'offset-sleeve': {
          kind: 'offset sleeve',
          name: 'offset sleeve of the kingpin',
          tilt: '0.5°',
          range: ['-180°', '180°'],
          step: '15°',
          seenFrom: 'above',
          positiveLooks: 'anticlockwise',
          markAt: "9 o'clock",
        },
        'tie-rod': axleThread('tie rod', ['tie-outer', 'tie-outer'], {
          seenFrom: 'outside',
          positiveLooks: 'clockwise',
          sets: 'toe',
        }),
        'drag-link': axleThread('drag link', ['drag-inner', 'drag-outer'], {
          seenFrom: 'front',
          positiveLooks: 'clockwise',
        }),
      },
      holds: {
        'leaf-spring': {
          heldBy: [['spring-front-bolt', 'spring-rear-shackle-bolt', 'shackle-top-bolt', 'spring-u-bolts']],
          standIn: ['axle on stands of its own, frame on stands, spring hanging without load'],
          standInKinds: ['axle on stands'],
          letDown: 'with the axle on stands',
        },
      },
    },
    wheel({ on: 'hub', thread: 'M16x1.5', spanner: 24, studs: 6 }),
    taperRollerHub({ on: 'knuckle' }),
    discBrake({
      on: 'knuckle',
      hub: 'hub',
      body: 'frame',
      bracket: 'axle-beam',
      at: centre,
      reach: 140,
      carrier: ['M14x1.5', 21],
      disc: 'bolts',
    }),
    speedLead({ on: 'knuckle', by: 'axle-beam', body: 'frame', reach: 130 }),
  )
}

const shackleFree = (name) =>
  joint('bolt', ['leaf-spring', 'frame'], {
    name,
    at: 'spring-front-eye',
    thread: 'M16x1.5',
    class: '8.8',
    spanner: '24 mm',
    final: 'at ride height',
    reuse: 'inspect',
    red: true,
    minutes: [4, 8, 30],
  })

/** Light truck or off-road vehicle: driven axle on coils, two lower links, one middle link, track bar. */
function coilRear() {
  const x = -2750
  const centre = [x, 762, 352]
  const link = (name, joins, at, [thread, spanner], stiffness, more = {}) =>
    joint('bolt', joins, {
      name,
      at,
      thread,
      class: '10.9',
      spanner: `${spanner} mm`,
      ...bonded(stiffness),
      reuse: 'new',
      red: true,
      minutes: [4, 8, 30],
      ...more,
    })
  return compose(
    {
      id: 'typical-solid-axle-coil-rear',
      name: 'Solid axle, coils, rear, driven',
      layout: 'solid axle, coils',
      axle: 'rear',
      wheel: {
        tyre: '235/70R16',
        loadedRadius: '352 mm',
        width: '235 mm',
        rim: '428 mm',
        studs: 6,
        camber: '0°',
        toe: '0°',
      },
      wheelRate: '30 N/mm',
    },
    points({
      'lower-link-inner': [x + 620, 470, 352],
      'lower-link-outer': [x + 20, 530, 285],
      'middle-link-inner': [x + 520, 130, 500],
      'middle-link-outer': [x + 30, 130, 505],
      'track-bar-inner': [x - 130, 530, 430],
      'track-bar-outer': [x - 130, -510, 415],
      'wheel-centre': centre,
    }),
    points(
      {
        'coil-top': [x + 20, 450, 640],
        'coil-bottom': [x + 20, 455, 425],
        'damper-top': [x - 70, 420, 690],
        'damper-bottom': [x - 90, 540, 300],
      },
      15,
    ),
    {
      parts: {
        frame: { kind: 'body' },
        'axle-beam': { kind: 'axle beam', name: 'axle with its final drive', ...once, heavy: true },
        'lower-link': { kind: 'rod', links: [['lower-link-inner', 'lower-link-outer']], wears: ['bush'] },
        'middle-link': {
          kind: 'rod',
          links: [['middle-link-inner', 'middle-link-outer']],
          ...once,
          wears: ['bush'],
        },
        'track-bar': {
          kind: 'rod',
          links: [['track-bar-inner', 'track-bar-outer']],
          ...once,
          wears: ['bush'],
        },
        'half-shaft': { kind: 'drive shaft', name: 'half shaft with its flange' },
        'wheel-bearing': { kind: 'bearing', wears: ['bearing'] },
        'propeller-shaft': { kind: 'drive shaft', ...once, wears: ['joint'] },
      },
      joints: {
        'lower-link-front-bolt': link(
          'front bolt of the lower link',
          ['lower-link', 'frame'],
          'lower-link-inner',
          ['M16x1.5', 24],
          2.5,
        ),
        'lower-link-rear-bolt': link(
          'rear bolt of the lower link',
          ['lower-link', 'axle-beam'],
          'lower-link-outer',
          ['M16x1.5', 24],
          2.5,
        ),
        'middle-link-front-bolt': link(
          'front bolt of the middle link',
          ['middle-link', 'frame'],
          'middle-link-inner',
          ['M14x1.5', 21],
          2,
          {
            side: 'left',
          },
        ),
        'middle-link-rear-bolt': link(
          'rear bolt of the middle link',
          ['middle-link', 'axle-beam'],
          'middle-link-outer',
          ['M14x1.5', 21],
          2,
          {
            side: 'left',
          },
        ),
        'track-bar-frame-bolt': link(
          'bolt of the track bar at the frame',
          ['track-bar', 'frame'],
          'track-bar-inner',
          ['M14x1.5', 21],
          1.8,
          {
            side: 'left',
          },
        ),
        'track-bar-axle-bolt': link(
          'bolt of the track bar at the axle',
          ['track-bar', 'axle-beam'],
          'track-bar-outer',
          ['M14x1.5', 21],
          1.8,
          {
            side: 'right',
          },
        ),
        'half-shaft-bolts': joint('bolt', ['wheel-bearing', 'axle-beam'], {
          name: 'bolts of the bearing plate at the axle’s end',
          at: 'wheel-centre',
          thread: 'M10x1.5',
          class: '10.9',
          spanner: '16 mm',
          count: 4,
          reuse: 'new',
          consumables: ['shaft seal', 'axle oil'],
          red: true,
          access: [
            wheelOff,
            { jointOpen: 'disc-screw', why: 'the disc is off the flange' },
            { jointOpen: 'speed-sensor-screw', why: 'the sensor reads a ring on the shaft' },
          ],
        }),
        'bearing-fit': joint('press fit', ['wheel-bearing', 'half-shaft'], {
          name: 'press fit of bearing and retaining collar on the half shaft',
          tool: 'press',
          reuse: 'new',
          consumables: ['retaining collar'],
          red: true,
          minutes: [10, 20, 45],
          access: [{ jointOpen: 'half-shaft-bolts', why: 'the shaft is drawn out with its bearing' }],
        }),
        'propeller-shaft-flange': joint('bolt', ['propeller-shaft', 'axle-beam'], {
          name: 'flange bolts of the propeller shaft',
          side: 'left',
          thread: 'M10x1.5',
          class: '10.9',
          spanner: '16 mm',
          count: 4,
          reuse: 'new',
          red: true,
          marks: ['flange to flange'],
        }),
        'propeller-shaft-slip': joint('spline', ['propeller-shaft', 'frame'], {
          name: 'sliding end of the propeller shaft in the gearbox',
          side: 'left',
          reuse: 'again',
          consumables: ['plug for the gearbox'],
          marks: ['shaft to gearbox'],
          access: [{ jointOpen: 'propeller-shaft-flange' }],
        }),
      },
      adjusters: {},
      holds: {
        coil: {
          heldBy: [
            [
              'lower-link-front-bolt',
              'lower-link-rear-bolt',
              'middle-link-front-bolt',
              'middle-link-rear-bolt',
              'track-bar-frame-bolt',
              'track-bar-axle-bolt',
              'damper-top-bolt',
              'damper-bottom-bolt',
            ],
          ],
          standIn: [
            'axle on stands of its own, frame on stands',
            'jack under the axle at this side; both coils tethered to the frame',
          ],
          standInKinds: ['axle on stands', 'jack under the arm'],
          letDown: 'with the axle on stands',
          droopStop: ['damper-top-bolt', 'damper-bottom-bolt'],
        },
      },
    },
    coilBetween('frame', 'axle-beam', [
      { jointOpen: 'hose-bracket', why: 'the axle goes lower than the hose reaches' },
      { jointOpen: 'parking-cable-clip', why: 'the axle goes lower than the cable reaches' },
      { jointOpen: 'speed-lead-clip', why: 'the axle goes lower than the lead reaches' },
    ]),
    wheel({ on: 'half-shaft', thread: 'M14x1.5', spanner: 21, studs: 6 }),
    discBrake({
      on: 'axle-beam',
      hub: 'half-shaft',
      body: 'frame',
      bracket: 'axle-beam',
      at: centre,
      reach: 130,
    }),
    parkingCable({ by: 'axle-beam', body: 'frame', reach: 120 }),
    speedLead({ on: 'axle-beam', by: 'axle-beam', body: 'frame', reach: 120 }),
  )
}

export const wholeAxles = {
  'twist-beam-rear': twistBeam,
  'solid-axle-leaf-front': leafFront,
  'solid-axle-coil-rear': coilRear,
}
