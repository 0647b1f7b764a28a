import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Act,
  type AdjustableHub,
  afterAct,
  type BoltedJoint,
  checkJoint,
  conditionWarning,
  type Joint,
  type JointState,
  type Now,
  nextAct,
  openJoint,
  parseThread,
  positionsOf,
  secondCheckOf,
  stepsOf,
  type TaperedStud,
} from '../../../src/fasten/index.ts'
import { deg, mm, type NewtonMetre, Nm, Refusal } from '../../../src/quantity/index.ts'
import { longWrench, lowerBall, openEnd, shortWrench, yard } from '../../support/fasten-examples.ts'
import { law, near, refuses } from '../../support/law.ts'

const bolt: BoltedJoint = {
  kind: 'bolted',
  name: 'lower arm, front bolt',
  thread: parseThread('M12x1.5'),
  strength: '10.9',
  positions: [],
  singleUse: false,
  condition: 'dry',
  rubber: 'none',
  procedure: { kind: 'torque', stated: { torque: Nm(90) } },
}
const bush: BoltedJoint = { ...bolt, rubber: 'bonded bush' }
const turned: BoltedJoint = {
  ...bolt,
  name: 'knuckle bolt',
  singleUse: true,
  procedure: {
    kind: 'torque then angle',
    stated: { torque: Nm(60) },
    turn: { angle: deg(90), within: deg(5) },
  },
}
const wheel: BoltedJoint = {
  ...bolt,
  name: 'wheel nut 1',
  thread: parseThread('M14x1.5'),
  positions: ['on the ground'],
  procedure: {
    kind: 'stages',
    stages: [
      { by: 'torque', torque: Nm(60) },
      { by: 'torque', torque: Nm(120) },
    ],
  },
}
const tieRod: TaperedStud = {
  ...lowerBall,
  name: 'tie-rod end, left',
  rubber: 'tie-rod end',
  procedure: { kind: 'castle slot', floor: Nm(50), ceiling: Nm(75), slots: 6, holes: [deg(0)] },
}
const hub: AdjustableHub = {
  ...bolt,
  kind: 'adjustable taper-roller hub',
  name: 'front hub, left',
  thread: null,
  strength: null,
  procedure: {
    kind: 'seat and back off',
    seat: Nm(50),
    back: { least: deg(60), most: deg(90) },
    bringUpTo: null,
    endFloat: { low: mm(0.02), high: mm(0.1) },
  },
}
const broughtUp: AdjustableHub = {
  ...hub,
  procedure: { ...hub.procedure, bringUpTo: Nm(12), endFloat: null },
}
const clip: BoltedJoint = { ...bolt, name: 'hose clip', procedure: { kind: 'hand snug' } }

const at = (setting: number, wrench = longWrench) => ({ wrench, adapter: null, setting: Nm(setting) })
const pull = (setting: number): Act => ({ act: 'pull', with: at(setting) })
const slot = (setting: number, angle: number, clicked = false): Act => ({
  act: 'to slot',
  with: at(setting),
  angle: deg(angle),
  clicked,
})
const seat = (turning: boolean): Act => ({ act: 'seat', with: at(50), turning })
const ground: Now = { ...yard, positions: ['on the ground'] }
const ride: Now = { ...yard, positions: ['ride height'] }
const run = (joint: Joint, acts: readonly Act[], now: Now = yard): JointState =>
  acts.reduce((state, act) => afterAct(joint, state, act, now), openJoint)
const up: Act = { act: 'run up' }
const newPin: Act = { act: 'pin', pin: 'new' }

