import { describe, expect, test } from 'vitest'
import {
  type Consequence,
  neededActions,
  type Plan,
  planOf,
  toolsAgainstKit,
} from '../../../src/plan/index.ts'
import { kit, vehicleNamed } from './vehicles.ts'

const effort = { budget: 3e5 }
const planned = (vehicle: string, ...replace: string[]): Plan =>
  planOf(vehicleNamed(vehicle), { replace }, undefined, { effort })
const kinds = (plan: Plan) => new Set(plan.consequences.map(({ kind }) => kind))
const verbs = (plan: Plan) => plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action.verb))
const because = (plan: Plan, kind: Consequence['kind']) =>
  plan.consequences.find((one) => one.kind === kind)?.because ?? []

describe('PL9 what follows from the work', () => {
  const arm = planned('bus', 'front right lower-arm', 'front left coil', 'front right coil')
  test('PL9 eccentrics and springs: angles, clamp pose, heights again, electronics', () => {
    for (const kind of [
      'angles',
      'clamp pose',
      'settle again',
      'electronics',
      'lamp',
      're-tighten',
      'second check',
    ] as const)
      expect(kinds(arm)).toContain(kind)
    expect(because(arm, 'clamp pose')).toContain('front right lower-rear-bolt')
    expect(because(arm, 'settle again')).toEqual(['front left coil', 'front right coil'])
    for (const verb of [
      'read angles',
      'set camber and caster',
      'set toe',
      'look at lamp',
      'appoint re-tightening',
      'electronics',
    ] as const)
      expect(verbs(arm)).toContain(verb)
    expect(verbs(arm)).not.toContain('bleed')
  })
  test('PL9 a caliper moved: the pedal pumped before anything rolls; no line opened, so no bleeding', () => {
    const disc = planned('bus', 'front left disc')
    expect(kinds(disc)).toContain('pump pedal')
    expect(kinds(disc)).not.toContain('bleed')
    expect(kinds(disc)).not.toContain('angles')
    const order = verbs(disc)
    expect(order.indexOf('pump pedal')).toBeLessThan(order.indexOf('road test'))
  })
  test('PL9 a caliper replaced: its line is opened, filled and bled before it rolls', () => {
    const caliper = planned('strut-front', 'front left caliper')
    expect(kinds(caliper)).toContain('bleed')
    expect(verbs(caliper).indexOf('bleed')).toBeGreaterThan(0)
    expect(caliper.shopping.consumables).toContain('brake fluid')
  })
  test('PL9 a tie rod: toe, centring; a height rod: the level sensor; a torsion bar: its height', () => {
    const rod = planned('bus', 'front left tie-rod')
    expect(kinds(rod)).toContain('centring')
    expect(verbs(rod)).toContain('set toe')
    const level = planned('five-link-rear', 'rear left spring-link')
    expect(kinds(level)).toContain('level sensor')
    expect(verbs(level)).toContain('check level sensor')
    const bar = planned('wishbone-torsion-bar', 'front left torsion-bar')
    expect(kinds(bar)).toContain('height of a torsion bar')
  })
  test('PL9 a drop link alone asks for no angles', () => {
    const link = planned('van', 'front left drop-link')
    for (const kind of ['angles', 'electronics', 'clamp pose', 'settle again'] as const)
      expect(kinds(link)).not.toContain(kind)
  })
  test('PL9 each names what it follows from', () => {
    for (const { because: ids, sentence } of arm.consequences) {
      expect(ids.length).toBeGreaterThan(0)
      expect(sentence).toMatch(/^[A-Z0-9].*\.$/)
    }
  })
})

describe('PL10 what must be had', () => {
  const owned = kit()
  const arm = planOf(vehicleNamed('bus'), { replace: ['front right lower-arm'] }, owned, { effort })
  test('PL10 parts, single-use fasteners and pins', () => {
    expect(arm.shopping.parts).toEqual(['right lower arm'])
    expect(arm.shopping.singleUse.some((one) => one.includes('pin of the right lower ball joint'))).toBe(true)
    expect(arm.shopping.singleUse.some((one) => one.includes('damper bottom bolt'))).toBe(true)
    expect(arm.shopping.singleUse.some((one) => one.includes('lower front pivot'))).toBe(false)
  })
  test('PL10 a size that the kit lacks is told, one that it has is not', () => {
    const actions = arm.bands.flatMap(({ lines }) => lines.map(({ action }) => action))
    const without = (size: number) => ({
      ...owned,
      spanners: owned.spanners!.filter(({ value }) => Math.abs(value * 1000 - size) > 0.1),
    })
    const missing = (mine: typeof owned) =>
      toolsAgainstKit(vehicleNamed('bus'), actions, mine).map(({ tool }) => tool)
    expect(missing(owned)).not.toContain('spanner 24 mm')
    expect(missing(without(24))).toContain('spanner 24 mm')
    expect(missing(without(24))).toContain('torque wrench, 24 mm')
    expect(missing(without(13))).not.toContain('spanner 24 mm')
    expect(missing({ ...owned, wrenches: {} }).some((tool) => tool.startsWith('torque wrench'))).toBe(true)
    expect(missing({ ...owned, pullers: {} })).toContain('separator')
    expect(missing(owned)).not.toContain('separator')
    expect(missing({ ...owned, supports: {} })).toContain('trolley jack')
  })
  test('PL10 a compressor to borrow, and its price in the choice', () => {
    const coil = planOf(vehicleNamed('strut-front'), { replace: ['front left coil'] }, owned, { effort })
    expect(coil.missing.map(({ tool }) => tool)).toContain('spring compressor')
    const lacks = neededActions(vehicleNamed('strut-front'), { replace: ['front left coil'] }, [
      'spring compressor',
    ])
    const has = neededActions(vehicleNamed('strut-front'), { replace: ['front left coil'] })
    expect(lacks.minutes).toBeGreaterThan(has.minutes)
  })
  test('PL10 two dampers with one jack: another jack', () => {
    const both = planOf(
      vehicleNamed('bus'),
      { replace: ['front left damper', 'front right damper'] },
      owned,
      { effort },
    )
    expect(both.missing.map(({ tool }) => tool)).toContain('another jack')
  })
})
