import { metre, rad } from '../../quantity/index.ts'
import type { Corner } from '../corner-schema.ts'
import { familyOf } from '../layouts.ts'
import { neededPoints } from '../needed-points.ts'
import type { Family } from '../point-names.ts'
import { pointOf } from '../point-of.ts'

/** The three directions of a coordinate, as a person says them. @source definition */
export type Way = 'lengthways' | 'across' | 'up'

export const ways: readonly Way[] = ['lengthways', 'across', 'up']

/**
 * What is not known of a corner: x, y and z of every point that its layout is computed with, then camber and toe at
 * the design pose. Numbers in this order: point by point, then the two angles.
 *
 * @source definition
 */
export interface Unknowns {
  readonly corner: Corner
  readonly family: Family
  /** By the file's names. */
  readonly points: readonly string[]
  readonly camber: number
  readonly toe: number
  readonly count: number
}

/** The unknowns of a corner model. */
export function unknownsOf(corner: Corner): Unknowns {
  const points = neededPoints(corner.layout, corner.axle, Object.keys(corner.points))
  const camber = 3 * points.length
  return { corner, family: familyOf(corner.layout), points, camber, toe: camber + 1, count: camber + 2 }
}

/** Their values as the corner model has them. */
export function valuesOf({ corner, points }: Unknowns): number[] {
  return [...points.flatMap((name) => pointOf(corner, name)), corner.wheel.camber, corner.wheel.toe]
}

/** A corner model with other values of its unknowns. */
export function cornerWith({ corner, points, camber, toe }: Unknowns, values: ArrayLike<number>): Corner {
  const moved = { ...corner.points }
  for (const [i, name] of points.entries())
    moved[name] = {
      ...corner.points[name]!,
      at: [metre(values[3 * i]!), metre(values[3 * i + 1]!), metre(values[3 * i + 2]!)],
    }
  return {
    ...corner,
    points: moved,
    wheel: { ...corner.wheel, camber: rad(values[camber]!), toe: rad(values[toe]!) },
  }
}

/** A point's name as words. */
export const wordsOf = (name: string): string => name.replaceAll('-', ' ')
