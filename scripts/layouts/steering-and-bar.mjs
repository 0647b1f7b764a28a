// Pieces that an axle has once, with what hangs on them at each side: anti-roll bar, rack, steering box.
import { joint, points } from './compose.mjs'

const wheelOff = { partOff: 'wheel' }

/** Anti-roll bar with ball-jointed drop links. `on` holds its clamps, `to` takes the link's far end. */
export function antiRollBar({ on, to, clamp, top, bottom, barEnd = 'bottom' }) {
  const [barPoint, farPoint] =
    barEnd === 'top' ? ['drop-link-top', 'drop-link-bottom'] : ['drop-link-bottom', 'drop-link-top']
  const nut = (name, part, at) =>
    joint('stud nuts', ['drop-link', part], {
      name,
      at,
      thread: 'M10x1.5',
      class: '8.8',
      spanner: '16 mm',
      count: 1,
      reuse: 'new',
      access: [wheelOff],
    })
  return {
    ...points({ 'drop-link-top': top, 'drop-link-bottom': bottom, 'bar-clamp': clamp }, 15),
    parts: {
      'anti-roll-bar': { kind: 'bar', span: 'axle', wears: ['bush'] },
      'drop-link': { kind: 'drop link', links: [['drop-link-top', 'drop-link-bottom']], wears: ['joint'] },
    },
    joints: {
      'bar-clamp': joint('bolt', ['anti-roll-bar', on], {
        name: 'clamp of the anti-roll bar',
        at: 'bar-clamp',
        thread: 'M10x1.5',
        class: '8.8',
        spanner: '16 mm',
        count: 2,
        bush: { bonded: false },
        final: 'any position',
        reuse: 'inspect',
        marks: ['slit of the bush: which way'],
      }),
      'drop-link-to-bar': {
        ...nut('nut of the drop link at the anti-roll bar', 'anti-roll-bar', barPoint),
        marks: ['which end up, left and right'],
      },
      'drop-link-to-wheel': nut('nut of the drop link at its far end', to, farPoint),
    },
  }
}

/** Tie-rod thread of a rack: one thread, the same on both sides. */
const tieRodThread = {
  kind: 'thread',
  name: 'tie rod',
  between: ['tie-inner', 'tie-outer'],
  pitch: '1.5 mm',
  sleeve: false,
  range: ['-5 turns', '5 turns'],
  step: '1/12 turn',
  play: '1/36 turn',
  seenFrom: 'outside',
  positiveLooks: 'clockwise',
  sets: 'toe',
}

/** The tie-rod end at the knuckle. */
export const tieRodEnd = (stud, knuckle = 'knuckle', more = {}) =>
  joint(stud === 'castle' ? 'tapered stud, castle nut' : 'tapered stud, lock nut', ['tie-rod-end', knuckle], {
    name: 'stud of the tie-rod end',
    at: 'tie-outer',
    thread: stud === 'castle' ? 'M12x1.25' : 'M12x1.5',
    spanner: '19 mm',
    tool: 'separator',
    final: 'wheels straight',
    ...(stud === 'castle'
      ? { slots: 6, pin: '3.2 mm', reuse: 'new pin', consumables: ['split pin 3.2 × 32'] }
      : { reuse: 'new', consumables: ['self-locking nut M12x1.5'] }),
    red: true,
    access: [wheelOff],
    ...more,
  })

