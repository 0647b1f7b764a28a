import { expect, test } from 'vitest'
import { branchesOf, failureKinds, failuresAt } from '../../../src/plan/index.ts'
import { Refusal } from '../../../src/quantity/index.ts'
import { vehicleNamed, vehicles } from './vehicles.ts'

test('PL58 what is offered at a joint is what a plan takes there, and nothing else', () => {
  let offered = 0
  let refused = 0
  for (const { name, assembly } of vehicles)
    for (const { id, side } of Object.values(assembly.joints)) {
      if (side === 'right') continue
      const at = failuresAt(assembly, id)
      for (const what of failureKinds) {
        let fits = true
        try {
          branchesOf(assembly, { replace: [], failed: [{ what, joint: id }] })
        } catch (error) {
          if (!(error instanceof Refusal)) throw error
          fits = error.code !== 'no-such-failure'
        }
        if (at.includes(what)) offered++
        else refused++
        expect(at.includes(what), `${name}, ${id}: ${what}`).toBe(fits)
      }
    }
  expect(offered).toBeGreaterThan(100)
  expect(refused).toBeGreaterThan(100)
})

test('PL58 a joint that the vehicle has not is offered nothing', () => {
  expect(failuresAt(vehicleNamed('strut-front'), 'front left no-such-joint')).toEqual([])
})
