import { describe, expect, test } from 'vitest'
import { type Action, factOf, judgeOrder, keys, planOf } from '../../../src/plan/index.ts'
import { checkPlan } from '../../support/plan-checker/check-plan.ts'
import { rears, vehicleNamed, vehicles } from './vehicles.ts'

/** Hardly any search: here the order has only to be a lawful one. */
const effort = { budget: 200 }
const home = ['final', 'checked']

const actionsOf = ({ bands }: ReturnType<typeof planOf>): readonly Action[] =>
  bands.flatMap(({ lines }) => lines.map(({ action }) => action))
const verbsAt = (actions: readonly Action[], id: string) =>
  actions.flatMap(({ effects }) => effects[keys.joint(id)] ?? [])

describe('every joint of every layout', () => {
  for (const { name, corner, assembly } of [...vehicles, ...rears]) {
    const joints = Object.values(assembly.joints).filter(({ side }) => side !== 'right')
    test(`PL26 PL14 ${name}: each of ${joints.length} is opened when asked for, and made for good again`, () => {
      expect(joints.length).toBeGreaterThan(8)
      for (const [nth, { id }] of joints.entries()) {
        const goal = { replace: [], open: [id] }
        const support = nth % 2 ? 'lift' : 'jack and stands'
        const actions = actionsOf(planOf(assembly, goal, undefined, { support, effort }))
        const told = verbsAt(actions, id)
        expect(told, id).toContain('open')
        expect(home, id).toContain(told.at(-1))
        expect(judgeOrder(assembly, goal, actions).faults, id).toEqual([])
        expect(checkPlan([corner], goal, actions), id).toEqual([])
      }
    })
  }
})

describe('a spring’s seat alone', () => {
  // Common practice, no source: a seat is open when its spring is out of it, slack.
  for (const name of ['twist-beam-rear', 'solid-axle-coil-rear', 'wishbone-coil-lower', 'strut-front'])
    for (const seat of ['coil-top-seat', 'coil-bottom-seat'])
      test(`PL26 ${name}, ${seat}: the spring is let down or captured, lifted off, and put back`, () => {
        const assembly = vehicleNamed(name)
        const id = `${assembly.axles[0]} left ${seat}`
        const coil = `${assembly.axles[0]} left coil`
        const goal = { replace: [], open: [id] }
        const actions = actionsOf(planOf(assembly, goal, undefined, { effort }))
        let energy = 'held by its set'
        let isOpen = 0
        let state = {}
        for (const { effects } of actions) {
          state = { ...state, ...effects }
          energy = factOf(state, keys.energy(coil))
          if (factOf(state, keys.joint(id)) !== 'open') continue
          isOpen++
          expect(['let down', 'in the compressor']).toContain(energy)
          expect(['off', 'freed']).toContain(factOf(state, keys.part(coil)))
        }
        expect(isOpen).toBeGreaterThan(0)
        expect([energy, factOf(state, keys.part(coil))]).toEqual(['held by its set', 'fitted'])
      })
  test('PL26 the separate checker finds a plan in which the coil stays in its seats', () => {
    const { corner, assembly } = vehicles.find(({ name }) => name === 'twist-beam-rear')!
    const goal = { replace: [], open: ['rear left coil-top-seat'] }
    const stays = actionsOf(planOf(assembly, goal, undefined, { effort })).filter(
      ({ part, verb }) => part !== 'rear left coil' || (verb !== 'take off' && verb !== 'fit'),
    )
    const told = checkPlan([corner], goal, stays).map(({ sentence }) => sentence)
    expect(told).toContain('rear left coil-top-seat was never open')
  })
  test('PL26 the spring in its strut stays captured when only its upper seat parts', () => {
    const assembly = vehicleNamed('strut-front')
    const opened = (seat: string) =>
      actionsOf(planOf(assembly, { replace: [], open: [`front left ${seat}`] }, undefined, { effort }))
    expect(verbsAt(opened('coil-top-seat'), 'front left coil-bottom-seat')).toEqual([])
    expect(verbsAt(opened('coil-bottom-seat'), 'front left coil-top-seat')).toContain('open')
  })
})
