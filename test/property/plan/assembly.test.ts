import { describe, expect, test } from 'vitest'
import {
  assemblyOf,
  consequencesOf,
  jointHabits,
  judgeOrder,
  keys,
  planOf,
  stationOf,
  usualMinutes,
} from '../../../src/plan/index.ts'
import { refuses } from '../../support/law.ts'
import { bus, van, vehicleNamed, vehicles } from './vehicles.ts'

describe('PL1 the assembly', () => {
  const one = assemblyOf([bus])
  test('PL1 both sides, the axle’s own once, one body', () => {
    for (const side of ['left', 'right'])
      for (const part of ['lower-arm', 'knuckle', 'coil', 'damper'])
        expect(one.parts).toHaveProperty([`front ${side} ${part}`])
    expect(Object.keys(one.parts).filter((id) => id.endsWith('rack'))).toEqual(['front rack'])
    expect(
      Object.values(one.parts)
        .filter(({ kind }) => kind === 'body')
        .map(({ id }) => id),
    ).toEqual(['body'])
    expect(one.joints['front rack-bolts']?.side).toBeNull()
    expect(one.joints['front right lower-ball-joint']?.joins).toEqual([
      'front right lower-arm',
      'front right knuckle',
    ])
  })
  test('PL1 two axles share the body and nothing else', () => {
    const two = assemblyOf([van, { ...van, id: 'rear', axle: 'rear' }])
    const own = (axle: string) => Object.values(two.parts).filter((part) => part.axle === axle).length
    expect(own('front')).toBe(own('rear'))
    expect(Object.keys(two.parts).length).toBe(own('front') + own('rear') + 1)
    expect(two.parts['rear left lower-arm']?.called).toContain('rear left')
  })
  test('PL1 a hold on each side, its joints on that side', () => {
    expect(Object.keys(one.holds).sort()).toEqual(['front left coil', 'front right coil'])
    for (const hold of Object.values(one.holds)) {
      expect(hold.joints.every((joint) => one.joints[joint]!.side === hold.side)).toBe(true)
      // The jack stands under the lower arm: what must hold is what that arm turns about.
      expect(hold.jackPath).toEqual([
        `front ${hold.side} lower-front-bolt`,
        `front ${hold.side} lower-rear-bolt`,
      ])
    }
  })
  test('PL1 every joint of every vehicle joins two parts of it, and its kind has times', () => {
    for (const { assembly } of vehicles)
      for (const joint of Object.values(assembly.joints)) {
        for (const part of joint.joins) expect(assembly.parts[part], `${joint.id}: ${part}`).toBeDefined()
        const [low, usual, high] = jointHabits[joint.kind].opens
        expect(low <= usual && usual <= high && low > 0).toBe(true)
      }
    for (const [low, usual, high] of Object.values(usualMinutes))
      expect(low <= usual && usual <= high && low > 0).toBe(true)
  })
  test('PL1 what a corner that is jacked up is called', () => {
    expect(stationOf(one, {})).toBe('on its wheels')
    expect(stationOf(one, { [keys.support('front')]: 'on stands, seen loaded' })).toBe(
      'on stands, wheels hanging',
    )
    expect(
      stationOf(one, {
        [keys.support('front')]: 'on the lift, arms locked',
        [keys.arm('front left')]: 'jack under',
      }),
    ).toBe('jack under the front left arm, on the lift, wheels hanging')
  })
})

describe('PL13 what is refused', () => {
  const assembly = vehicleNamed('bus')
  refuses('two-of-one-axle', () => assemblyOf([bus, van]), 'corners')
  refuses('nothing-to-do', () => planOf(assembly, { replace: [] }), 'goal')
  refuses('no-such-part', () => planOf(assembly, { replace: ['front left lowerarm'] }), 'goal')
  refuses('no-such-part', () => planOf(assembly, { replace: ['body'] }), 'goal')
  refuses('no-such-joint', () => planOf(assembly, { replace: [], open: ['front left lower-arm'] }), 'goal')
  // A joint whose only hold has nothing that may stand in for it.
  const coil = assembly.holds['front left coil']!
  const stuck = { ...assembly, holds: { [coil.id]: { ...coil, standIns: [] } } }
  refuses('no-way', () => planOf(stuck, { replace: ['front left damper'] }), 'goal')
})

test('PL2 a joint may be the goal by itself, and both axles at once', () => {
  const two = assemblyOf([bus, { ...van, axle: 'rear' }])
  const goal = { replace: ['rear left tie-rod'], open: ['front left tie-rod-end'] }
  const plan = planOf(two, goal, undefined, { effort: { budget: 3e5 } })
  const actions = plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action))
  expect(judgeOrder(two, goal, actions).faults).toEqual([])
  expect(actions.some(({ id }) => id === 'open front left tie-rod-end')).toBe(true)
  const places = ['set toe rear', 'set toe front'].map((id) => actions.findIndex((one) => one.id === id))
  expect(places[0]).toBeGreaterThan(0)
  expect(places[0]!).toBeLessThan(places[1]!)
})

test('PL9 consequences follow from the work alone', () => {
  const assembly = vehicleNamed('bus')
  const nothing = consequencesOf({
    assembly,
    renewed: new Set(),
    open: new Set(),
    bench: new Set(),
    off: new Set(),
    standIns: {},
    letDown: new Set(),
    branches: [],
    why: {},
    checker: 'another person',
  })
  expect(nothing).toEqual([])
})
