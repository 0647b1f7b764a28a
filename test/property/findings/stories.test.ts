import { describe, expect, test } from 'vitest'
import { evidenceRows } from '../../../src/findings/evidence-rows.ts'
import { familiesOf } from '../../../src/findings/families-of.ts'
import type { Story } from '../../../src/findings/history.ts'
import { historyOf } from '../../../src/findings/history-of.ts'
import { hypothesisOf } from '../../../src/findings/hypothesis.ts'
import { type FindingsProblem, rankSuspects } from '../../../src/findings/index.ts'
import { knobsOf } from '../../../src/findings/knobs.ts'
import { vehicleModel } from '../../../src/findings/vehicle-model.ts'
import type { Displacement, ReadingName } from '../../../src/linkage/index.ts'
import { type Measured, normal } from '../../../src/measure/index.ts'
import { coilLower, leafAxle, nothingFound, problemOf } from './invented-problem.ts'

const degree = Math.PI / 180
const level = { 'front left': 0, 'front right': 0, 'rear left': 0, 'rear right': 0 }

/** Log evidence of a bent left lower arm in one story. */
function bentArm(problem: FindingsProblem, story: Story): number {
  const knobs = problem.axles.flatMap(knobsOf)
  const at = { travel: level, turns: false, plays: [] }
  const now = vehicleModel(problem.axles, knobs, at)
  const history = historyOf(story, {
    rows: evidenceRows(problem, now.numbers),
    knobs,
    now,
    sound: now,
    spreads: 1,
  })
  const family = familiesOf(problem, knobs).find(
    ({ suspect }) => suspect.kind === 'bent lower arm' && suspect.side === 'left',
  )!
  return hypothesisOf(family, { histories: [history], now, weights: { [story]: 1 } }).log
}

const bent: Displacement = { length: { lowerFront: -0.008, lowerRear: -0.008 } }

/** The leaf axle with one camber off by as much as a sleeve leans its pin. */
function leaning(corner: typeof leafAxle): FindingsProblem {
  const { camber, toe } = corner.wheel
  const readings: Partial<Record<ReadingName, Measured>> = {}
  const limits: Partial<Record<ReadingName, { low: number; high: number }>> = {}
  for (const side of ['left', 'right'] as const) {
    const off = side === 'left' ? 0.5 * degree : 0
    readings[`front ${side} camber`] = normal(0.1 * degree, `camber ${side}`, camber + off)
    readings[`front ${side} toe`] = normal(0.05 * degree, `toe ${side}`, toe)
    limits[`front ${side} camber`] = { low: camber - 0.3 * degree, high: camber + 0.3 * degree }
    limits[`front ${side} toe`] = { low: toe - 0.1 * degree, high: toe + 0.1 * degree }
  }
  return {
    ...nothingFound,
    axles: [{ end: 'front', corner, settings: { left: {}, right: {}, both: {} } }],
    readings,
    limits,
  }
}

describe('FI21 the story of the adjusters', () => {
  test('FI21 angles that stand inside although a part is bent were set after it, others before it', () => {
    const left = problemOf(coilLower, { left: bent, spread: 0.1 * degree })
    // the same arm, camber and toe brought back inside by shims and rod; SAI keeps what the shims add
    const chased: FindingsProblem = {
      ...left,
      readings: {
        ...left.readings,
        ...Object.fromEntries(
          (['camber', 'toe', 'caster'] as const).map((angle) => [
            `front left ${angle}`,
            { ...left.readings[`front left ${angle}`]!, value: left.readings[`front right ${angle}`]!.value },
          ]),
        ),
      },
    }
    expect(bentArm(left, 'set before')).toBeGreaterThan(bentArm(left, 'set after') + 1)
    expect(bentArm(chased, 'set after')).toBeGreaterThan(bentArm(chased, 'set before') + 1)
  })
  test('FI21 a sleeve that nobody saw may lean its pin by its whole tilt', () => {
    const { 'offset-sleeve': _, ...adjusters } = leafAxle.adjusters
    const sound = (corner: typeof leafAxle): number =>
      rankSuspects(leaning(corner))
        .groups.flatMap(({ suspects }) => suspects)
        .find(({ suspect }) => suspect.kind === 'out of adjustment')!.posterior
    const odds = (p: number): number => p / (1 - p)
    expect(odds(sound(leafAxle))).toBeGreaterThan(1.4 * odds(sound({ ...leafAxle, adjusters })))
  })
  test('FI21 an adjuster that was seen off its middle explains what it does, and no more', () => {
    const thick = { 'front-shims': 0.008, 'rear-shims': 0.008 }
    const middle = { 'front-shims': 0.005, 'rear-shims': 0.005 }
    const settings = { left: thick, right: middle, both: {} }
    const slip = (left: Displacement): number => {
      const { groups } = rankSuspects(problemOf(coilLower, { left, settings, spread: 0.05 * degree }))
      return groups
        .flatMap(({ suspects }) => suspects)
        .filter(({ suspect }) => suspect.kind.startsWith('adjuster slipped') && suspect.side === 'left')
        .filter(({ suspect }) => suspect.at === 'front-shims')
        .reduce((sum, { size }) => sum + size.value, 0)
    }
    const belief = (left: Displacement): number => {
      const problem = problemOf(coilLower, { left, settings, spread: 0.05 * degree })
      // the rod was set for the toe that results
      const toe = problem.readings['front right toe']!
      const { groups } = rankSuspects({
        ...problem,
        readings: {
          ...problem.readings,
          'front left toe': { ...toe, parts: problem.readings['front left toe']!.parts },
        },
      })
      return groups
        .flatMap(({ suspects }) => suspects)
        .find(({ suspect }) => suspect.kind === 'out of adjustment')!.posterior
    }
    const along = coilLower.adjusters['front-shims']!
    if (along.kind !== 'shims') throw new Error('shims were expected')
    const far = Math.hypot(...along.along)
    const drawn = along.asDrawn ?? 0
    const by = along.along.map((x) => ((0.008 - drawn) * x) / far) as unknown as readonly [
      number,
      number,
      number,
    ]
    expect(Math.sign(slip({ body: { upperFrontInner: by, upperRearInner: by } }))).toBe(1)
    const asSeen = belief({ body: { upperFrontInner: by, upperRearInner: by } })
    const otherWay = belief({
      body: {
        upperFrontInner: by.map((x) => -x) as unknown as typeof by,
        upperRearInner: by.map((x) => -x) as unknown as typeof by,
      },
    })
    expect(asSeen).toBeGreaterThan(0.1)
    expect(otherWay).toBeLessThan(asSeen / 10)
  })
})