describe('FA17 which rule goes with which joint', () => {
  test('FA17 mixing them is not a joint for the compiler', () => {
    // @ts-expect-error a tapered stud is never backed off
    const stud: TaperedStud = { ...lowerBall, procedure: hub.procedure }
    // @ts-expect-error a hub is never left at its seating torque or turned on to a slot
    const wrong: AdjustableHub = { ...hub, procedure: lowerBall.procedure }
    // @ts-expect-error hand snug is no procedure for a taper
    const loose: TaperedStud = { ...lowerBall, procedure: { kind: 'hand snug' } }
    for (const joint of [stud, wrong, loose]) expect(() => checkJoint(joint)).toThrow(Refusal)
  })
  const mixed = (joint: Joint, procedure: unknown) => ({ ...joint, procedure }) as Joint
  refuses('wrong-joint', () => checkJoint(mixed(lowerBall, hub.procedure)), lowerBall.name)
  refuses('wrong-joint', () => checkJoint(mixed(bolt, hub.procedure)), bolt.name)
  refuses('wrong-joint', () => checkJoint(mixed(hub, lowerBall.procedure)), hub.name)
  refuses('wrong-joint', () => afterAct(mixed(hub, bolt.procedure), openJoint, up, yard), hub.name)
  test('FA17 every joint of its own kind stands, and a warning is no refusal', () => {
    for (const joint of [bolt, bush, turned, wheel, tieRod, hub, clip, lowerBall])
      expect(checkJoint(joint)).toEqual([])
    expect(
      checkJoint({
        ...bolt,
        thread: parseThread('M14x1.5'),
        procedure: { kind: 'torque', stated: { torque: Nm(20) } },
      }),
    ).toHaveLength(1)
    expect(
      checkJoint({ ...bolt, thread: null, procedure: { kind: 'torque', stated: { torque: Nm(20) } } }),
    ).toEqual([])
  })
  const torque = (value: number, more = {}) =>
    ({ kind: 'torque', stated: { torque: Nm(value), ...more } }) as const
  refuses(
    'above-proof',
    () => checkJoint({ ...bolt, thread: parseThread('M6'), procedure: torque(190) }),
    'torque',
  )
  refuses('above-proof', () =>
    afterAct({ ...bolt, thread: parseThread('M6'), procedure: torque(190) }, openJoint, up, yard),
  )
  refuses('above-proof', () => checkJoint({ ...lowerBall, thread: parseThread('M8') }))
  refuses('unknown-strength', () => checkJoint({ ...bolt, strength: '8' }))
  refuses('bad-range', () => checkJoint({ ...bolt, procedure: torque(90, { floor: Nm(100) }) }))
  refuses('bad-range', () => checkJoint({ ...bolt, procedure: torque(90, { ceiling: Nm(80) }) }))
  refuses('not-positive', () => checkJoint({ ...bolt, procedure: torque(0) }))
  refuses('not-finite', () => checkJoint({ ...bolt, procedure: torque(Number.NaN) }))
  refuses('bad-count', () =>
    checkJoint({ ...lowerBall, procedure: { ...tieRod.procedure, slots: 2 } as never }),
  )
  refuses('bad-stages', () => checkJoint({ ...wheel, procedure: { kind: 'stages', stages: [] } }), wheel.name)
  refuses('bad-stages', () =>
    checkJoint({
      ...wheel,
      procedure: { kind: 'stages', stages: [{ by: 'turn', angle: deg(90), within: deg(5) }] },
    }),
  )
  refuses('bad-stages', () =>
    checkJoint({
      ...wheel,
      procedure: {
        kind: 'stages',
        stages: [
          { by: 'torque', torque: Nm(120) },
          { by: 'torque', torque: Nm(60) },
        ],
      },
    }),
  )
  refuses(
    'bad-range',
    () => checkJoint({ ...hub, procedure: { ...hub.procedure, bringUpTo: Nm(50) } }),
    'bring up to',
  )
  refuses('bad-range', () =>
    checkJoint({ ...hub, procedure: { ...hub.procedure, back: { least: deg(90), most: deg(60) } } }),
  )
  refuses('bad-range', () =>
    checkJoint({
      ...turned,
      procedure: { ...turned.procedure, turn: { angle: deg(5), within: deg(9) } } as never,
    }),
  )
})

