import { describe, expect, test } from 'vitest'
import {
  type Action,
  type Assembly,
  afterAction,
  assemblyOf,
  interlocks,
  keys,
  planOf,
  type RuleId,
  type State,
} from '../../../src/plan/index.ts'
import { bus, vehicleNamed } from './vehicles.ts'

/** A plan as the stuff that rules are tried on: its actions, and the state before any of them. */
function job(vehicle: string | Assembly, replace: readonly string[], support?: 'lift') {
  const assembly = typeof vehicle === 'string' ? vehicleNamed(vehicle) : vehicle
  const plan = planOf(assembly, { replace }, undefined, {
    support: support ?? 'jack and stands',
    effort: { budget: 3e5 },
  })
  const actions = plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action))
  const action = (id: string): Action => {
    const found = actions.find((one) => one.id === id)
    if (!found) throw new Error(`no ${id} in ${actions.map((one) => one.id).join(' | ')}`)
    return found
  }
  const before = (id: string): State => {
    let state: State = {}
    for (const one of actions) {
      if (one.id === id) return state
      state = afterAction(state, one)
    }
    throw new Error(`no ${id}`)
  }
  const renewed = new Set(replace)
  return {
    assembly,
    action,
    before,
    says: (
      rule: RuleId,
      id: string,
      change: State = {},
      how: Record<string, string> = {},
      as: Partial<Action> = {},
    ) => {
      const it = action(id)
      const state = { ...before(id), ...change }
      return interlocks[rule]({
        assembly,
        state,
        action: { ...it, ...as, how: { ...it.how, ...how } },
        renewed,
      })
    },
    at: (rule: RuleId, state: State, it: Action) =>
      interlocks[rule]({ assembly, state, action: it, renewed }),
  }
}

/** The rule speaks, by its name, with these words in what would happen or in what to do instead. */
function speaks(said: ReturnType<(typeof interlocks)['I1']>, rule: RuleId, ...words: RegExp[]): void {
  expect(said, `${rule} is silent`).not.toBeNull()
  expect(said!.rule).toBe(rule)
  const text = `${said!.would} ${said!.instead}`
  for (const word of words) expect(text).toMatch(word)
  for (const sentence of [said!.would, said!.instead]) expect(sentence.length).toBeGreaterThan(12)
}

const arm = job('bus', ['front right lower-arm', 'front left coil', 'front right coil'])
const joint = 'front right lower-ball-joint'

describe('PL3 I1 what carries the vehicle', () => {
  test('PL3 a jack alone', () => {
    speaks(
      arm.says('I1', 'take off front left wheel', { [keys.support('front')]: 'on a jack' }),
      'I1',
      /jack alone/,
      /stands/,
    )
    speaks(arm.says('I1', `open ${joint}`, { [keys.support('front')]: 'on a jack' }), 'I1', /jack alone/)
  })
  test('PL3 stands not seen loaded, arms not locked, wheels not chocked, nothing under it', () => {
    speaks(arm.says('I1', `open ${joint}`, { [keys.support('front')]: 'on stands' }), 'I1', /seen/, /loaded/)
    speaks(arm.says('I1', `open ${joint}`, { [keys.support('front')]: 'on the lift' }), 'I1', /locked/)
    speaks(arm.says('I1', 'jack up front', { [keys.chocks]: 'not set' }), 'I1', /roll/, /[Cc]hock/)
    speaks(
      arm.says('I1', 'open front right lower-rear-bolt', { [keys.support('front')]: 'on its wheels' }),
      'I1',
      /under/,
      /ramps/,
    )
    speaks(
      arm.says('I1', 'take off front left wheel', { [keys.support('front')]: 'on its wheels' }),
      'I1',
      /drop/,
    )
  })
  test('PL3 a heavy unit off a lift without its tail support', () => {
    const beam = vehicleNamed('twist-beam-rear')
    const part = {
      ...beam.parts['rear axle-beam']!,
      file: { ...beam.parts['rear axle-beam']!.file, heavy: true as const },
    }
    const heavy = job(
      { ...beam, parts: { ...beam.parts, 'rear axle-beam': part as never } },
      ['rear axle-beam'],
      'lift',
    )
    expect(heavy.says('I1', 'take off rear axle-beam')).toBeNull()
    speaks(heavy.says('I1', 'take off rear axle-beam', { [keys.tail]: 'none' }), 'I1', /tips/, /tail support/)
  })
})

