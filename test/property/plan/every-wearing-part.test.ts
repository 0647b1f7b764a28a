import { describe, expect, test } from 'vitest'
import { factOf, judgeOrder, keys, planOf } from '../../../src/plan/index.ts'
import { vehicles, wearing } from './vehicles.ts'

/** Little search: here the order has only to be a lawful one. */
const effort = { budget: 3e5 }

for (const { name, assembly } of vehicles)
  describe(`${name}: every part that wears`, () => {
    const goals = wearing(assembly)
    test('has some', () => expect(goals.length).toBeGreaterThan(5))
    goals.forEach((goal, i) => {
      const support = i % 2 === 0 ? 'jack and stands' : 'lift'
      test(`PL2 PL7 ${goal.replace.join()} on ${support}`, () => {
        const plan = planOf(assembly, goal, undefined, { support, effort })
        const actions = plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action))
        expect(new Set(actions.map(({ id }) => id)).size, 'each action once').toBe(actions.length)
        const { faults, state } = judgeOrder(assembly, goal, actions)
        expect(faults, 'PL2 no rule is broken').toEqual([])

        // PL7: what was undone is done again.
        for (const { id } of Object.values(assembly.joints))
          expect(['closed', 'final', 'checked'], id).toContain(factOf(state, keys.joint(id)))
        for (const { id, kind } of Object.values(assembly.joints))
          if (kind.startsWith('tapered')) expect(factOf(state, keys.taper(id))).toBe('seated')
        for (const { id } of Object.values(assembly.parts))
          expect(factOf(state, keys.part(id)), id).toBe(goal.replace.includes(id) ? 'new' : 'fitted')
        for (const { id } of Object.values(assembly.holds))
          expect(factOf(state, keys.energy(id))).toBe('held by its set')
        for (const axle of assembly.axles) expect(factOf(state, keys.support(axle))).toBe('on its wheels')
        expect(factOf(state, keys.steering)).toBe('straight')

        // Whatever is told to be needed is in the plan, and each line says why it is there.
        for (const { id } of plan.needed.reasons.filter(({ what }) => what === 'open'))
          expect(
            actions.some(({ effects }) => effects[keys.joint(id)] === 'open'),
            id,
          ).toBe(true)
        for (const { action } of plan.bands.flatMap(({ lines }) => lines))
          expect(action.why.length).toBeGreaterThan(5)
        expect(plan.minutes.p90).toBeGreaterThan(plan.minutes.p50)
      })
    })
  })