describe('FA18 steps in order', () => {
  const whole: readonly (readonly [Joint, readonly Act[], Now])[] = [
    [bolt, [up, pull(90)], yard],
    [bush, [up, pull(90)], ride],
    [turned, [{ act: 'fit', fastener: 'new' }, up, pull(60), { act: 'turn', angle: deg(92) }], yard],
    [wheel, [up, pull(60), pull(120)], ground],
    [lowerBall, [up, pull(80), slot(120, 52), newPin], yard],
    [tieRod, [up, pull(50), slot(75, 0), newPin], { ...yard, positions: ['wheels straight'] }],
    [
      hub,
      [up, seat(true), { act: 'back off', angle: deg(75) }, { act: 'end float', read: mm(0.05) }, newPin],
      yard,
    ],
    [
      broughtUp,
      [
        up,
        seat(true),
        { act: 'back off', angle: deg(75) },
        { act: 'bring up', with: at(12, shortWrench) },
        newPin,
      ],
      yard,
    ],
    [clip, [up, { act: 'snug' }], yard],
  ]
  test('FA18 what comes next leads each joint to final, as its steps say, and every act is recorded', () => {
    for (const [joint, acts, now] of whole) {
      let state = openJoint
      for (const act of acts) {
        expect(nextAct(joint, state), joint.name).toBe(act.act)
        state = afterAct(joint, state, act, now)
      }
      expect(state.stage, joint.name).toBe('final')
      expect(nextAct(joint, state)).toBeNull()
      expect(state.warnings).toEqual([])
      expect(state.made).toBe(acts.filter(({ act }) => act !== 'fit' && act !== 'run up').length)
      expect(state.records.map(({ act }) => act)).toEqual(acts.map(({ act }) => act))
      expect(stepsOf(joint, { hand: null }).map(({ act }) => act)).toEqual(acts.map(({ act }) => act))
    }
  })
  test('FA18 the record says what the wrench stood on and what the fastener received', () => {
    const state = run(bolt, [
      up,
      { act: 'pull', with: { wrench: longWrench, adapter: openEnd, setting: Nm(83) } },
    ])
    const record = state.records.at(-1)!
    expect(record).toMatchObject({
      wrench: 'wrench 2',
      adapter: 'the 40 mm adapter',
      setting: 83,
      today: yard.today,
    })
    near(record.torque!, (83 * 540) / 500, { rel: 1e-12 })
    // on the way to a slot nobody knows the torque
    expect(run(lowerBall, [up, pull(80), slot(120, 52)]).records.at(-1)!.torque).toBeNull()
  })
  law(
    'FA18 no sequence of acts reaches final but along the steps',
    fc.tuple(fc.constantFrom(...whole), fc.array(fc.nat(), { minLength: 1, maxLength: 8 })),
    ([[joint, acts, now], picks]) => {
      const pool: readonly Act[] = [
        ...acts,
        { act: 'undo', tool: 'other tool' },
        { act: 'back off', angle: deg(75) },
        { act: 'snug' },
        pull(90),
      ]
      let state = openJoint
      for (const pick of picks) {
        const act = pool[pick % pool.length]!
        const next = nextAct(joint, state)
        try {
          const after = afterAct(joint, state, act, now)
          expect(
            act.act === next ||
              act.act === 'undo' ||
              act.act === 'fit' ||
              (act.act === 'run up' && state.stage === 'open'),
          ).toBe(true)
          state = after
        } catch (refusal) {
          expect(refusal).toBeInstanceOf(Refusal)
        }
      }
      if (state.stage !== 'final') return true
      const begin = state.records.map(({ act }) => act).lastIndexOf('run up')
      const needed = acts.map(({ act }) => act).filter((act) => act !== 'fit')
      expect(state.records.slice(begin).map(({ act }) => act)).toEqual(needed)
      return true
    },
    { runs: 400 },
  )
  refuses('out-of-order', () => run(bolt, [pull(90)]), bolt.name)
  refuses('out-of-order', () => run(bolt, [up, pull(90), pull(90)]), bolt.name)
  refuses('out-of-order', () => run(bolt, [up, up]))
  refuses('out-of-order', () =>
    run(turned, [{ act: 'fit', fastener: 'new' }, up, { act: 'turn', angle: deg(90) }]),
  )
  refuses('out-of-order', () => run(lowerBall, [up, slot(120, 30)]))
  refuses('out-of-order', () => run(lowerBall, [up, pull(80), newPin]))
  refuses('out-of-order', () => run(hub, [up, { act: 'back off', angle: deg(75) }]))
  refuses('out-of-order', () => run(hub, [up, seat(true), { act: 'back off', angle: deg(75) }, newPin]))
  refuses('out-of-order', () => run(clip, [{ act: 'snug' }]))
  refuses('out-of-order', () => run(bolt, [up, { act: 'fit', fastener: 'new' }]))
  refuses('wrong-joint', () => run(bolt, [up, { act: 'back off', angle: deg(75) }]), bolt.name)
  refuses('wrong-joint', () => run(clip, [up, pull(90)]))
  refuses('wrong-joint', () => run(hub, [up, pull(50)]))
  refuses('wrong-joint', () => run(hub, [up, seat(true), slot(120, 30)]))
  refuses('wrong-joint', () => run(hub, [up, { act: 'bring up', with: at(50) }]))
  refuses('wrong-joint', () => run(lowerBall, [up, seat(true)]))
  refuses(
    'wrong-angle',
    () => run(turned, [{ act: 'fit', fastener: 'new' }, up, pull(60), { act: 'turn', angle: deg(84) }]),
    'angle',
  )
  refuses('wrong-angle', () =>
    run(turned, [{ act: 'fit', fastener: 'new' }, up, pull(60), { act: 'turn', angle: deg(96) }]),
  )
  refuses('never-back', () =>
    run(turned, [{ act: 'fit', fastener: 'new' }, up, pull(60), { act: 'turn', angle: deg(-90) }]),
  )
  refuses('not-finite', () =>
    run(turned, [{ act: 'fit', fastener: 'new' }, up, pull(60), { act: 'turn', angle: deg(Number.NaN) }]),
  )
})

