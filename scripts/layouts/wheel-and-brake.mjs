// The pieces at the wheel's end: wheel, brake, leads, hub and bearing, drive shaft.
import { joint, points } from './compose.mjs'

const wheelOff = { partOff: 'wheel' }
const caliperHung = { partOff: 'caliper', why: 'the caliper hangs on a hook, never on its hose' }
const carrierOff = { partOff: 'brake-carrier', why: 'it reaches over the disc' }

/** The wheel on whatever carries it. */
export const wheel = ({ on, thread, spanner, studs }) => ({
  parts: { wheel: { kind: 'wheel' } },
  joints: {
    'wheel-nuts': joint('wheel nuts', ['wheel', on], {
      thread,
      spanner: `${spanner} mm`,
      count: studs,
      final: 'on the ground',
      reuse: 'inspect',
      red: true,
      marks: ['wheel to stud'],
    }),
  },
})

/**
 * Disc brake with a floating caliper on a carrier. `on` carries the carrier, `bracket` the hose on its way to
 * `body`; `disc` tells how the disc is held: on the hub's face by a screw, or by bolts from behind.
 */
export function discBrake({ on, hub, body, bracket, at, reach, carrier = ['M12x1.5', 18], disc = 'screw' }) {
  const [x, y, z] = at
  const discJoint =
    disc === 'screw'
      ? {
          'disc-screw': joint('bolt', ['disc', hub], {
            name: 'retaining screw of the disc',
            thread: 'M8x1.25',
            reuse: 'inspect',
            marks: ['disc to hub'],
            access: [wheelOff, carrierOff],
          }),
        }
      : {
          'disc-bolts': joint('bolt', ['disc', hub], {
            name: 'bolts of disc and hub, from behind',
            thread: 'M10x1.25',
            class: '10.9',
            spanner: '16 mm',
            count: 5,
            reuse: 'inspect',
            consumables: ['locking compound'],
            red: true,
            access: [{ jointOpen: 'hub-nut', why: 'the bolts come from behind, with hub and disc off' }],
          }),
        }
  return {
    ...points(
      {
        'caliper-mount': [x - 125, y - 45, z + 20],
        'hose-bracket': [x - 60, y - 120, z + 110],
        'hose-at-body': [x - 90, y - 290, z + 190],
      },
      15,
    ),
    parts: {
      'brake-carrier': { kind: 'brake carrier', name: 'caliper carrier' },
      caliper: { kind: 'caliper', name: 'brake caliper' },
      'brake-pads': { kind: 'brake pads', wears: ['lining'] },
      disc: { kind: 'disc', name: 'brake disc', wears: ['face'] },
      'backing-plate': { kind: 'backing plate' },
      'brake-hose': {
        kind: 'hose',
        carries: 'brake fluid',
        clippedTo: [body, bracket, 'caliper'],
        reach: `${reach} mm`,
      },
    },
    joints: {
      'carrier-bolts': joint('bolt', ['brake-carrier', on], {
        name: 'bolts of the caliper carrier',
        at: 'caliper-mount',
        thread: carrier[0],
        class: '10.9',
        spanner: `${carrier[1]} mm`,
        count: 2,
        reuse: 'new',
        consumables: ['locking compound'],
        red: true,
        access: [wheelOff, caliperHung],
      }),
      'guide-pin-bolts': joint('bolt', ['caliper', 'brake-carrier'], {
        name: 'guide-pin bolts of the caliper',
        thread: 'M8x1.25',
        class: '8.8',
        spanner: '13 mm',
        count: 2,
        reuse: 'new',
        consumables: ['grease for guide pins'],
        red: true,
        access: [wheelOff],
      }),
      'pads-in-carrier': joint('clip', ['brake-pads', 'brake-carrier'], {
        name: 'pads and their springs in the carrier',
        marks: ['inner and outer pad, wear lead'],
        reuse: 'inspect',
        access: [{ jointOpen: 'guide-pin-bolts', why: 'the caliper is swung aside and hung' }],
      }),
      ...discJoint,
      'backing-plate-bolts': joint('bolt', ['backing-plate', on], {
        name: 'bolts of the backing plate',
        thread: 'M6x1',
        spanner: '10 mm',
        count: 3,
        reuse: 'inspect',
        access: [disc === 'screw' ? { partOff: 'disc' } : { partOff: 'hub' }],
      }),
      'hose-bracket': joint('hose bracket', ['brake-hose', bracket], {
        name: 'bracket of the brake hose',
        at: 'hose-bracket',
        thread: 'M8x1.25',
        spanner: '13 mm',
        reuse: 'again',
        marks: ['way of hose and lead'],
        access: [wheelOff],
      }),
      'hose-at-caliper': joint('hydraulic union', ['brake-hose', 'caliper'], {
        name: 'hollow bolt of the brake hose at the caliper',
        thread: 'M10x1',
        spanner: '14 mm',
        reuse: 'new',
        consumables: ['2 sealing washers 10 × 14', 'brake fluid'],
        red: true,
        marks: ['way the hose end points'],
        access: [wheelOff],
      }),
      'hose-at-pipe': joint('hydraulic union', ['brake-hose', body], {
        name: 'union of brake pipe and hose',
        at: 'hose-at-body',
        thread: 'M10x1',
        spanner: '11 mm',
        reuse: 'inspect',
        consumables: ['brake fluid', 'plug for the open pipe'],
        red: true,
        access: [wheelOff],
      }),
    },
  }
}

