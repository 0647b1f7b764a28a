// Problems with a known cause: an exact corner is displaced by it and read, with small errors of known size.
import { type Corner, cornerPoints, readCorner, startingLayout } from '../../../src/corner/index.ts'
import type { FindingsProblem } from '../../../src/findings/index.ts'
import {
  type Displacement,
  mechanism,
  poseAt,
  type ReadingName,
  type Side,
} from '../../../src/linkage/index.ts'
import { type Measured, normal } from '../../../src/measure/index.ts'
import { metre } from '../../../src/quantity/index.ts'

const degree = Math.PI / 180
const sides = ['left', 'right'] as const

async function cornerOf(id: string): Promise<Corner> {
  const read = readCorner(await startingLayout(id))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}

export const strut = await cornerOf('strut-front')
export const coilLower = await cornerOf('wishbone-coil-lower')
export const torsionBar = await cornerOf('wishbone-torsion-bar')
export const trailing = await cornerOf('semi-trailing-rear')
export const leafAxle = await cornerOf('solid-axle-leaf-front')
export const coilAxle = await cornerOf('solid-axle-coil-rear')
export const twistBeam = await cornerOf('twist-beam-rear')
export const fiveLink = await cornerOf('five-link-rear')

export interface Cause {
  readonly left?: Displacement
  readonly right?: Displacement
  /** Of every angle that is read, rad. */
  readonly spread?: number
  readonly settings?: FindingsProblem['axles'][number]['settings']
}

/** Angles of a wheel whose corner is displaced, standing at its design height. */
export function anglesOf(
  corner: Corner,
  displaced: Displacement,
): Record<'camber' | 'caster' | 'sai' | 'toe', number> {
  const { camber, caster, sai, toe } = poseAt(mechanism(cornerPoints(corner), displaced), {
    travel: metre(0),
    rack: metre(0),
  })
  return { camber, caster: caster ?? 0, sai: sai ?? 0, toe }
}

export const nothingFound: FindingsProblem = {
  axles: [],
  readings: {},
  heights: {},
  turns: {},
  setBack: null,
  limits: {},
  heightLimits: {},
  checks: [],
  play: [],
  treads: [],
  road: [],
}

/** One axle read with a known cause; its limits stand about the design. */
export function problemOf(corner: Corner, cause: Cause = {}): FindingsProblem {
  const spread = cause.spread ?? 0.05 * degree
  const readings: Partial<Record<ReadingName, Measured>> = {}
  const limits: FindingsProblem['limits'] = {}
  const design = anglesOf(corner, {})
  for (const side of sides) {
    const angles = anglesOf(corner, cause[side] ?? {})
    for (const angle of ['camber', 'caster', 'sai', 'toe'] as const) {
      if (corner.axle === 'rear' && (angle === 'caster' || angle === 'sai')) continue
      const name: ReadingName = `${corner.axle} ${side} ${angle}`
      readings[name] = normal(spread, `reading: ${name}`, angles[angle])
      const half = angle === 'toe' ? 0.1 * degree : 0.5 * degree
      Object.assign(limits, { [name]: { low: design[angle] - half, high: design[angle] + half } })
    }
  }
  return {
    ...nothingFound,
    axles: [{ end: corner.axle, corner, settings: cause.settings ?? { left: {}, right: {}, both: {} } }],
    readings,
    heights: {
      [`${corner.axle} left`]: normal(0.0005, 'left height', 0),
      [`${corner.axle} right`]: normal(0.0005, 'right height', 0),
    },
    limits,
  }
}

/** The same vehicle seen in a mirror. */
export function mirrored(problem: FindingsProblem): FindingsProblem {
  const other = (name: string): string =>
    name.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left'))
  const swap = <T>(record: Readonly<Record<string, T>>): Record<string, T> =>
    Object.fromEntries(Object.entries(record).map(([name, value]) => [other(name), value]))
  const wheel = <T extends { readonly wheel: string | null }>(one: T): T => ({
    ...one,
    wheel: one.wheel && other(one.wheel),
  })
  const turned = (side: Side): Side => (side === 'left' ? 'right' : 'left')
  return {
    ...problem,
    axles: problem.axles.map((axle) => ({
      ...axle,
      settings: {
        left: axle.settings.right,
        right: axle.settings.left,
        both: Object.fromEntries(
          Object.entries(axle.settings.both).map(([id, x]) => [id, x === null ? null : -x]),
        ),
      },
    })),
    readings: swap(problem.readings),
    heights: swap(problem.heights),
    turns: Object.fromEntries(Object.entries(problem.turns).map(([side, m]) => [turned(side as Side), m])),
    setBack: problem.setBack && {
      value: -problem.setBack.value,
      parts: problem.setBack.parts.map((part) => ({ ...part, effect: -part.effect })),
    },
    limits: swap(problem.limits),
    heightLimits: swap(problem.heightLimits),
    checks: problem.checks.map(wheel),
    play: problem.play.map(wheel),
    treads: problem.treads.map(wheel),
    road: problem.road.map(({ question, answer }) => ({
      question: other(question) as typeof question,
      answer,
    })),
  }
}
