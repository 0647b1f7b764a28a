import { type AnyCornerPoints, type Mechanism, mechanism } from '../../linkage/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { cornerPoints } from '../corner-points.ts'
import { isWholeAxle } from '../layouts.ts'
import type { CornerRefusal } from '../parse-clock.ts'
import type { Posed } from './posed.ts'
import { cornerWith, type Unknowns, wordsOf } from './unknowns.ts'

/** A corner with some values of its unknowns, and what was worked out of it so far. @source definition */
export interface CornerAt {
  readonly unknowns: Unknowns
  readonly values: ArrayLike<number>
  /** Points and mechanism, made when first asked for. */
  readonly linkage: () => { readonly points: AnyCornerPoints; readonly mechanism: Mechanism }
  /** Poses that were worked out, by drive. */
  readonly posed: Map<string, Posed>
}

/** A corner with these values of its unknowns. */
export function cornerAt(unknowns: Unknowns, values: ArrayLike<number>): CornerAt {
  let made: ReturnType<CornerAt['linkage']> | undefined
  return {
    unknowns,
    values,
    posed: new Map(),
    linkage: () => {
      if (isWholeAxle(unknowns.corner.layout))
        throw new Refusal<CornerRefusal>({
          code: 'not-for-this-layout',
          at: 'layout',
          given: unknowns.corner.layout,
          sentence: `A ${unknowns.corner.layout} is fitted to lengths, heights, slopes and readings at ride height only: its two wheels move together.`,
          remedy: 'Leave out what was read at another height, at lock or after a move.',
        })
      if (!made) {
        const points = cornerPoints(cornerWith(unknowns, values))
        made = { points, mechanism: mechanism(points) }
      }
      return made
    },
  }
}

/** Where the coordinates of a point stand among the unknowns. */
export function placeOf({ corner, points }: Unknowns, name: string): number {
  const at = points.indexOf(name)
  if (at >= 0) return 3 * at
  throw new Refusal<CornerRefusal>({
    code: 'no-such-point',
    at: `points.${name}`,
    given: name,
    sentence: `“${wordsOf(name)}” is no point that a ${corner.layout} is computed with, so measuring it says nothing of how the wheel moves.`,
    remedy: `Measure one of: ${points.map(wordsOf).join(', ')}.`,
  })
}
