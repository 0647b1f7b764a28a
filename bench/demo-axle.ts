import { readFileSync } from 'node:fs'
import type { MovesProblem, WheelSetup } from '../src/adjust/index.ts'
import { adjustersOf, cornerPoints, type Reading, readCorner } from '../src/corner/index.ts'
import { mechanism, poseAt, type ReadingName } from '../src/linkage/index.ts'
import { type Measured, seededRandom } from '../src/measure/index.ts'
import { deg, metre } from '../src/quantity/index.ts'
import { limitsOf, readSpec } from '../src/spec/index.ts'

const folder = new URL('../examples/port-unit-07/', import.meta.url)

/** Standard uncertainty of a reading's own error and of the zero that all readings share, degrees. */
const spread = { camber: 0.05, caster: 0.12, toe: 0.03 }
const zero = 0.03

/**
 * The front axle of the first demo, its limits, and invented readings that stand off them: another set for each
 * seed, on arms whose eccentrics and tie rods were found somewhere in their range.
 */
export function demoAxle(seed: number): MovesProblem {
  const corner = checked(readCorner(json('front.corner.json')))
  const spec = checked(readSpec(json('port-unit-07.spec.json')))
  const random = seededRandom(seed)
  const points = cornerPoints(corner)
  const adjusters = adjustersOf(corner)
  const wheel = (): WheelSetup => ({
    points,
    drive: { travel: metre(0.02 * (random.uniform() - 0.5)), rack: metre(0) },
    adjusters,
    settings: Object.fromEntries(
      adjusters.map((each) => [each.id, each.kind === 'thread' ? null : deg(40 * (random.uniform() - 0.5))]),
    ),
  })
  const design = poseAt(mechanism(points), { travel: metre(0), rack: metre(0) })
  const readings: Partial<Record<ReadingName, Measured>> = {}
  const read = (name: ReadingName, angle: keyof typeof spread, value: number): void => {
    readings[name] = {
      value,
      parts: [
        { source: name, effect: deg(spread[angle]), shape: 'normal', dof: Number.POSITIVE_INFINITY },
        { source: `zero, ${angle}`, effect: deg(zero), shape: 'rectangular', dof: Number.POSITIVE_INFINITY },
      ],
    }
  }
  for (const side of ['left', 'right'] as const) {
    const off = (most: number): number => deg(2 * most * (random.uniform() - 0.5))
    read(`front ${side} camber`, 'camber', design.camber + off(1))
    read(`front ${side} caster`, 'caster', (design.caster ?? 0) + off(1))
    read(`front ${side} toe`, 'toe', design.toe + off(0.6))
    read(`rear ${side} camber`, 'camber', deg(-0.5) + off(0.2))
    read(`rear ${side} toe`, 'toe', deg(0.1) + off(0.05))
  }
  const limits = Object.fromEntries(
    Object.entries(limitsOf(spec)).map(([name, { low, high, preferred }]) => [
      name,
      { low, high, ...(preferred === null ? {} : { preferred }) },
    ]),
  )
  return { axles: [{ end: 'front', left: wheel(), right: wheel() }], readings, limits }
}

const json = (name: string): unknown => JSON.parse(readFileSync(new URL(name, folder), 'utf8'))

function checked<T>(reading: Reading<T>): T {
  if (reading.ok) return reading.value
  throw new Error(
    `A file of the demo has faults: ${reading.problems.map((p) => `${p.field}: ${p.wrong}`).join(' ')}`,
  )
}