test('PL3 I2 wheel nuts in the air, and in one go', () => {
  const lifted = { [keys.support('front')]: 'on stands, seen loaded' }
  speaks(arm.says('I2', 'crack front left wheel-nuts', lifted), 'I2', /wheel turns/, /on the ground/)
  speaks(arm.says('I2', 'final front left wheel-nuts', lifted), 'I2', /on the ground/)
  speaks(arm.says('I2', 'final front left wheel-nuts', {}, { method: 'torque' }), 'I2', /opposite/, /stages/)
  const loose = { [keys.joint('front left wheel-nuts')]: 'run up' }
  speaks(arm.says('I2', 'settle 1', loose), 'I2', /rolls on/, /first/)
  speaks(arm.says('I2', 'road test', loose), 'I2', /rolls on/)
  expect(arm.says('I2', 'settle 1')).toBeNull()
  expect(arm.says('I2', 'crack front left wheel-nuts')).toBeNull()
  expect(arm.says('I2', 'final front left wheel-nuts')).toBeNull()
})

describe('PL3 I3 stored energy is held', () => {
  const energy = keys.energy('front right coil')
  test('PL3 a joint of the retaining set without a stand-in', () => {
    speaks(
      arm.says('I3', `open ${joint}`, { [energy]: 'held by its set' }),
      'I3',
      /coil/,
      /jack under the arm/,
    )
    speaks(arm.says('I3', `free ${joint}`, { [energy]: 'held by its set' }), 'I3', /comes out/)
  })
  test('PL3 the droop stop belongs to the set: a damper that hangs', () => {
    const damper = job('bus', ['front right damper'])
    speaks(
      damper.says('I3', 'open front right damper-bottom-bolt', { [energy]: 'held by its set' }),
      'I3',
      /coil/,
    )
    expect(damper.says('I3', 'open front right damper-bottom-bolt')).toBeNull()
  })
  test('PL3 the pivots that a jack stands on', () => {
    speaks(
      arm.says('I3', 'open front right lower-rear-bolt', { [energy]: 'held by the jack' }),
      'I3',
      /jump off the jack/,
      /slack/,
    )
    expect(arm.says('I3', 'open front right lower-rear-bolt')).toBeNull()
  })
  test('PL3 a jack that is not located, or lifts the body', () => {
    const id = 'jack under front right'
    speaks(arm.says('I3', id, {}, { saddle: 'loose' }), 'I3', /saddle/, /tether/)
    speaks(arm.says('I3', id, {}, { hands: 'in front of it' }), 'I3', /line/)
    speaks(arm.says('I3', id, { [keys.support('front')]: 'on its wheels' }), 'I3', /stands/)
    speaks(arm.says('I3', id, { [keys.joint('front right lower-rear-bolt')]: 'open' }), 'I3', /pivot/)
    speaks(
      arm.says('I3', 'let down front right coil', { [keys.joint('front right lower-rear-bolt')]: 'open' }),
      'I3',
      /slides off/,
    )
    expect(arm.says('I3', id)).toBeNull()
  })
  test('PL3 a coil that still has its load', () => {
    speaks(
      arm.says('I3', 'take off front right coil', { [energy]: 'held by the jack' }),
      'I3',
      /load/,
      /compressor/,
    )
  })
})

test('PL3 I4 a compressor released before the retaining set is run up', () => {
  const strut = job('strut-front', ['front left coil'])
  const nut = keys.joint('front left strut-top-nut')
  speaks(
    strut.says('I4', 'release front left coil 2', { [nut]: 'started' }),
    'I4',
    /not run up/,
    /retaining set/,
  )
  expect(strut.says('I4', 'release front left coil 2')).toBeNull()
  speaks(arm.says('I4', 'jack away front right', { [keys.joint(joint)]: 'open' }), 'I4', /not run up/)
  speaks(arm.says('I4', 'jack away front right', { [keys.taper(joint)]: 'parted' }), 'I4', /tapers seated/)
  speaks(
    arm.says('I4', 'lower', { [keys.energy('front left coil')]: 'held by the jack' }),
    'I4',
    /own joints/,
  )
  expect(arm.says('I4', 'jack away front right')).toBeNull()
})