/** The lead of the wheel-speed sensor: screwed to `on`, clipped to `by`, plugged in at `body`. */
export const speedLead = ({ on, by, body, reach, behind }) => ({
  parts: {
    'speed-lead': {
      kind: 'lead',
      name: 'wheel-speed sensor and its lead',
      clippedTo: [...new Set([on, by, body])],
      reach: `${reach} mm`,
    },
  },
  joints: {
    'speed-sensor-screw': joint('bolt', ['speed-lead', on], {
      name: 'screw of the wheel-speed sensor',
      thread: 'M6x1',
      spanner: '10 mm',
      reuse: 'again',
      access: [wheelOff],
    }),
    'speed-lead-clip': joint('clip', ['speed-lead', by], {
      name: 'clip of the wheel-speed lead',
      reuse: 'inspect',
      marks: ['way of the lead'],
    }),
    'speed-lead-plug': joint('plug', ['speed-lead', body], {
      name: 'plug of the wheel-speed lead',
      reuse: 'again',
      ...(behind ? { access: [{ partOff: behind, why: 'the plug sits behind it' }] } : {}),
    }),
  },
})

/** The cable of the parking brake, on its way from the body over `by` to the caliper. */
export const parkingCable = ({ by, body, reach }) => ({
  parts: {
    'parking-cable': {
      kind: 'lead',
      name: 'parking-brake cable',
      clippedTo: [body, by, 'caliper'],
      reach: `${reach} mm`,
      wears: ['thread'],
    },
  },
  joints: {
    'parking-cable-end': joint('clip', ['parking-cable', 'caliper'], {
      name: 'end of the parking-brake cable at the caliper',
      reuse: 'inspect',
      red: true,
      marks: ['lever position of the caliper with the brake released'],
      access: [wheelOff],
    }),
    'parking-cable-clip': joint('clip', ['parking-cable', by], {
      name: 'clip of the parking-brake cable',
      reuse: 'inspect',
      marks: ['way of the cable'],
    }),
    'parking-cable-adjuster': joint('thread and lock nut', ['parking-cable', body], {
      name: 'adjusting nut of the parking-brake cable',
      thread: 'M8x1.25',
      spanner: '13 mm',
      reuse: 'again',
      red: true,
      marks: ['exposed thread'],
    }),
  },
})

/** Taper-roller hub on the knuckle's spindle: set to end float, by its own procedure. */
export const taperRollerHub = ({ on }) => ({
  parts: {
    hub: { kind: 'hub', name: 'hub with taper-roller bearings', wears: ['bearing'] },
    'hub-cap': { kind: 'shield', name: 'grease cap' },
  },
  joints: {
    'hub-cap-fit': joint('press fit', ['hub-cap', 'hub'], {
      name: 'seat of the grease cap',
      tool: 'drift',
      reuse: 'inspect',
      access: [wheelOff],
    }),
    'hub-nut': joint('adjustable taper-roller hub', ['hub', on], {
      name: 'spindle nut of the hub',
      at: 'wheel-centre',
      thread: 'M20x1.5',
      spanner: '30 mm',
      slots: 6,
      pin: '4 mm',
      reuse: 'new pin',
      consumables: ['split pin 4 × 40', 'wheel-bearing grease', 'grease seal'],
      red: true,
      minutes: [10, 18, 30],
      access: [{ partOff: 'hub-cap' }, carrierOff],
    }),
  },
})

