import { describe, expect, test } from 'vitest'
import { type MovesProblem, moves } from '../../../src/adjust/index.ts'
import { metre, rad } from '../../../src/quantity/index.ts'
import { axle, between, read, readings, sheet } from './axle-problem.ts'
import { set, vanBeam, wedge } from './whole-axles.ts'

/** A front axle on wishbones before a beam whose wedges nobody has looked at. */
function beforeBeam(front: readonly number[]): MovesProblem {
  const rear = { 'rear left toe': 0.1, 'rear right toe': 0.1 }
  const { 'front left toe': _, 'front right toe': __, ...rest } = sheet
  return {
    axles: [
      axle(),
      {
        end: 'rear',
        axle: vanBeam,
        drive: { heave: metre(0), roll: rad(0), drop: rad(0) },
        left: set([wedge('toe'), null]),
        right: set([wedge('toe'), null]),
      },
    ],
    readings: {
      ...readings(front),
      ...Object.fromEntries(Object.entries(rear).map(([name, value]) => [name, read(value, 0.03, name)])),
    },
    limits: {
      ...rest,
      'front left toe to thrust': between(-0.05, 0.25),
      'front right toe to thrust': between(-0.05, 0.25),
      'rear left toe': between(-0.1, 0.3),
      'rear right toe': between(-0.1, 0.3),
    },
  }
}

describe('a front axle before a beam', () => {
  test('AD26 a rear wedge that nobody has seen keeps no front tie rod from its work, and is not asked after', () => {
    const found = moves(beforeBeam([-0.5, 3.2, 0.1, -0.5, 3.2, 0.7]))
    expect(found.moves.map(({ end, side, adjuster }) => `${end} ${side} ${adjuster.id}`)).toEqual([
      'front right tie rod',
    ])
    expect(found.insideAfter).toBeGreaterThan(0.9)
    expect(found.outOfReach).toEqual([])
    expect(found.readFirst).toEqual([])
  })
  test('AD12 what a front camber lacks is no fault of the rear beam', () => {
    const found = moves(beforeBeam([-0.5, 3.2, 0.1, -5, 3.2, 0.1]))
    const camber = found.outOfReach.find(({ reading }) => reading === 'front right camber')!
    expect(camber.mayBe).toContain('bent knuckle')
    expect(camber.mayBe).not.toContain('bent axle or beam')
  })
})