test('PL3 I5 a taper with its nut off, or still tight', () => {
  speaks(
    arm.says('I5', `free ${joint}`, { [keys.joint(joint)]: 'open' }),
    'I5',
    /nothing to catch/,
    /few threads/,
  )
  speaks(arm.says('I5', `free ${joint}`, { [keys.joint(joint)]: 'closed' }), 'I5', /few threads/)
  speaks(arm.says('I5', `open ${joint}`, { [keys.taper(joint)]: 'seated' }), 'I5', /few threads/)
  expect(arm.says('I5', `open ${joint}`)).toBeNull()
})

describe('PL3 I6 hose, lead and caliper', () => {
  test('PL3 hose bracket or lead not free before the knuckle moves', () => {
    speaks(
      arm.says('I6', `free ${joint}`, { [keys.joint('front right brake-hose-bracket')]: 'closed' }),
      'I6',
      /hose/,
      /tears/,
    )
    speaks(
      arm.says('I6', `open ${joint}`, { [keys.joint('front right sensor-clip')]: 'closed' }),
      'I6',
      /lead/,
    )
    expect(arm.says('I6', `open ${joint}`)).toBeNull()
  })
  test('PL3 fixed again while the knuckle is loose', () => {
    speaks(
      arm.says('I6', 'close front right brake-hose-bracket', { [keys.joint(joint)]: 'open' }),
      'I6',
      /hang on/,
    )
  })
  test('PL3 a caliper off, on its hose', () => {
    const disc = job('bus', ['front left disc'])
    const off = disc.says('I6', 'take off front left caliper', {}, {}, { verb: 'take off' })
    speaks(off, 'I6', /hose/, /hook/)
    expect(disc.says('I6', 'take off front left caliper')).toBeNull()
  })
})

describe('PL3 I7 bonded bushes', () => {
  const one = job('van', ['front right lower-arm'])
  const bolt = 'final front right lower-rear-bolt'
  test('PL3 final while it hangs, or scrubbed in', () => {
    speaks(
      one.says('I7', bolt, { [keys.support('front')]: 'on stands, seen loaded' }),
      'I7',
      /hanging/,
      /ride height/,
    )
    speaks(one.says('I7', bolt, { [keys.settled('front')]: 'no' }), 'I7', /scrubbed/, /settle/)
    expect(one.says('I7', bolt)).toBeNull()
  })
  test('PL3 new coils: the sagged height is not the one to raise it to', () => {
    const raise = (target: string): Action => ({
      ...arm.action('jack under front right'),
      verb: 'raise to ride height',
      how: { target, gap: 'watched', load: 'estimated' },
    })
    const state = arm.before('jack away front right')
    const renewed = { ...state, [keys.part('front right coil')]: 'new' }
    speaks(arm.at('I7', renewed, raise('height before lifting')), 'I7', /sagged/, /sheet/)
    expect(arm.at('I7', renewed, raise('the sheet'))).toBeNull()
    const unknown = { [keys.heights]: 'not recorded' }
    speaks(arm.at('I7', unknown, raise('height before lifting')), 'I7', /height/, /[Rr]ecord/)
    speaks(arm.at('I7', { [keys.heights]: 'to set' }, raise('height before lifting')), 'I7', /torsion bar/)
  })
  test('PL3 a bush bolt that is an eccentric, before the last move', () => {
    const adjuster = keys.adjuster('front right lower-rear-eccentric')
    speaks(
      arm.says('I7', 'final front right lower-rear-bolt', { [adjuster]: 'disturbed' }),
      'I7',
      /eccentric/,
      /run up/,
      /last move/,
    )
    expect(arm.says('I7', 'final front right lower-rear-bolt')).toBeNull()
  })
  test('PL3 a rod end of rubber with the wheels turned', () => {
    const rod = job('bus', ['front left tie-rod'])
    speaks(rod.says('I7', 'final front left tie-rod-end', { [keys.steering]: 'left lock' }), 'I7', /straight/)
    expect(rod.says('I7', 'final front left tie-rod-end')).toBeNull()
  })
})