/** A hub that comes with its bearing as one unit, bolted from behind. */
export const boltedHub = ({ on, driven, count = 4, thread = 'M12x1.5', spanner = 18, more = {} }) => ({
  parts: { hub: { kind: 'hub', name: 'hub with its bearing', wears: ['bearing'] } },
  joints: {
    'hub-bolts': joint('bolt', ['hub', on], {
      name: 'bolts of the hub unit, from behind',
      at: 'wheel-centre',
      thread,
      class: '10.9',
      spanner: `${spanner} mm`,
      count,
      swing: 'tight',
      reuse: 'new',
      consumables: ['locking compound'],
      red: true,
      minutes: [8, 15, 45],
      access: [
        carrierOff,
        { partOff: 'disc' },
        { jointOpen: 'speed-sensor-screw', why: 'the sensor reads a ring in the hub' },
        ...(driven ? [{ jointOpen: 'axle-nut', why: 'the hub is drawn outward off the shaft' }] : []),
      ],
      ...more,
    }),
  },
})

/** Hub and bearing pressed into the knuckle or arm; `free` names the joints that put the knuckle on the bench. */
export function pressedHub({ on, free }) {
  const atPress = [
    carrierOff,
    { partOff: 'disc' },
    { jointOpen: 'drive-shaft-spline' },
    ...free.map((name) => ({ jointOpen: name, why: 'hub and bearing are pressed on the bench' })),
  ]
  return {
    parts: {
      hub: { kind: 'hub' },
      'wheel-bearing': { kind: 'bearing', wears: ['bearing'] },
    },
    joints: {
      'hub-fit': joint('press fit', ['hub', 'wheel-bearing'], {
        name: 'press fit of hub and bearing',
        at: 'wheel-centre',
        tool: 'press',
        reuse: 'inspect',
        red: true,
        minutes: [8, 15, 30],
        access: atPress,
      }),
      'bearing-ring': joint('retaining ring', ['wheel-bearing', on], {
        name: 'retaining ring of the wheel bearing',
        reuse: 'new',
        red: true,
        access: [...atPress, { jointOpen: 'hub-fit' }],
      }),
      'bearing-fit': joint('press fit', ['wheel-bearing', on], {
        name: 'press fit of the wheel bearing',
        tool: 'press',
        reuse: 'new',
        red: true,
        minutes: [8, 15, 40],
        marks: ['side of the bearing that carries the speed ring'],
        access: [...atPress, { jointOpen: 'hub-fit' }, { jointOpen: 'bearing-ring' }],
      }),
    },
  }
}

/**
 * Drive shaft: splined into the hub under the axle nut, inboard a flange or a ring in the gearbox. `outer` and
 * `inboard` say what must be open before each end comes free.
 */
export function driveShaft({ inner, body, reach, nut = ['M24x1.5', 36], outer = [], inboard = [] }) {
  const at = inboard.length > 0 ? { access: inboard } : {}
  const innerJoint =
    inner === 'flange'
      ? joint('bolt', ['drive-shaft', body], {
          name: 'flange bolts of the drive shaft',
          thread: 'M10x1.5',
          class: '10.9',
          count: 6,
          spanner: '16 mm',
          reuse: 'new',
          marks: ['flange to flange'],
          minutes: [5, 9, 20],
          ...at,
        })
      : joint('retaining ring', ['drive-shaft', body], {
          name: 'ring of the inner joint in the gearbox',
          reuse: 'new',
          tool: 'fork',
          consumables: ['retaining ring', 'shaft seal', 'gearbox oil'],
          ...at,
        })
  return {
    parts: {
      'drive-shaft': { kind: 'drive shaft', reach: `${reach} mm`, wears: ['joint', 'boot'] },
    },
    joints: {
      'axle-nut': joint('axle nut', ['drive-shaft', 'hub'], {
        thread: nut[0],
        spanner: `${nut[1]} mm`,
        cracked: 'on the ground',
        reuse: 'new',
        consumables: ['axle nut'],
        red: true,
      }),
      'drive-shaft-spline': joint('spline', ['drive-shaft', 'hub'], {
        name: 'drive shaft in the hub',
        tool: 'puller',
        reuse: 'again',
        access: [{ jointOpen: 'axle-nut' }, wheelOff, ...outer],
      }),
      'drive-shaft-inner': innerJoint,
    },
  }
}
