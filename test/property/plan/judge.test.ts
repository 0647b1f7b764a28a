import { describe, expect, test } from 'vitest'
import { type Action, type Goal, judgeOrder, planOf } from '../../../src/plan/index.ts'
import { vehicleNamed } from './vehicles.ts'

// What the judge tells of an order with one thing wrong. Common practice, no source.

function job(vehicle: string, ...replace: readonly string[]) {
  const assembly = vehicleNamed(vehicle)
  const goal: Goal = { replace }
  const plan = planOf(assembly, goal, undefined, { support: 'jack and stands', effort: { budget: 3e5 } })
  const actions = plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action))
  const at = (id: string): number => {
    const place = actions.findIndex((one) => one.id === id)
    if (place < 0) throw new Error(`no ${id} in ${actions.map((one) => one.id).join(' | ')}`)
    return place
  }
  const faults = (order: readonly Action[]) => judgeOrder(assembly, goal, order).faults
  return {
    at,
    actions,
    faults,
    /** The faults when one action is done before another. */
    moved: (id: string, before: string) => {
      const rest = actions.toSpliced(at(id), 1)
      return faults(rest.toSpliced(rest.indexOf(actions[at(before)]!), 0, actions[at(id)]!))
    },
    /** The faults when one action is done once more before another. */
    again: (id: string, before: string) => faults(actions.toSpliced(at(before), 0, actions[at(id)]!)),
    /** The faults without an action. */
    without: (id: string) => faults(actions.toSpliced(at(id), 1)),
  }
}

const told = (faults: ReturnType<typeof judgeOrder>['faults'], action: string) =>
  faults.filter((fault) => fault.action === action).map(({ rule }) => rule)

const boxed = job('wishbone-coil-upper', 'front left coil')
const disc = job('wishbone-torsion-bar', 'front left disc')
const bar = job('wishbone-torsion-bar', 'front left lower-arm')
const strut = job('strut-front', 'front left coil')
const arm = job('bus', 'front left lower-arm')

describe('PL15 what no interlock tells, its need does', () => {
  test('PL15 a compressor on a vehicle that nothing carries is I3', () => {
    expect(
      told(boxed.moved('compress front left coil 1', 'record heights'), 'compress front left coil 1'),
    ).toContain('I3')
  })
  test('PL15 a reading from before the vehicle was lifted sets nothing', () => {
    expect(told(arm.moved('read provisional front', 'jack up front'), 'set toe front')).not.toEqual([])
  })
  test('PL15 done twice: opened, taken off, compared', () => {
    const first = 'open front left drop-link-bottom-nut'
    expect(arm.again('take off front left wheel', first)[0]!.action).toBe('take off front left wheel')
    expect(arm.again(first, 'take off front left lower-arm')[0]!.action).toBe(first)
    const compared = 'compare before front left lower-arm'
    expect(told(arm.again(compared, 'take off front left lower-arm'), compared)).toEqual(['I16'])
  })
  test('PL15 each need is told once, by the rule that told it first', () => {
    const faults = arm.moved('open front left wheel-nuts', 'jack up front')
    const own = told(faults, 'open front left wheel-nuts')
    expect(own.length).toBe(new Set(own).size)
    expect(own).toContain('I2')
  })
})

test('PL15 what was put back and lies loose while its corner still comes apart', () => {
  const [fault] = disc.moved('fit front left brake-pads', 'open front left disc-screw')
  expect(fault!.action).toBe('open front left disc-screw')
  expect(fault!.would).toMatch(/brake pads were put back, held by nothing/)
})

describe('PL15 setting the angles', () => {
  test('PL15 the steering wheel is held before front toe, and free on the road', () => {
    expect(arm.at('hold steering wheel, toe')).toBeLessThan(arm.at('set toe front'))
    expect(told(arm.without('hold steering wheel, toe'), 'set toe front')).toEqual(['I17'])
    expect(told(arm.again('hold steering wheel, toe', 'road test'), 'road test')).toEqual(['I20'])
  })
  test('PL15 nothing is read on ramps unless all wheels stand level there', () => {
    expect(bar.at('off ramps')).toBeLessThan(bar.at('read provisional front'))
    expect(told(bar.moved('read provisional front', 'off ramps'), 'read provisional front')).toContain('I17')
    const onto = arm.actions.find(({ verb }) => verb === 'drive onto ramps')!
    expect(onto.words).toMatch(/all wheels level/)
    expect(arm.at('set camber and caster front')).toBeLessThan(arm.at('off ramps'))
  })
  test('PL15 camber moved after toe: the proving reading waits for toe again', () => {
    const twice = 'set camber and caster front'
    expect(told(arm.again(twice, 'off ramps'), 'read proving front')).toContain('I17')
  })
  test('PL15 it rolls only on wheel nuts that are final', () => {
    expect(told(arm.moved('settle 2', 'final front left wheel-nuts'), 'settle 2')).toContain('I2')
  })
})

describe('PL15 springs', () => {
  test('PL15 a strut’s nut goes on round a captured spring, and the strut in without its compressor', () => {
    const nut = 'close front left strut-top-nut'
    expect(strut.at('compress front left coil 2')).toBeLessThan(strut.at(nut))
    expect(told(strut.moved(nut, 'compress front left coil 2'), nut)).toContain('I13')
    expect(strut.at('release front left coil 2')).toBeLessThan(strut.at('fit front left coil'))
  })
  test('PL15 a torsion bar leaves its arm first and goes in last', () => {
    expect(bar.at('take off front left torsion-bar')).toBeLessThan(bar.at('take off front left lower-arm'))
    expect(bar.at('fit front left torsion-bar')).toBeGreaterThan(bar.at('fit front left lower-arm'))
  })
})

test('PL15 what counts from the angles is done before the road test', () => {
  for (const what of ['steering angle zero', 'camera or radar', 'headlamp aim'])
    expect(arm.at(`electronics ${what}`)).toBeLessThan(arm.at('road test'))
  expect(told(arm.without('electronics headlamp aim'), 'hand over')).toEqual(['not yet'])
})