describe('PL3 I7b a jack under the arm at ride height', () => {
  const link = job('five-link-rear', ['rear left lower-front-link'])
  const raise = 'raise to ride rear left'
  test('PL3 the body lifted off its stand: gap and load are watched', () => {
    speaks(link.says('I7b', raise, {}, { gap: 'not watched' }), 'I7b', /lift the body off its stand/, /gap/)
    speaks(link.says('I7b', raise, {}, { load: 'not known' }), 'I7b', /load on the jack/)
    speaks(
      link.says('I7b', 'final rear left lower-front-outer-bolt', { [keys.gap('rear')]: 'open' }),
      'I7b',
      /off its stand/,
      /jack alone/,
      /ramps/,
    )
    expect(link.says('I7b', 'ride jack away rear left', { [keys.gap('rear')]: 'open' })).toBeNull()
    expect(link.says('I7b', raise)).toBeNull()
  })
  test('PL3 the anti-roll link still on, somebody under, no stands', () => {
    const closed = Object.fromEntries(
      Object.values(link.assembly.joints)
        .filter(({ joins }) => joins.some((part) => part.endsWith('drop-link')))
        .map(({ id }) => [keys.joint(id), 'closed']),
    )
    speaks(link.says('I7b', raise, closed), 'I7b', /anti-roll/)
    const both = { ...closed, [keys.arm('rear right')]: 'raised to ride height' }
    expect(link.says('I7b', raise, both)).toBeNull()
    speaks(
      link.says('I7b', 'final rear left lower-front-outer-bolt', {}, {}, { place: 'under' }),
      'I7b',
      /[Nn]obody under/,
    )
    speaks(link.says('I7b', raise, { [keys.support('rear')]: 'on its wheels' }), 'I7b', /stands/)
  })
})

test('PL3 I8 fasteners and pins that are used once', () => {
  speaks(
    arm.says('I8', 'final front right damper-bottom-bolt', {
      [keys.fastener('front right damper-bottom-bolt')]: 'old',
    }),
    'I8',
    /new one/,
  )
  speaks(arm.says('I8', `pin ${joint}`, {}, { pin: 'the old one' }), 'I8', /new pin/)
  expect(arm.says('I8', 'final front right damper-bottom-bolt')).toBeNull()
})

test('PL3 I9 castle nut and adjustable hub never mixed', () => {
  speaks(arm.says('I9', `final ${joint}`, {}, { method: 'backed off to the slot' }), 'I9', /never back/)
  speaks(arm.says('I9', `pin ${joint}`, { [keys.joint(joint)]: 'run up' }), 'I9', /not tight/)
  speaks(arm.says('I9', `check ${joint}`, { [keys.pin(joint)]: 'out' }), 'I9', /no pin/)
  const hub = job('wishbone-coil-lower', ['front left hub'])
  const nut = Object.values(hub.assembly.joints).find(
    ({ kind, side }) => kind === 'adjustable taper-roller hub' && side === 'left',
  )!
  speaks(hub.says('I9', `final ${nut.id}`, {}, { method: 'castle slot' }), 'I9', /back it off/, /end float/)
  expect(hub.says('I9', `final ${nut.id}`)).toBeNull()
})

test('PL3 I10 the anti-roll link on while an arm goes down', () => {
  const links = Object.fromEntries(
    Object.values(arm.assembly.joints)
      .filter(({ joins }) => joins.some((part) => part.endsWith('drop-link')))
      .map(({ id }) => [keys.joint(id), 'closed']),
  )
  speaks(arm.says('I10', 'let down front right coil', links), 'I10', /anti-roll/, /link off/)
  expect(arm.says('I10', 'let down front right coil')).toBeNull()
})

