import { describe, expect, test } from 'vitest'
import type { Corner } from '../../../src/corner/index.ts'
import {
  type Findings,
  type FindingsProblem,
  rankSuspects,
  type Suspect,
  suspectsOf,
} from '../../../src/findings/index.ts'
import { weighed } from '../../../src/findings/weighed.ts'
import type { Displacement } from '../../../src/linkage/index.ts'
import { normal } from '../../../src/measure/index.ts'
import { refuses } from '../../support/law.ts'
import {
  coilAxle,
  coilLower,
  fiveLink,
  leafAxle,
  mirrored,
  nothingFound,
  problemOf,
  strut,
  torsionBar,
  trailing,
  twistBeam,
} from './invented-problem.ts'

const degree = Math.PI / 180
const key = ({ kind, axle, side, at }: Suspect): string => [kind, axle, side, at].join(' | ')
const beliefs = ({ groups }: Findings): Map<string, number> =>
  new Map(
    groups.flatMap(({ suspects }) =>
      suspects.map(({ suspect, posterior }) => [key(suspect), posterior] as const),
    ),
  )
const beliefIn = (
  answer: Findings,
  kind: Suspect['kind'],
  side: Suspect['side'] = null,
  at?: string,
): number =>
  answer.groups
    .flatMap(({ suspects }) => suspects)
    .filter(
      ({ suspect }) =>
        suspect.kind === kind && suspect.side === side && (at === undefined || suspect.at === at),
    )
    .reduce((sum, { posterior }) => sum + posterior, 0)
const closest = (a: Map<string, number>, b: Map<string, number>, rename = (x: string) => x): number =>
  Math.max(...[...a].map(([name, p]) => Math.abs(p - (b.get(rename(name)) ?? Number.NaN))))
const seen = (corner: Corner) => {
  const middle = Object.fromEntries(
    Object.entries(corner.adjusters).map(([id, { range }]) => [id, (range[0] + range[1]) / 2]),
  )
  return { left: middle, right: middle, both: middle }
}
const bentLower: Displacement = { length: { lowerFront: -0.007, lowerRear: -0.007 } }

