import type { AxleEnd, ReadingName, Side } from '../linkage/index.ts'
import { combine, type Measured, normal } from '../measure/index.ts'
import type { FindingsProblem, TreadFound } from './findings-problem.ts'

const degree = Math.PI / 180

/** Depth that a tyre's inner shoulder keeps over its outer one, m per rad of camber and of toe that are too much. @source from memory, common practice, no source */
const worn = { camber: 0.0004 / degree, toe: 0.0008 / degree } as const
/** How far that is off on any one vehicle, m, and as a share: how it is driven, pressures, its life so far. @source from memory, common practice, no source */
const habit = { spread: 0.00035, share: 0.5 } as const

/** What the slope of one tread says, as a row on the wheel's camber and toe. */
export interface TreadRow {
  readonly name: string
  readonly of: Float64Array
  readonly measured: Measured
}

/**
 * The slope of a tyre's tread across its width as weak evidence of the wheel's camber and toe: a wheel that leans out or
 * toes in wears its outer shoulder.
 *
 * @param row the row of a wheel's reading without what gauges and floor add; null where the model has none
 * @returns null where no limit says what camber and toe ought to be
 * @source own derivation: docs/methods/findings.md
 */
export function treadRow(
  { wheel, outer, inner }: TreadFound,
  { limits }: Pick<FindingsProblem, 'limits'>,
  row: (name: ReadingName) => Float64Array | null,
): TreadRow | null {
  const [end, side] = wheel.split(' ') as [AxleEnd, Side]
  const wanted = (angle: 'camber' | 'toe'): number | null => {
    const limit = limits[`${end} ${side} ${angle}`]
    const middle = limit && (limit.preferred ?? (limit.low + limit.high) / 2)
    return middle !== undefined && Number.isFinite(middle) ? middle : null
  }
  const [camber, toe] = [wanted('camber'), wanted('toe')]
  const [camberRow, toeRow] = [row(`${end} ${side} camber`), row(`${end} ${side} toe`)]
  if (camber === null || toe === null || !camberRow || !toeRow) return null
  const slope = combine([
    { of: outer, times: 1 },
    { of: inner, times: -1 },
  ])
  const off = Math.hypot(habit.spread, habit.share * slope.value)
  return {
    name: `tread, ${wheel}`,
    of: camberRow.map((x, i) => -worn.camber * x - worn.toe * toeRow[i]!),
    measured: {
      value: slope.value - worn.camber * camber - worn.toe * toe,
      parts: [...slope.parts, ...normal(off, `habit of ${wheel}`).parts],
    },
  }
}