/** Rack with boots, tie rods and ends; the steering shaft stands on the left. `on` holds the rack. */
export function rack({ on, body, stud, tieThread, mount, mountAccess = [] }) {
  return {
    ...points({ 'tie-thread': tieThread, 'rack-mount': mount }),
    parts: {
      rack: { kind: 'rack', name: 'steering rack', span: 'axle', wears: ['bearing'] },
      'rack-boot': { kind: 'boot', name: 'boot of the rack', wears: ['boot'] },
      'tie-rod': { kind: 'rod', links: [['tie-inner', 'tie-outer']], wears: ['joint', 'thread'] },
      'tie-rod-end': { kind: 'ball joint', name: 'tie-rod end', wears: ['joint', 'thread', 'boot'] },
      'steering-shaft': { kind: 'steering shaft', span: 'axle', wears: ['joint'] },
    },
    joints: {
      'tie-rod-end-stud': tieRodEnd(stud),
      'tie-rod-lock-nut': joint('thread and lock nut', ['tie-rod-end', 'tie-rod'], {
        name: 'lock nut of the tie rod',
        at: 'tie-thread',
        thread: 'M14x1.5',
        spanner: '22 mm',
        reuse: 'again',
        red: true,
        adjuster: 'tie-rod',
        marks: ['exposed thread', 'length from joint centre to joint centre'],
      }),
      'boot-outer-clip': joint('clip', ['rack-boot', 'tie-rod'], {
        name: 'outer clip of the rack boot',
        reuse: 'new',
        access: [{ partOff: 'tie-rod-end', why: 'the boot comes off over the rod' }],
      }),
      'boot-inner-clip': joint('clip', ['rack-boot', 'rack'], {
        name: 'inner clip of the rack boot',
        reuse: 'new',
        consumables: ['boot clip'],
        marks: ['boot not twisted'],
      }),
      'tie-rod-inner-joint': joint('bolt', ['tie-rod', 'rack'], {
        name: 'inner joint of the tie rod on the rack',
        at: 'tie-inner',
        thread: 'M16x1.5',
        reuse: 'new',
        consumables: ['locking compound'],
        red: true,
        minutes: [8, 14, 30],
        access: [
          { jointOpen: 'boot-inner-clip', why: 'the boot is pushed back' },
          { steering: 'right lock', why: 'the rack stands out on the left' },
        ],
      }),
      'rack-bolts': joint('bolt', ['rack', on], {
        name: 'mounting bolt of the rack',
        at: 'rack-mount',
        thread: 'M12x1.5',
        class: '10.9',
        spanner: '18 mm',
        count: 1,
        reuse: 'new',
        red: true,
        minutes: [5, 10, 25],
        ...(mountAccess.length > 0 ? { access: mountAccess } : {}),
      }),
      'rack-plug': joint('plug', ['rack', body], {
        name: 'plug of the steering motor',
        side: 'left',
        reuse: 'again',
      }),
      'steering-shaft-pinch-bolt': joint('pinch bolt', ['steering-shaft', 'rack'], {
        name: 'pinch bolt of steering shaft and pinion',
        side: 'left',
        thread: 'M8x1.25',
        class: '10.9',
        spanner: '13 mm',
        swing: 'tight',
        reuse: 'new',
        red: true,
        marks: ['shaft to pinion', 'steering wheel held straight, rack centred'],
        access: [{ steering: 'straight', why: 'the bolt stands where it can be reached' }],
      }),
      'steering-shaft-upper-bolt': joint('pinch bolt', ['steering-shaft', body], {
        name: 'pinch bolt of steering shaft and column',
        side: 'left',
        thread: 'M8x1.25',
        class: '10.9',
        spanner: '13 mm',
        reuse: 'new',
        red: true,
        marks: ['shaft to column'],
        access: [{ steering: 'straight', why: 'the bolt stands where it can be reached' }],
      }),
    },
    adjusters: { 'tie-rod': tieRodThread },
  }
}

