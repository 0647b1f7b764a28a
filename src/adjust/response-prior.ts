import type { AnyCornerPoints } from '../linkage/index.ts'

/** How well the points of a corner are known. */
export type PointsKnown = 'typical' | 'measured'

/** Standard deviations of a response before any move was recorded. */
interface PriorRow {
  readonly layout: AnyCornerPoints['layout']
  readonly known: PointsKnown
  /** Of each response, as a share of itself. */
  readonly ofItself: number
  /** Of each response, as a share of the adjuster's largest on any angle: what an adjuster does beside its job. */
  readonly beside: number
  /** The same for toe, which answers to everything. */
  readonly besideToe: number
}

/**
 * How far a corner's response may lie from the one of its points: rounded up from the scatter on invented
 * corners of each layout when every coordinate is off by 15 mm of standard deviation (typical points) or by
 * 3 mm (points measured with a tape); docs/methods/learned-response.md has the numbers, a test repeats them.
 *
 * @source own choice
 */
export const responsePriors: readonly PriorRow[] = [
  { layout: 'double wishbone', known: 'typical', ofItself: 0.25, beside: 0.1, besideToe: 0.3 },
  { layout: 'double wishbone', known: 'measured', ofItself: 0.04, beside: 0.02, besideToe: 0.05 },
  { layout: 'strut', known: 'typical', ofItself: 0.25, beside: 0.1, besideToe: 0.25 },
  { layout: 'strut', known: 'measured', ofItself: 0.04, beside: 0.02, besideToe: 0.05 },
  { layout: 'five-link', known: 'typical', ofItself: 0.35, beside: 0.2, besideToe: 0.3 },
  { layout: 'five-link', known: 'measured', ofItself: 0.06, beside: 0.04, besideToe: 0.05 },
  { layout: 'semi-trailing arm', known: 'typical', ofItself: 0.25, beside: 0.1, besideToe: 0.25 },
  { layout: 'semi-trailing arm', known: 'measured', ofItself: 0.04, beside: 0.02, besideToe: 0.05 },
]