test('PL3 I11 a torsion bar wound, or unwound without a record', () => {
  const bar = job('wishbone-torsion-bar', ['front left lower-arm'])
  const wound = { [keys.energy('front left torsion-bar')]: 'held by its set' }
  speaks(bar.says('I11', 'open front left lower-front-bolt', wound), 'I11', /wound/, /[Uu]nwind/)
  const anchor = Object.values(bar.assembly.joints).find(
    ({ kind, side }) => kind === 'anchor bolt' && side === 'left',
  )!
  speaks(
    bar.says('I11', 'unwind front left torsion-bar', { [keys.mark(anchor.id)]: 'not recorded' }),
    'I11',
    /height/,
    /turns/,
  )
  speaks(bar.says('I11', 'unwind front left torsion-bar', {}, { turns: 'not counted' }), 'I11', /count/)
  expect(bar.says('I11', 'open front left lower-front-bolt')).toBeNull()
  expect(bar.says('I11', 'unwind front left torsion-bar')).toBeNull()
})

test('PL3 I12 an air spring: levelling off, deflated and disconnected', () => {
  const parts = { ...bus.parts, coil: { ...bus.parts['coil']!, stores: 'air' as const } } as typeof bus.parts
  const air = job(
    assemblyOf([
      {
        ...bus,
        parts,
        airSprung: true,
        holds: { coil: { heldBy: bus.holds['coil']!.heldBy, letDown: 'air let out' } },
      },
    ]),
    ['front right damper'],
  )
  speaks(
    air.says('I12', 'open front right damper-bottom-bolt', {
      [keys.energy('front right coil')]: 'held by its set',
    }),
    'I12',
    /full of air/,
    /disconnect/,
  )
  speaks(
    air.says('I12', 'jack up front', { [keys.levelling]: 'on' }),
    'I12',
    /rises or sinks/,
    /levelling off/,
  )
  speaks(air.says('I12', 'deflate front right coil', { [keys.levelling]: 'on' }), 'I12', /levelling/)
  expect(air.says('I12', 'jack up front')).toBeNull()
  expect(air.says('I12', 'open front right damper-bottom-bolt')).toBeNull()
})

test('PL3 I13 the strut’s nut, heat and hammer', () => {
  const strut = job('strut-front', ['front left coil'])
  const held = { [keys.energy('front left coil')]: 'held by its set' }
  speaks(strut.says('I13', 'open front left strut-top-nut', held), 'I13', /shot/, /compressor/)
  expect(strut.says('I13', 'open front left strut-top-nut')).toBeNull()
  speaks(arm.says('I13', `free ${joint}`, {}, { aid: 'heat' }), 'I13', /stays/, /thrown away/)
  speaks(arm.says('I13', 'open front right lower-rear-bolt', {}, { aid: 'heat' }), 'I13', /bonded bush/)
  speaks(arm.says('I13', 'open front right damper-bottom-bolt', {}, { aid: 'heat' }), 'I13', /damper/)
  speaks(
    arm.says('I13', `free ${joint}`, {}, { aid: 'hammer', boss: 'aluminium' }),
    'I13',
    /aluminium/,
    /separator/,
  )
  const knuckleStays = job('bus', ['front left tie-rod'])
  expect(knuckleStays.says('I13', 'free front left tie-rod-end', {}, { aid: 'hammer' })).toBeNull()
  const again = job('bus', ['front left upper-arm'])
  const stays = again.at('I13', {}, { ...arm.action(`free ${joint}`), how: { aid: 'hammer' } })
  speaks(stays, 'I13', /used again/)
})

