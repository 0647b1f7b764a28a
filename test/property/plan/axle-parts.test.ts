import { describe, expect, test } from 'vitest'
import { type Action, judgeOrder, keys, planOf } from '../../../src/plan/index.ts'
import { checkPlan } from '../../support/plan-checker/check-plan.ts'
import { vehicleNamed, vehicles } from './vehicles.ts'

const effort = { budget: 2e3 }
/** What an axle has once and the body carries; a beam with its springs is among the parts that wear. */
const kinds = [
  'rack',
  'steering box',
  'drop arm',
  'idler arm',
  'centre link',
  'bar',
  'sub-frame',
  'steering shaft',
]

describe('what the axle has once', () => {
  for (const { name, corner, assembly } of vehicles) {
    const parts = Object.values(assembly.parts).filter(({ kind }) => kinds.includes(kind))
    const goals = parts.map(({ id }) => ({ replace: [id] }))
    for (const [nth, goal] of goals.entries())
      test(`PL2 PL14 ${name}: ${goal.replace.join()}`, () => {
        const support = nth % 2 ? 'lift' : 'jack and stands'
        const actions = actionsOf(planOf(assembly, goal, undefined, { support, effort }))
        expect(judgeOrder(assembly, goal, actions).faults).toEqual([])
        expect(checkPlan([corner], goal, actions)).toEqual([])
      })
  }
})

describe('a sub-frame that comes down', () => {
  const assembly = vehicleNamed('van')
  const bolts = 'front sub-frame-bolts'
  const goal = { replace: [], open: [bolts] }
  const actions = actionsOf(planOf(assembly, goal, undefined, { effort }))
  const isOpening = ({ joint, verb }: Action) => joint === bolts && verb === 'open'

  // Common practice, no source.
  test('PL3 I14 both knuckles are tied up, so that no drive shaft is drawn; left loose it is judged', () => {
    const loose = actions.map((action) => (isOpening(action) ? { ...action, how: {} } : action))
    expect(actions.find(isOpening)!.how).toEqual({ shaft: 'tied up' })
    expect(judgeOrder(assembly, goal, loose).faults.map(({ rule }) => rule)).toEqual(['I14'])
  })
  test('PL2 it is told to be held from below, and read after', () => {
    const at = actions.findIndex(isOpening)
    expect(actions[at]!.cautions.join(' ')).toMatch(/table or jack under the sub-frame/)
    expect(actions.slice(at).some(({ effects }) => effects[keys.reading('front')] === 'proven')).toBe(true)
  })
})

function actionsOf({ bands }: ReturnType<typeof planOf>): readonly Action[] {
  return bands.flatMap(({ lines }) => lines.map(({ action }) => action))
}
