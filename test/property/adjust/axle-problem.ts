// Invented axles with readings, for tests only.
import fc from 'fast-check'
import type { Adjuster, CornersSetup, MovesProblem, WheelSetup } from '../../../src/adjust/index.ts'
import type { CornerPoints, ReadingName } from '../../../src/linkage/index.ts'
import type { Measured } from '../../../src/measure/index.ts'
import { deg, metre, mm, turn } from '../../../src/quantity/index.ts'
import { eccentric, longArms, tieRod, tiltedAxes } from './invented-corners.ts'

export const still = { travel: metre(0), rack: metre(0) }

/** A reading in degrees with an error of its own and a zero shared by all. */
export function read(value: number, spread: number, source: string, zero = 0): Measured {
  const part = (name: string, effect: number) =>
    ({ source: name, effect: deg(effect), shape: 'normal', dof: Number.POSITIVE_INFINITY }) as const
  return {
    value: deg(value),
    parts: [...(spread > 0 ? [part(source, spread)] : []), ...(zero > 0 ? [part('zero', zero)] : [])],
  }
}

export const between = (low: number, high: number) => ({ low: deg(low), high: deg(high) })

export const adjustersOf = (more: { play?: number } = {}): readonly Adjuster[] => [
  eccentric('front', 'upperFrontInner', { step: deg(2), play: deg(more.play ?? 1) }),
  eccentric('rear', 'upperRearInner', { step: deg(2), play: deg(more.play ?? 1) }),
  tieRod({ step: turn(1 / 24) }),
]

export const wheel = (
  settings: Record<string, number | null> = { front: 0, rear: 0, 'tie rod': 0 },
  points: CornerPoints = longArms,
): WheelSetup => ({ points, drive: still, adjusters: adjustersOf(), settings })

/** A problem whose axles are computed corner by corner. */
export interface CornersProblem extends MovesProblem {
  readonly axles: readonly CornersSetup[]
}

export const axle = (left = wheel(), right = wheel()): CornersSetup => ({ end: 'front', left, right })

/** Limits of an invented sheet. */
export const sheet: MovesProblem['limits'] = {
  'front left camber': between(-1, 0),
  'front right camber': between(-1, 0),
  'front left caster': between(2.5, 4),
  'front right caster': between(2.5, 4),
  'front left toe': between(-0.05, 0.25),
  'front right toe': between(-0.05, 0.25),
  'front total toe': between(0, 0.3),
  'front cross camber': between(-0.5, 0.5),
}

/** Readings of one axle in degrees: camber, caster, toe of the left, then of the right wheel. */
export function readings(
  values: readonly number[],
  spread: readonly [number, number, number] = [0.04, 0.1, 0.03],
): Record<string, Measured> {
  const names = ['camber', 'caster', 'toe'] as const
  const out: Partial<Record<ReadingName, Measured>> = {}
  ;(['left', 'right'] as const).forEach((side, s) => {
    names.forEach((angle, a) => {
      out[`front ${side} ${angle}`] = read(values[3 * s + a]!, spread[a]!, `${side} ${angle}`, 0.01)
    })
  })
  return out as Record<string, Measured>
}

const turned = fc.integer({ min: -30, max: 30 }).map((degrees) => deg(degrees))
const settings = fc.record({
  front: turned,
  rear: turned,
  'tie rod': fc.integer({ min: -24, max: 24 }).map((n) => n / 12),
})
const angle = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 100), max: Math.round(high * 100) }).map((n) => n / 100)

/** Axles that stand somewhat off their limits. */
export const anyProblem: fc.Arbitrary<CornersProblem> = fc
  .record({
    points: fc.constantFrom<CornerPoints>(longArms, tiltedAxes),
    left: settings,
    right: settings,
    values: fc.tuple(
      angle(-1.2, 0.2),
      angle(2.2, 4.2),
      angle(-0.4, 0.6),
      angle(-1.2, 0.2),
      angle(2.2, 4.2),
      angle(-0.4, 0.6),
    ),
    travel: fc.integer({ min: -20, max: 20 }).map((millimetres) => mm(millimetres)),
  })
  .map(({ points, left, right, values, travel }) => {
    const drive = { travel, rack: metre(0) }
    return {
      axles: [axle({ ...wheel(left, points), drive }, { ...wheel(right, points), drive })],
      readings: readings(values),
      limits: sheet,
    }
  })

/** The same axle seen in a mirror. */
export function mirrored(problem: CornersProblem): CornersProblem {
  const swap = (name: string) =>
    name.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left')) as ReadingName
  const renamed = <T>(
    record: Readonly<Partial<Record<ReadingName, T>>>,
    change: (name: string, value: T) => T,
  ) =>
    Object.fromEntries(
      Object.entries(record).map(([name, value]) => [swap(name), change(name, value as T)]),
    ) as Partial<Record<ReadingName, T>>
  return {
    axles: problem.axles.map((one) => ({ ...one, left: one.right, right: one.left })),
    readings: renamed(problem.readings, (_, value) => value),
    limits: renamed(problem.limits, (_, value) => value),
  }
}