/** Steering box with its shaft and drop arm; the drop arm's far joint belongs to the rod that it moves. */
export const steeringBox = ({ body }) => ({
  parts: {
    'steering-box': { kind: 'steering box', span: 'axle', wears: ['bearing'] },
    'drop-arm': { kind: 'drop arm', span: 'axle' },
    'steering-shaft': { kind: 'steering shaft', span: 'axle', wears: ['joint'] },
  },
  joints: {
    'steering-box-bolts': joint('bolt', ['steering-box', body], {
      name: 'bolts of the steering box',
      side: 'left',
      thread: 'M12x1.5',
      class: '10.9',
      spanner: '18 mm',
      count: 3,
      reuse: 'inspect',
      red: true,
    }),
    'drop-arm-nut': joint('stud nuts', ['drop-arm', 'steering-box'], {
      name: 'nut of the drop arm',
      side: 'left',
      thread: 'M20x1.5',
      spanner: '30 mm',
      count: 1,
      reuse: 'inspect',
      consumables: ['lock washer'],
      red: true,
      marks: ['drop arm to shaft'],
    }),
    'drop-arm-spline': joint('spline', ['drop-arm', 'steering-box'], {
      name: 'drop arm on its splined taper',
      side: 'left',
      tool: 'puller',
      reuse: 'inspect',
      red: true,
      marks: ['drop arm to shaft'],
      minutes: [5, 12, 40],
      access: [{ jointOpen: 'drop-arm-nut' }],
    }),
    'steering-shaft-pinch-bolt': joint('pinch bolt', ['steering-shaft', 'steering-box'], {
      name: 'pinch bolt of steering shaft and box',
      side: 'left',
      thread: 'M8x1.25',
      class: '10.9',
      spanner: '13 mm',
      reuse: 'new',
      red: true,
      marks: ['shaft to box', 'steering wheel held straight'],
      access: [{ steering: 'straight', why: 'the bolt stands where it can be reached' }],
    }),
    'steering-shaft-upper-bolt': joint('pinch bolt', ['steering-shaft', body], {
      name: 'pinch bolt of steering shaft and column',
      side: 'left',
      thread: 'M8x1.25',
      class: '10.9',
      spanner: '13 mm',
      reuse: 'new',
      red: true,
      marks: ['shaft to column'],
      access: [{ steering: 'straight', why: 'the bolt stands where it can be reached' }],
    }),
  },
})

const stud = (joins, name, more) =>
  joint('tapered stud, castle nut', joins, {
    name,
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

/** Box, drop arm, centre link and idler, with a tie rod in a left-and-right sleeve at each side. */
export function centreLinkSteering({ body, tieThread, dropJoint }) {
  const box = steeringBox({ body })
  return {
    ...points({ 'tie-thread': tieThread, 'drop-joint': dropJoint }, 12),
    parts: {
      ...box.parts,
      'idler-arm': { kind: 'idler arm', span: 'axle', wears: ['bush'] },
      'centre-link': { kind: 'centre link', span: 'axle', wears: ['joint'] },
      'tie-rod': {
        kind: 'rod',
        name: 'inner tie-rod end with its sleeve',
        links: [['tie-inner', 'tie-outer']],
        wears: ['joint', 'thread'],
      },
      'tie-rod-end': { kind: 'ball joint', name: 'tie-rod end', wears: ['joint', 'thread', 'boot'] },
    },
    joints: {
      'tie-rod-end-stud': tieRodEnd('castle'),
      'tie-rod-clamp': joint('thread and lock nut', ['tie-rod-end', 'tie-rod'], {
        name: 'clamp of the tie-rod sleeve',
        at: 'tie-thread',
        thread: 'M8x1.25',
        class: '8.8',
        spanner: '13 mm',
        count: 2,
        reuse: 'inspect',
        red: true,
        adjuster: 'tie-rod',
        marks: [
          'exposed thread at both ends',
          'length from joint centre to joint centre',
          'where the clamps open',
        ],
      }),
      'tie-rod-inner-stud': stud(['tie-rod', 'centre-link'], 'stud of the inner tie-rod end', {
        at: 'tie-inner',
      }),
      'drop-arm-stud': stud(['centre-link', 'drop-arm'], 'stud of centre link and drop arm', {
        at: 'drop-joint',
        side: 'left',
      }),
      'idler-stud': stud(['centre-link', 'idler-arm'], 'stud of centre link and idler arm', {
        side: 'right',
      }),
      'idler-bolts': joint('bolt', ['idler-arm', body], {
        name: 'bolts of the idler arm',
        side: 'right',
        thread: 'M10x1.5',
        class: '8.8',
        spanner: '16 mm',
        count: 2,
        reuse: 'inspect',
        red: true,
      }),
      ...box.joints,
    },
    adjusters: {
      'tie-rod': {
        ...tieRodThread,
        name: 'sleeve of the tie rod',
        sleeve: true,
        range: ['-4 turns', '4 turns'],
      },
    },
  }
}