describe('PL3 I14 the wheel bearing and the drive shaft', () => {
  const shaft = job('strut-front', ['front left drive-shaft'])
  const nut = Object.values(shaft.assembly.joints).find(
    ({ kind, side }) => kind === 'axle nut' && side === 'left',
  )!
  test('PL3 weight before the nut is final, and where it is cracked', () => {
    speaks(shaft.says('I14', 'lower', { [keys.joint(nut.id)]: 'started' }), 'I14', /bearing/, /final/)
    const rolls = { ...shaft.action('lower'), verb: 'roll and settle' as const }
    speaks(shaft.at('I14', { [keys.joint(nut.id)]: 'run up' }, rolls), 'I14', /bearing/)
    const other = nut.file.cracked === 'on the ground' ? 'on stands, seen loaded' : 'on its wheels'
    speaks(
      shaft.says('I14', `crack ${nut.id}`, { [keys.support('front')]: other }),
      'I14',
      /sheet|brake held/,
    )
    expect(shaft.says('I14', `crack ${nut.id}`)).toBeNull()
    expect(shaft.says('I14', 'lower')).toBeNull()
  })
  test('PL3 a shaft drawn beyond its joint', () => {
    const low = job('van', ['front right lower-arm'])
    speaks(
      low.says('I14', 'open front right lower-ball-joint', {}, { shaft: 'loose' }),
      'I14',
      /beyond its joint/,
      /[Tt]ie/,
    )
    expect(low.says('I14', 'open front right lower-ball-joint')).toBeNull()
  })
})

test('PL3 I15 marks before anything is disturbed, on the body side too', () => {
  const mark = keys.mark('front right lower-rear-bolt')
  speaks(
    arm.says('I15', 'open front right lower-rear-bolt', { [mark]: 'not recorded' }),
    'I15',
    /lost/,
    /mark/,
  )
  speaks(arm.says('I15', 'open front right lower-rear-bolt', { [mark]: 'recorded' }), 'I15', /body side/)
  speaks(
    arm.says('I15', 'set toe front', { [keys.mark('front left tie-rod-lock-nut')]: 'not recorded' }),
    'I15',
    /first move/,
  )
  speaks(
    arm.says('I15', 'take off front right coil', { [keys.mark('front right coil-seats')]: 'not recorded' }),
    'I15',
    /lost/,
  )
  expect(arm.says('I15', 'open front right lower-rear-bolt')).toBeNull()
})

test('PL3 I16 a new part compared before lifting, and beside the old', () => {
  const compared = keys.compared('front right lower-arm')
  speaks(
    arm.says('I16', 'jack up front', { [compared]: 'not yet' }),
    'I16',
    /in pieces/,
    /side, length, taper, thread, plug/,
  )
  speaks(
    arm.says('I16', 'fit front right lower-arm', { [compared]: 'before lifting' }),
    'I16',
    /beside the old/,
  )
  expect(arm.says('I16', 'fit front right lower-arm')).toBeNull()
})

describe('PL3 I17 order of the angles', () => {
  test('PL3 toe before camber and caster, front before rear, lock nut before toe', () => {
    const lean = { [keys.adjuster('front right lower-rear-eccentric')]: 'disturbed' }
    speaks(arm.says('I17', 'set toe front', lean), 'I17', /voids the toe/, /toe last/)
    const nut = { [keys.adjuster('front left tie-rod')]: 'disturbed' }
    speaks(arm.says('I17', 'final front left tie-rod-lock-nut', nut), 'I17', /lock nut/, /read again/)
    const two = job(assemblyOf([bus, { ...bus, id: 'rear', axle: 'rear' }]), ['front left tie-rod'])
    speaks(
      two.says('I17', 'set toe front', { [keys.adjuster('rear left tie-rod')]: 'disturbed' }),
      'I17',
      /rear first/,
    )
    expect(arm.says('I17', 'set toe front')).toBeNull()
  })
  test('PL3 readings: settled, at pressure, joints final', () => {
    speaks(arm.says('I17', 'read proving front', { [keys.settled('front')]: 'no' }), 'I17', /scrubbed/, /2 m/)
    speaks(arm.says('I17', 'read provisional front', { [keys.pressures]: 'as found' }), 'I17', /pressure/)
    speaks(arm.says('I17', 'read provisional front', { [keys.joint(joint)]: 'run up' }), 'I17', /not final/)
    speaks(
      arm.says('I17', 'read proving front', { [keys.joint('front right lower-rear-bolt')]: 'run up' }),
      'I17',
      /every joint final/,
    )
    expect(arm.says('I17', 'read provisional front')).toBeNull()
    expect(arm.says('I17', 'read proving front')).toBeNull()
  })
})

