import { describe, expect, test } from 'vitest'
import { type Assembly, type Goal, judgeOrder, planOf } from '../../../src/plan/index.ts'
import { makeAction } from '../../../src/plan/make-action.ts'
import { waitsBetween } from '../../../src/plan/waits-between.ts'
import { refuses } from '../../support/law.ts'
import { tipper, wholeBus, wholeVan } from './vehicles.ts'

const actionsOf = (assembly: Assembly, goal: Goal) =>
  planOf(assembly, goal, undefined, { effort: { budget: 1e5 } }).bands.flatMap(({ lines }) =>
    lines.map(({ action }) => action),
  )

describe('goals on both axles', () => {
  test.each([
    ['bus', wholeBus, ['front left lower-arm', 'rear left leaf-spring']],
    ['van', wholeVan, ['front left lower-arm', 'rear left hub']],
  ] as const)(
    'PL2 the %s: a rear that nothing sets is read before the front is set',
    (_, assembly, replace) => {
      const actions = actionsOf(assembly, { replace })
      expect(judgeOrder(assembly, { replace }, actions).faults).toEqual([])
      const at = (id: string) => actions.findIndex((action) => action.id === id)
      expect(at('read provisional rear')).toBeGreaterThan(0)
      expect(at('read provisional front')).toBeGreaterThan(at('read provisional rear'))
      expect(at('set toe rear')).toBe(-1)
    },
  )

  test('PL2 every wearing part of the tipper’s steering has a plan', () => {
    for (const id of ['front drag-link', 'front drag-link-socket', 'front left kingpin', 'front tie-rod']) {
      const replace = [id]
      expect(judgeOrder(tipper, { replace }, actionsOf(tipper, { replace })).faults).toEqual([])
    }
  })
})

describe('PL13 what excludes itself', () => {
  const straight = { key: 'steering', is: ['straight'], why: 'it is held' }
  const steer = makeAction({
    id: 'to the lock',
    verb: 'steer',
    words: 'Turn the steering to right lock',
    place: 'in the cabin',
    axle: null,
    side: null,
    needs: [],
    effects: { steering: 'right lock' },
    why: 'for the test',
  })
  const read = { ...steer, id: 'read', verb: 'read angles' as const, needs: [straight], effects: {} }
  refuses('contradiction', () => waitsBetween([steer, read]), 'read')
})