describe('FA19 castle nut: forward only', () => {
  const floor = [up, pull(80)]
  refuses('never-back', () => run(lowerBall, [...floor, { act: 'back off', angle: deg(8) }]), lowerBall.name)
  refuses('never-back', () => run(lowerBall, [...floor, slot(120, -8)]), lowerBall.name)
  refuses('never-back', () => run(lowerBall, [{ act: 'back off', angle: deg(8) }]), lowerBall.name)
  refuses('past-slot', () => run(lowerBall, [...floor, slot(120, 75)]), lowerBall.name)
  refuses(
    'old-pin',
    () => run(lowerBall, [...floor, slot(120, 52), { act: 'pin', pin: 'used' }]),
    lowerBall.name,
  )
  refuses('not-finite', () => run(lowerBall, [...floor, slot(120, Number.NaN)]))
  refuses('wrong-setting', () => run(lowerBall, [up, pull(79)]), 'wrench')
  refuses('wrong-setting', () => run(lowerBall, [up, pull(110)]), 'wrench')
  refuses('wrong-setting', () => run(lowerBall, [...floor, slot(121, 52)]), 'wrench')
  test('FA19 off the mark, the mark to set is told', () => {
    const at80: Act = { act: 'pull', with: { wrench: longWrench, adapter: openEnd, setting: Nm(80) } }
    expect(() => run(lowerBall, [up, at80])).toThrowError(
      expect.objectContaining({ remedy: 'Set it to 75.0 N·m.' }),
    )
  })
  test('FA19 a click before the slot stops: undone, other washer or nut, from the floor again', () => {
    const stopped = run(lowerBall, [...floor, slot(120, 40, true)])
    expect(stopped.stage).toBe('stopped')
    expect(nextAct(lowerBall, stopped)).toBe('undo')
    for (const act of [newPin, slot(120, 20), pull(80)])
      expect(() => afterAct(lowerBall, stopped, act, yard)).toThrowError(
        expect.objectContaining({ code: 'click-means-stop' }),
      )
    const again = [
      { act: 'undo', tool: 'other tool' } as const,
      { act: 'fit', fastener: 'new' } as const,
      ...floor,
      slot(120, 20),
      newPin,
    ]
    expect(again.reduce((state, act) => afterAct(lowerBall, state, act, yard), stopped).stage).toBe('final')
  })
  refuses('click-means-stop', () => run(lowerBall, [...floor, slot(120, 40, true), newPin]), lowerBall.name)
  test('FA19 within an eye’s degree of the largest advance is the slot, further is past it', () => {
    expect(run(lowerBall, [...floor, slot(120, 60.9)]).stage).toBe('in slot')
    expect(() => run(lowerBall, [...floor, slot(120, 61.1)])).toThrow()
  })
})