test('PL3 I18 nothing rolls before the pedal is firm', () => {
  speaks(arm.says('I18', 'settle 1', { [keys.pedal]: 'to pump' }), 'I18', /without brakes/, /[Pp]ump/)
  speaks(
    arm.says('I18', 'onto ramps', { [keys.line('front left hose-at-pipe')]: 'to bleed' }),
    'I18',
    /[Aa]ir/,
    /bleed/,
  )
  expect(arm.says('I18', 'settle 1')).toBeNull()
})

test('PL3 I19 a lead back and its lamp looked at', () => {
  speaks(arm.says('I19', 'hand over', { [keys.lamp('front left sensor-lead')]: 'to look at' }), 'I19', /lamp/)
  speaks(arm.says('I19', 'hand over', { [keys.joint('front left sensor-clip')]: 'open' }), 'I19', /open/)
  speaks(arm.says('I19', 'hand over', { [keys.levelSensor]: 'to check' }), 'I19', /height sensor/)
  expect(arm.says('I19', 'hand over')).toBeNull()
})

test('PL3 I20 no road test before it is whole', () => {
  speaks(arm.says('I20', 'road test', { [keys.joint(joint)]: 'run up' }), 'I20', /not final/)
  speaks(arm.says('I20', 'road test', { [keys.pin(joint)]: 'out' }), 'I20', /pin/)
  speaks(arm.says('I20', 'road test', { [keys.pedal]: 'to pump' }), 'I20', /pedal/)
  speaks(arm.says('I20', 'road test', { [keys.reading('front')]: 'provisional' }), 'I20', /toe/, /yard pace/i)
  speaks(arm.says('I20', 'road test', { [keys.clearance]: 'not seen' }), 'I20', /lock to lock/)
  expect(arm.says('I20', 'road test')).toBeNull()
})

test('PL3 I21 the red list has a second look', () => {
  speaks(
    arm.says('I21', 'hand over', { [keys.joint(joint)]: 'final' }),
    'I21',
    /drops a wheel/,
    /another person/,
  )
  speaks(arm.says('I21', `check ${joint}`, {}, { by: 'the same person, at once' }), 'I21', /later/)
  speaks(arm.says('I21', `check ${joint}`, {}, { method: 'pulled again' }), 'I21', /mark/, /record/)
  expect(arm.says('I21', `check ${joint}`, {}, { by: 'the same person, later' })).toBeNull()
  expect(arm.says('I21', 'hand over')).toBeNull()
})

test('PL3 I22 a wheel was off: the card for the driver', () => {
  speaks(arm.says('I22', 'hand over', { [keys.appointment]: 'none' }), 'I22', /driver/, /again/)
  expect(arm.says('I22', 'hand over')).toBeNull()
})

test('PL3 I23 the steering shaft parted', () => {
  const rack = job('strut-front', ['front rack'])
  const bolt = 'front steering-shaft-pinch-bolt'
  speaks(
    rack.says('I23', `open ${bolt}`, { [keys.steeringWheel]: 'free' }),
    'I23',
    /spiral contact/,
    /[Hh]old/,
    /rack/,
  )
  speaks(rack.says('I23', `open ${bolt}`, { [keys.airbag]: 'live' }), 'I23', /airbag/, /maker/)
  speaks(rack.says('I23', `final ${bolt}`, {}, { seated: 'not looked at' }), 'I23', /groove/)
  speaks(rack.says('I23', 'make airbag safe', {}, { method: 'pull the fuse' }), 'I23', /maker/)
  const steer = { ...rack.action('hold steering wheel'), verb: 'steer' as const }
  speaks(rack.at('I23', { [keys.shaft]: 'parted' }, steer), 'I23', /spiral contact/)
  expect(rack.says('I23', `open ${bolt}`)).toBeNull()
  expect(rack.says('I23', `final ${bolt}`)).toBeNull()
})

test('PL3 I24 the first test drive', () => {
  const drive = { ...arm.action('road test'), verb: 'test drive' as const }
  speaks(arm.at('I24', {}, drive), 'I24', /tyres/, /not driven/)
  expect(arm.at('I24', { [keys.fitToDrive]: 'looked at' }, drive)).toBeNull()
})

test('PL3 there are twenty-five, each under its own name', () => {
  expect(Object.keys(interlocks)).toHaveLength(25)
})
