import type { CornerPoints } from '../linkage/index.ts'

/** How well the points of a corner are known. */
export type PointsKnown = 'typical' | 'measured'

/** Standard deviations of a response before any move was recorded. */
interface PriorRow {
  readonly layout: CornerPoints['layout']
  readonly known: PointsKnown
  /** Of each response, as a share of itself. */
  readonly ofItself: number
  /** Of each response, as a share of the adjuster's largest on any angle: what an adjuster does beside its job. */
  readonly ofLargest: number
}

/**
 * How far a corner's response may lie from the one of its points.
 * Typical: points of the layout, 20 mm of standard deviation in each coordinate, on invented corners
 * (docs/methods/learned-response.md gives the numbers it was rounded up from). Measured: a tape's 3 mm.
 *
 * @source own choice, from a computation: docs/methods/learned-response.md
 */
export const responsePriors: readonly PriorRow[] = [
  { layout: 'double wishbone', known: 'typical', ofItself: 0.25, ofLargest: 0.1 },
  { layout: 'double wishbone', known: 'measured', ofItself: 0.04, ofLargest: 0.02 },
  { layout: 'strut', known: 'typical', ofItself: 0.25, ofLargest: 0.1 },
  { layout: 'strut', known: 'measured', ofItself: 0.04, ofLargest: 0.02 },
  { layout: 'five-link', known: 'typical', ofItself: 0.35, ofLargest: 0.15 },
  { layout: 'five-link', known: 'measured', ofItself: 0.06, ofLargest: 0.03 },
]