describe('FA20 hub: the opposite rule', () => {
  const seated = [up, seat(true)]
  const backed = [...seated, { act: 'back off', angle: deg(75) } as const]
  refuses('hub-not-turned', () => run(hub, [up, seat(false)]), hub.name)
  refuses('wrong-angle', () => run(hub, [...seated, { act: 'back off', angle: deg(0) }]), 'angle')
  refuses('wrong-angle', () => run(hub, [...seated, { act: 'back off', angle: deg(91) }]), 'angle')
  refuses('wrong-angle', () => run(hub, [...seated, { act: 'back off', angle: deg(-75) }]), 'angle')
  refuses('end-float', () => run(hub, [...backed, { act: 'end float', read: mm(0.12) }]), hub.name)
  refuses('end-float', () => run(hub, [...backed, { act: 'end float', read: mm(0) }]), hub.name)
  refuses('old-pin', () =>
    run(hub, [...backed, { act: 'end float', read: mm(0.05) }, { act: 'pin', pin: 'used' }]),
  )
  refuses('not-finite', () => run(hub, [...backed, { act: 'end float', read: mm(Number.NaN) }]))
  test('FA20 it is never final at its seating torque', () => {
    const state = run(hub, seated)
    for (const act of [
      newPin,
      pull(50),
      { act: 'snug' } as const,
      slot(50, 20),
      { act: 'turn', angle: deg(20) } as const,
    ])
      expect(() => afterAct(hub, state, act, yard)).toThrow(Refusal)
  })
  test('FA20 brought up again where that is stated, pinned at once where no end float is', () => {
    const snug: AdjustableHub = { ...hub, procedure: { ...hub.procedure, bringUpTo: Nm(12), endFloat: null } }
    const state = run(snug, [...backed, { act: 'bring up', with: at(12, shortWrench) }, newPin])
    expect(state.stage).toBe('final')
    expect(() => run(snug, [...backed, newPin])).toThrow()
    expect(stepsOf(snug, { hand: null }).map(({ act }) => act)).toEqual([
      'run up',
      'seat',
      'back off',
      'bring up',
      'pin',
    ])
  })
})