describe('the ranking', () => {
  test('FI3 a mirrored vehicle has mirrored suspects', () => {
    for (const corner of [strut, coilLower]) {
      const problem: FindingsProblem = {
        ...problemOf(corner, { left: bentLower, spread: 0.1 * degree }),
        turns: {
          left: normal(0.4 * degree, 'turn left', 2 * degree),
          right: normal(0.4 * degree, 'turn right', 2.2 * degree),
        },
        setBack: normal(0.003, 'set-back', 0.002),
        checks: [
          { check: 'rock at 12 and 6', wheel: 'front left', joint: null, part: null, found: ['play'] },
        ],
        road: [
          { question: 'pulls to the left', answer: true },
          { question: 'pulls to the right', answer: false },
        ],
      }
      const there = beliefs(rankSuspects(problem))
      const back = beliefs(rankSuspects(mirrored(problem)))
      const other = (name: string): string =>
        name.replace(/ (left|right) /, (_, side) => ` ${side === 'left' ? 'right' : 'left'} `)
      expect(closest(there, back, other)).toBeLessThan(0.01)
    }
  })
  test('FI4 the order of what was read does not matter', () => {
    const problem = problemOf(torsionBar, { left: bentLower, spread: 0.15 * degree })
    const turned: FindingsProblem = {
      ...problem,
      readings: Object.fromEntries(Object.entries(problem.readings).reverse()),
      limits: Object.fromEntries(Object.entries(problem.limits).reverse()),
      heights: Object.fromEntries(Object.entries(problem.heights).reverse()),
    }
    expect(closest(beliefs(rankSuspects(problem)), beliefs(rankSuspects(turned)))).toBeLessThan(0.005)
  })
  test('FI5 where nothing was read belief is what it was before', () => {
    const bare: FindingsProblem = { ...nothingFound, axles: problemOf(strut).axles }
    const answer = rankSuspects(bare)
    // of kinds with one suspect at each wheel, both wheels alike
    expect(beliefIn(answer, 'bent knuckle', 'left')).toBeCloseTo(beliefIn(answer, 'bent knuckle', 'right'), 6)
    // weights 10 and 5 of sagged spring and bent knuckle
    expect(beliefIn(answer, 'sagged spring', 'left') / beliefIn(answer, 'bent knuckle', 'left')).toBeCloseTo(
      2,
      3,
    )
    expect(beliefIn(answer, 'out of adjustment')).toBeCloseTo(0.35, 3)
    expect(answer.cannotTell).toBe(true)
    expect(answer.visible).toEqual([])
  })
  test('FI8 belief adds up to one, every suspect stands in one group, most likely first', () => {
    for (const corner of [strut, coilLower, torsionBar, trailing, leafAxle, coilAxle, twistBeam, fiveLink]) {
      const problem: FindingsProblem = {
        ...nothingFound,
        axles: [{ end: corner.axle, corner, settings: { left: {}, right: {}, both: {} } }],
        readings: {
          [`${corner.axle} left camber`]: normal(0.1 * degree, 'left', corner.wheel.camber + 0.5 * degree),
          [`${corner.axle} right camber`]: normal(0.1 * degree, 'right', corner.wheel.camber),
        },
      }
      const answer = rankSuspects(problem)
      const all = answer.groups.flatMap(({ suspects }) => suspects.map(({ suspect }) => key(suspect)))
      expect(new Set(all).size).toBe(all.length)
      expect(new Set(all)).toEqual(new Set(suspectsOf(problem).map(key)))
      expect(answer.groups.reduce((sum, { posterior }) => sum + posterior, 0)).toBeCloseTo(1, 9)
      for (let i = 1; i < answer.groups.length; i++)
        expect(answer.groups[i]!.posterior).toBeLessThanOrEqual(answer.groups[i - 1]!.posterior)
    }
  })
  test('FI6 a fault that is read exactly comes first', () => {
    const causes: readonly (readonly [Corner, Displacement, Suspect['kind'], string?])[] = [
      [coilLower, bentLower, 'bent lower arm'],
      [coilLower, { length: { upperFront: -0.007, upperRear: -0.007 } }, 'bent upper arm'],
      [coilLower, { spin: [-0.02, 0, 0] }, 'bent knuckle'],
      [coilLower, { body: { lowerFrontInner: [0, 0.003, -0.004] } }, 'collapsed bush', 'lower-front-bolt'],
      [torsionBar, { body: { upperRearInner: [0, -0.006, 0] } }, 'collapsed bush', 'upper-rear-bolt'],
      [
        torsionBar,
        { knuckle: { lowerOuter: [0, -0.0025, -0.002] } },
        'worn ball joint',
        'lower-ball-joint-stud',
      ],
      [strut, bentLower, 'bent lower arm'],
      [strut, { body: { topMount: [0, -0.012, 0] } }, 'shifted tower'],
      [strut, { body: { lowerRearInner: [0, 0.006, 0] } }, 'collapsed bush', 'lower-rear-bolt'],
    ]
    for (const [corner, cause, kind, at] of causes) {
      const answer = rankSuspects(
        problemOf(corner, { left: cause, spread: 0.01 * degree, settings: seen(corner) }),
      )
      const first = answer.groups[0]!.suspects.map(({ suspect }) => key(suspect))
      expect(first, `${corner.id}: ${kind}`).toContainEqual(
        expect.stringContaining([kind, 'front', 'left', at ?? ''].join(' | ')),
      )
    }
  })
  test('FI6 a large fault has its size, although what it does is bent', () => {
    for (const corner of [coilLower, torsionBar, strut])
      for (const by of [0.02, 0.03, -0.03]) {
        const cause: Displacement = { length: { lowerFront: -by, lowerRear: -by } }
        const answer = rankSuspects(
          problemOf(corner, { left: cause, spread: 0.02 * degree, settings: seen(corner) }),
        )
        const arm = answer.groups
          .flatMap(({ suspects }) => suspects)
          .find(({ suspect }) => suspect.kind === 'bent lower arm' && suspect.side === 'left')!
        expect(arm.posterior, corner.id).toBeGreaterThan(0.9)
        const { lowerFront } = arm.ghost.left!.length!
        expect(Math.abs(lowerFront! / -by - 1), `${corner.id} ${by}`).toBeLessThan(0.015)
      }
  })
  test('FI7 what an adjuster could have done is hardly evidence, what none could is', () => {
    // the upper shims reach about this far on this corner, each way
    const tilted = (by: number): Findings => {
      const { limits, ...problem } = problemOf(coilLower, { spread: 0.03 * degree })
      const name = 'front left camber' as const
      const camber = problem.readings[name]!
      const sai = problem.readings['front left sai']!
      return rankSuspects({
        ...problem,
        limits,
        readings: {
          ...problem.readings,
          [name]: { ...camber, value: camber.value + by },
          'front left sai': { ...sai, value: sai.value - by },
        },
      })
    }
    const inReach = beliefIn(tilted(0.7 * degree), 'out of adjustment')
    const outOfReach = beliefIn(tilted(2.5 * degree), 'out of adjustment')
    expect(inReach).toBeGreaterThan(0.1)
    expect(outOfReach).toBeLessThan(inReach / 20)
  })
  test('FI9 a torn bush speaks for its bush, a sound one against it', () => {
    const problem = problemOf(coilLower, { spread: 0.15 * degree })
    const lever = (found: string): FindingsProblem => ({
      ...problem,
      checks: [
        {
          check: 'lever at the bush',
          wheel: 'front left',
          joint: 'upper-front-bush-nut',
          part: null,
          found: [found],
        },
      ],
    })
    const belief = (p: FindingsProblem): number =>
      beliefIn(rankSuspects(p), 'collapsed bush', 'left', 'upper-front-bush-nut')
    expect(belief(lever('torn'))).toBeGreaterThan(5 * belief(problem))
    expect(belief(lever('nothing'))).toBeLessThan(0.5 * belief(problem))
  })
  test('FI9 play at a joint is a worn joint of its size', () => {
    const problem = problemOf(coilLower, { spread: 0.15 * degree })
    const answer = rankSuspects({
      ...problem,
      play: [
        {
          wheel: 'front left',
          joint: 'lower-ball-joint-stud',
          swing: normal(0.0001, 'dial', 0.0027),
          limit: null,
        },
      ],
    })
    const belief = (swing: number | null): number =>
      beliefIn(
        rankSuspects({
          ...problem,
          play:
            swing === null
              ? []
              : [
                  {
                    wheel: 'front left',
                    joint: 'lower-ball-joint-stud',
                    swing: normal(0.0001, 'dial', swing),
                    limit: null,
                  },
                ],
        }),
        'worn ball joint',
        'left',
        'lower-ball-joint-stud',
      )
    expect(belief(0.0027)).toBeGreaterThan(0.9)
    // a joint of a sound joint's play is hardly worn
    expect(belief(0.0003)).toBeLessThan(0.2 * belief(null))
    const worn = answer.groups[0]!.suspects[0]!
    expect(worn.suspect.at).toBe('lower-ball-joint-stud')
    expect(worn.size.value).toBeGreaterThan(0.0012)
    expect(worn.size.value).toBeLessThan(0.0026)
    expect(worn.speaksFor[0]!.reading).toContain('play, front left lower-ball-joint-stud')
  })
  test('FI9 a pull that swaps with the wheels is the tyre', () => {
    const problem = problemOf(strut, { spread: 0.1 * degree })
    const answer = rankSuspects({
      ...problem,
      road: [
        { question: 'pulls to the left', answer: true },
        { question: 'pulls to the right', answer: false },
        { question: 'pull swaps with the front wheels', answer: true },
      ],
    })
    expect(answer.groups[0]!.suspects[0]!.suspect.kind).toBe('tyre pulls')
  })
  test('FI9 a pull that cross camber or cross caster explains is not the tyre', () => {
    const tyre = (spins: { readonly camber: number; readonly caster: number }): number => {
      const problem = problemOf(strut, { spread: 0.1 * degree })
      const add = (name: 'front left camber' | 'front left caster', by: number) => ({
        [name]: { ...problem.readings[name]!, value: problem.readings[name]!.value + by * degree },
      })
      return beliefIn(
        rankSuspects({
          ...problem,
          readings: {
            ...problem.readings,
            ...add('front left camber', spins.camber),
            ...add('front left caster', spins.caster),
          },
          road: [
            { question: 'pulls to the left', answer: true },
            { question: 'pulls to the right', answer: false },
          ],
        }),
        'tyre pulls',
      )
    }
    // towards the more positive camber and the less positive caster
    expect(tyre({ camber: 0.6, caster: 0 })).toBeLessThan(0.5 * tyre({ camber: -0.6, caster: 0 }))
    expect(tyre({ camber: 0, caster: -0.6 })).toBeLessThan(0.5 * tyre({ camber: 0, caster: 0.6 }))
  })
  test('FI16 a sagged spring lowers its corner by three quarters and lifts the diagonal one', () => {
    const sag = 0.024
    const at = (wheel: string, z: number) => [wheel, normal(0.0007, `rule ${wheel}`, z)] as const
    const problem: FindingsProblem = {
      ...nothingFound,
      axles: [problemOf(strut).axles[0]!, problemOf(trailing).axles[0]!],
      heights: Object.fromEntries([
        at('front left', 0.75 * sag),
        at('front right', 0.25 * sag),
        at('rear left', 0.25 * sag),
        at('rear right', -0.25 * sag),
      ]),
    }
    const answer = rankSuspects(problem)
    const [first] = answer.groups[0]!.suspects
    expect(first!.suspect).toEqual({ kind: 'sagged spring', axle: 'front', side: 'left', at: null })
    expect(Math.abs(first!.size.value - sag)).toBeLessThan(0.008)
  })
  test('FI18 what speaks for a bent knuckle is the angle that it changes', () => {
    const answer = rankSuspects(
      problemOf(coilLower, { left: { spin: [-0.03, 0, 0] }, settings: seen(coilLower) }),
    )
    const knuckle = answer.groups
      .flatMap(({ suspects }) => suspects)
      .find(({ suspect }) => suspect.kind === 'bent knuckle' && suspect.side === 'left')!
    expect(knuckle.speaksFor.slice(0, 2).map(({ reading }) => reading)).toContain('front left camber')
    expect(knuckle.size.value).toBeGreaterThan(0.02)
    expect(knuckle.ghost.right).toBeNull()
    expect(knuckle.ghost.left!.spin![0]).toBeLessThan(-0.02)
  })
  test('FI15 the workshop’s own frequencies take the place of the table', () => {
    const problem = problemOf(strut, { spread: 0.3 * degree })
    const plain = rankSuspects(problem)
    const own = rankSuspects(problem, { frequencies: { sound: 0.8, kinds: { 'sagged spring': 0 } } })
    expect(beliefIn(own, 'out of adjustment')).toBeGreaterThan(beliefIn(plain, 'out of adjustment'))
    expect(beliefIn(own, 'sagged spring', 'left')).toBe(0)
  })
  test('FI22 a part that was renewed is hardly bent or worn again, but may be the wrong one', () => {
    const problem = problemOf(strut, { left: { spin: [-0.035, 0, 0] }, spread: 0.1 * degree })
    const renew = (part: string, wheel: 'front left' | 'front right') =>
      rankSuspects({ ...problem, renewed: [{ part, wheels: [wheel] }] })
    const odds = (answer: Findings, kind: Suspect['kind'], at?: string): number =>
      beliefIn(answer, kind, 'left', at) / beliefIn(answer, 'wrong part', 'left', 'knuckle')
    const plain = rankSuspects(problem)
    const done = renew('knuckle', 'front left')
    expect(beliefIn(plain, 'bent knuckle', 'left')).toBeGreaterThan(0.3)
    expect(odds(done, 'bent knuckle') / odds(plain, 'bent knuckle')).toBeCloseTo(0.05, 6)
    expect(beliefIn(done, 'wrong part', 'left', 'knuckle')).toBeGreaterThan(0.6)
    // on the other side it tells nothing
    expect(odds(renew('knuckle', 'front right'), 'bent knuckle')).toBeCloseTo(odds(plain, 'bent knuckle'), 9)
    // a bush comes with its arm, a ball joint that is bolted on does not
    const bushes = problemOf(coilLower, { spread: 0.3 * degree })
    const ratio = (part: string, kind: Suspect['kind'], at: string): number => {
      const [was, is] = [bushes, { ...bushes, renewed: [{ part, wheels: ['front left' as const] }] }].map(
        (one) => rankSuspects(one),
      )
      const of = (answer: Findings): number =>
        beliefIn(answer, kind, 'left', at) / beliefIn(answer, kind, 'right', at)
      return of(is!) / of(was!)
    }
    expect(ratio('lower-arm', 'collapsed bush', 'lower-front-bolt')).toBeCloseTo(0.05, 2)
    expect(ratio('coil-spring', 'collapsed bush', 'lower-front-bolt')).toBeCloseTo(1, 6)
  })
  test('FI20 heights on a plane that is a little warped contradict nothing', () => {
    const plain = problemOf(strut, { spread: 0.1 * degree })
    const height = (by: number, wheel: string) => normal(0.0002, `rule ${wheel}`, by)
    const heights = {
      'front left': height(-0.001, 'a'),
      'front right': height(0.001, 'b'),
      'rear left': height(0, 'c'),
      'rear right': height(-0.001, 'd'),
    }
    const { sound, rows } = weighed({ ...plain, heights })
    const stands = sound.best.history.standing(sound.best.left)
    rows.read.forEach(({ name }, k) => {
      if (name.endsWith('height')) expect(Math.abs(stands[k]!), name).toBeLessThan(2.5)
    })
    expect(rows.read.filter(({ name }) => name.endsWith('height'))).toHaveLength(4)
  })
  test('FI19 two faults at once are told as a pair, and none where one is enough', () => {
    const settings = seen(coilLower)
    const knuckle: Displacement = { spin: [-0.035, 0, 0] }
    const arm: Displacement = { length: { lowerFront: -0.012, lowerRear: -0.012 } }
    const two = rankSuspects(problemOf(coilLower, { left: knuckle, right: arm, settings }))
    const kinds = two.pairs.map(({ suspects }) => suspects.map(({ kind, side }) => `${kind} ${side}`).sort())
    expect(two.pairs.reduce((sum, { posterior }) => sum + posterior, 0)).toBeGreaterThan(0.9)
    expect(kinds).toContainEqual(['bent knuckle left', 'bent lower arm right'])
    expect(two.cannotTell).toBe(false)
    expect(rankSuspects(problemOf(coilLower, { left: knuckle, settings })).pairs).toEqual([])
    expect(two.groups.reduce((sum, { posterior }) => sum + posterior, 0)).toBeCloseTo(1, 9)
  })
  test('FI20 a reading that contradicts everything is named', () => {
    const problem = problemOf(coilLower, { spread: 0.05 * degree, settings: seen(coilLower) })
    const name = 'front right caster' as const
    const wild = { ...problem.readings[name]!, value: problem.readings[name]!.value + 25 * degree }
    expect(rankSuspects(problem).unexplained).toEqual([])
    expect(
      rankSuspects({ ...problem, readings: { ...problem.readings, [name]: wild } }).unexplained,
    ).toContain(name)
  })
  describe('FI17 what cannot be is refused', () => {
    const problem = problemOf(strut)
    refuses('setting-out-of-range', () =>
      rankSuspects({
        ...problem,
        axles: [{ ...problem.axles[0]!, settings: { left: { 'top-plate': 1 }, right: {}, both: {} } }],
      }),
    )
    const wild = { ...strut.adjusters['top-plate']!, moves: 'nowhere' } as Corner['adjusters'][string]
    refuses('no-such-point', () =>
      suspectsOf({
        ...problem,
        axles: [
          {
            ...problem.axles[0]!,
            corner: { ...strut, adjusters: { ...strut.adjusters, 'top-plate': wild } },
          },
        ],
      }),
    )
    refuses('not-finite', () =>
      rankSuspects({ ...problem, readings: { 'front left camber': normal(0.001, 'one', Number.NaN) } }),
    )
    refuses('not-positive', () => rankSuspects(problem, { spreads: 0 }))
    refuses('not-positive', () => rankSuspects(problem, { spreads: Number.POSITIVE_INFINITY }))
    refuses('repeated-axle', () =>
      rankSuspects({ ...problem, axles: [problem.axles[0]!, problem.axles[0]!] }),
    )
    test('FI17 a limit with one side, sums alone and nothing at all are answered', () => {
      const oneSided = {
        ...problem,
        limits: { 'front left camber': { low: Number.NEGATIVE_INFINITY, high: 0 } },
      }
      const sums: FindingsProblem = {
        ...nothingFound,
        axles: problem.axles,
        readings: { 'front total toe': normal(0.001, 'tape', 0.01) },
      }
      for (const one of [oneSided, sums, nothingFound]) {
        const { groups } = rankSuspects(one)
        expect(groups.reduce((sum, { posterior }) => sum + posterior, 0)).toBeCloseTo(1, 9)
      }
    })
    refuses('unreachable', () =>
      rankSuspects({ ...problem, heights: { 'front left': normal(0.001, 'rule', 0.9) } }),
    )
  })
})
