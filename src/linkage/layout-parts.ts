import type { AnyCornerPoints, Point } from './points.ts'

/** A link: its name, its body-fixed and its knuckle-fixed end. */
interface Leg {
  readonly name: string
  readonly inner: string
  readonly outer: string
}

/** An arm: the two body points of its axis, front first, and its outer point. */
interface Arm {
  readonly name: 'upper' | 'lower'
  readonly frontInner: string
  readonly rearInner: string
  readonly outer: string
}

/** What a layout is made of, by the names of its points. */
export interface LayoutParts {
  readonly legs: readonly Leg[]
  readonly arms: readonly Arm[]
  /** Body-fixed points that can be displaced. */
  readonly body: readonly string[]
  /** Knuckle-fixed points that can be displaced; `wheelCentre` and `strutTop` among them. */
  readonly knuckle: readonly string[]
  /** Knuckle-fixed points that a pose reports. */
  readonly shown: readonly string[]
  /** Lower and upper end of the steering axis; null where there is none. */
  readonly axis: { readonly lower: string; readonly upper: string } | null
}

const leg = (name: string, inner: string, outer: string): Leg => ({ name, inner, outer })
const arm = (name: 'upper' | 'lower'): Arm => ({
  name,
  frontInner: `${name}FrontInner`,
  rearInner: `${name}RearInner`,
  outer: `${name}Outer`,
})
const lowerLegs = [
  leg('lowerFront', 'lowerFrontInner', 'lowerOuter'),
  leg('lowerRear', 'lowerRearInner', 'lowerOuter'),
]
const five = [0, 1, 2, 3, 4] as const

const table: Readonly<Record<AnyCornerPoints['layout'], LayoutParts>> = {
  'double wishbone': {
    legs: [
      leg('upperFront', 'upperFrontInner', 'upperOuter'),
      leg('upperRear', 'upperRearInner', 'upperOuter'),
      ...lowerLegs,
      leg('tie', 'tieInner', 'tieOuter'),
    ],
    arms: [arm('upper'), arm('lower')],
    body: ['upperFrontInner', 'upperRearInner', 'lowerFrontInner', 'lowerRearInner', 'tieInner'],
    knuckle: ['upperOuter', 'lowerOuter', 'tieOuter', 'wheelCentre'],
    shown: ['upperOuter', 'lowerOuter', 'tieOuter'],
    axis: { lower: 'lowerOuter', upper: 'upperOuter' },
  },
  strut: {
    legs: [...lowerLegs, leg('tie', 'tieInner', 'tieOuter')],
    arms: [arm('lower')],
    body: ['lowerFrontInner', 'lowerRearInner', 'topMount', 'tieInner'],
    knuckle: ['lowerOuter', 'strutLower', 'strutTop', 'tieOuter', 'wheelCentre'],
    shown: ['lowerOuter', 'strutLower', 'tieOuter'],
    axis: { lower: 'lowerOuter', upper: 'topMount' },
  },
  'five-link': {
    legs: five.map((i) => leg(`link${i}`, `inner${i}`, `outer${i}`)),
    arms: [],
    body: five.map((i) => `inner${i}`),
    knuckle: [...five.map((i) => `outer${i}`), 'wheelCentre'],
    shown: five.map((i) => `outer${i}`),
    axis: null,
  },
  'semi-trailing arm': {
    legs: [],
    arms: [{ name: 'lower', frontInner: 'innerFront', rearInner: 'innerRear', outer: 'wheelCentre' }],
    body: ['innerFront', 'innerRear'],
    knuckle: ['eyeFront', 'eyeRear', 'wheelCentre'],
    shown: ['wheelCentre'],
    axis: null,
  },
}

/** The parts of a layout; undefined for a layout that is not known. */
export const partsOf = (layout: AnyCornerPoints['layout']): LayoutParts => table[layout]

/** Knuckle points that have no name of their own in the corner: where they lie at design. */
const liesAt: Readonly<Record<string, string>> = {
  strutTop: 'topMount',
  eyeFront: 'innerFront',
  eyeRear: 'innerRear',
}

/** A point of the corner by the name that displacements use. `strutTop` is where the top mount was at design. */
export function designPoint(points: AnyCornerPoints, name: string): Point {
  if (points.layout !== 'five-link' || name === 'wheelCentre')
    return (points as unknown as Record<string, Point>)[liesAt[name] ?? name]!
  const link = points.links[Number(name.slice(5))]!
  return name.startsWith('inner') ? link.inner : link.outer
}