describe('FA21 where, with what, and once', () => {
  refuses('wrong-position', () => run(bush, [up, pull(90)]), 'ride height')
  refuses('wrong-position', () => run(bush, [up, pull(90)], ground), 'ride height')
  refuses('wrong-position', () => run(tieRod, [up, pull(50)]), 'wheels straight')
  refuses('wrong-position', () => run(wheel, [up, pull(60), pull(120)]), 'on the ground')
  refuses(
    'wrong-position',
    () => run({ ...bolt, positions: ['after the last move'] }, [up, pull(90)]),
    'after the last move',
  )
  test('FA21 a bonded bush asks for ride height whether or not anybody typed it, and at its first stage already', () => {
    expect(positionsOf(bush)).toEqual(['ride height'])
    expect(positionsOf({ ...bush, positions: ['ride height'] })).toEqual(['ride height'])
    const staged: BoltedJoint = { ...wheel, rubber: 'bonded bush' }
    expect(() => run(staged, [up, pull(60)], ground)).toThrowError(
      expect.objectContaining({ at: 'ride height' }),
    )
    // a wheel's first stage may be in the air
    expect(run(wheel, [up, pull(60)]).stage).toBe('part made')
    expect(run(bush, [up]).stage).toBe('run up')
    // what is turned by angle is final by its torque: the torque wants the position too
    expect(() => run({ ...turned, singleUse: false, rubber: 'bonded bush' }, [up, pull(60)])).toThrow()
    expect(() => run({ ...turned, singleUse: false, positions: ['on the ground'] }, [up, pull(60)])).toThrow()
  })
  refuses('used-before', () => run(turned, [{ act: 'fit', fastener: 'used' }]), turned.name)
  refuses('used-before', () => run(turned, [up, pull(60)]), turned.name)
  test('FA21 a fastener for one use is used up by its first pull, not by being run up', () => {
    const fresh = run(turned, [{ act: 'fit', fastener: 'new' }, up])
    const undo: Act = { act: 'undo', tool: 'other tool' }
    expect(afterAct(turned, fresh, undo, yard).fastener).toBe('new')
    const once = afterAct(turned, afterAct(turned, fresh, pull(60), yard), undo, yard)
    expect(once.fastener).toBe('used')
    expect(nextAct(turned, once)).toBe('fit')
    const again = afterAct(turned, once, up, yard)
    expect(() => afterAct(turned, again, pull(60), yard)).toThrowError(
      expect.objectContaining({ code: 'used-before' }),
    )
  })
  for (const joint of [bolt, lowerBall, hub])
    refuses('wrench-to-undo', () => run(joint, [up, { act: 'undo', tool: 'torque wrench' }]), joint.name)
  refuses(
    'outside-range',
    () =>
      run({ ...bolt, thread: null, procedure: { kind: 'torque', stated: { torque: Nm(30) } } }, [
        up,
        pull(30),
      ]),
    'wrench',
  )
  refuses('not-calibrated', () => run(bolt, [up, pull(90)], { ...yard, today: '2028-01-01' }), 'wrench')
  refuses(
    'wrong-setting',
    () =>
      run({ ...bolt, procedure: { kind: 'torque', stated: { torque: Nm(90), floor: Nm(80) } } }, [
        up,
        pull(95),
      ]),
    'wrench',
  )
  refuses('wrong-setting', () => run(bolt, [up, pull(89)]), 'wrench')
  refuses(
    'wrong-setting',
    () => run(bolt, [up, { act: 'pull', with: { wrench: longWrench, adapter: openEnd, setting: Nm(90) } }]),
    'wrench',
  )
  test('FA21 a workshop that only wants to be warned of calibration is warned', () => {
    const state = run(bolt, [up, pull(90)], { ...yard, today: '2028-01-01', uncalibrated: 'warn' })
    expect(state.warnings).toHaveLength(1)
  })
  test('FA21 another thread condition is said, and the torque stays', () => {
    const state = run(bolt, [up, pull(90)], { ...yard, condition: 'oiled' })
    expect(state.warnings).toHaveLength(1)
    expect(state.records.at(-1)!.torque).toBe(90)
    expect(conditionWarning({ stated: 'dry', found: 'oiled' })).toContain('pulls harder')
    expect(conditionWarning({ stated: 'oiled', found: 'dry' })).toContain('clamps less')
    expect(conditionWarning({ stated: 'dry', found: 'locking compound' })).not.toBeNull()
    expect(conditionWarning({ stated: 'dry', found: null })).toContain('look')
    expect(conditionWarning({ stated: null, found: 'oiled' })).toBeNull()
    expect(
      run({ ...bolt, condition: null }, [up, pull(90)], { ...yard, condition: 'oiled' }).warnings,
    ).toEqual([])
  })
  test('FA21 a joint turned by angle is not pulled again', () => {
    expect([bolt, turned, lowerBall, hub, clip, wheel].map(secondCheckOf)).toEqual([
      'pulled again at the same setting',
      'mark and record',
      'pin and slot looked at',
      'end float and pin',
      'felt by hand',
      'pulled again at the same setting',
    ])
  })
})

describe('FA22 steps on the wrench’s scale', () => {
  const hand = { wrench: longWrench, adapter: openEnd }
  test('FA22 what the steps say to set is what the machine takes', () => {
    const [, low, high] = stepsOf(lowerBall, { hand, toSlot: deg(52) })
    expect(low!.doing).toBe('Pull to the floor, 75 N·m on wrench 2 with the 40 mm adapter, and stop there.')
    expect(high!.doing).toContain('111 N·m on wrench 2')
    expect(high!.doing).toContain('forward to the slot, 52°')
    expect(high!.hearing).toContain('click before the slot means stop')
    const mark = (figure: { onWrench: NewtonMetre | null } | undefined) => ({
      ...hand,
      setting: figure!.onWrench!,
    })
    const state = run(lowerBall, [
      up,
      { act: 'pull', with: mark(low!.figures[0]) },
      { act: 'to slot', with: mark(high!.figures[0]), angle: deg(52), clicked: false },
      newPin,
    ])
    expect(state.stage).toBe('final')
    for (const joint of [bolt, wheel]) {
      const pulls = stepsOf(joint, { hand }).filter(({ act }) => act === 'pull')
      const acts = pulls.map(({ figures }): Act => ({ act: 'pull', with: mark(figures[0]) }))
      expect(run(joint, [up, ...acts], ground).stage).toBe('final')
    }
  })
  test('FA22 positions and single use stand at the step where they count', () => {
    const steps = stepsOf(bush, { hand: null })
    expect(steps.find(({ act }) => act === 'pull')!.caution).toContain('at ride height')
    const rod = stepsOf(tieRod, { hand: null })
    expect(rod.map(({ caution }) => caution?.includes('with wheels straight') ?? false)).toEqual([
      false,
      true,
      true,
      false,
    ])
    expect(stepsOf(turned, { hand: null })[0]!.doing).toContain('new fastener')
    expect(stepsOf(hub, { hand: null }).find(({ act }) => act === 'back off')!.caution).toContain(
      'not with the torque wrench',
    )
    expect(stepsOf(lowerBall, { hand: null })[2]!.doing).toContain('at most 60°')
    for (const step of [...steps, ...stepsOf(hub, { hand: null })])
      expect(step.recording.length).toBeGreaterThan(3)
  })
  test('FA22 a stage this wrench does not reach is worded for the fastener', () => {
    const snug: AdjustableHub = { ...hub, procedure: { ...hub.procedure, bringUpTo: Nm(8) } }
    const steps = stepsOf(snug, { hand: { wrench: longWrench, adapter: null } })
    expect(steps.find(({ act }) => act === 'seat')!.doing).toContain('50 N·m on wrench 2')
    const again = steps.find(({ act }) => act === 'bring up')!
    expect(again.doing).toBe('Bring it up to 8 N·m.')
    expect(again.figures[0]).toMatchObject({ onWrench: null, atFastener: 8 })
  })
  refuses('outside-range', () => stepsOf(bolt, { hand: { wrench: shortWrench, adapter: null } }), 'wrench')
  refuses('no-mark', () =>
    stepsOf(
      {
        ...bolt,
        procedure: { kind: 'torque', stated: { torque: Nm(90.5), floor: Nm(90.2), ceiling: Nm(90.8) } },
      },
      { hand: { wrench: longWrench, adapter: null } },
    ),
  )
  refuses('no-lever', () =>
    stepsOf(bolt, {
      hand: { wrench: longWrench, adapter: { ...openEnd, offset: mm(500), angle: deg(180) } },
    }),
  )
})
