import { combine, type Measured, propagate } from '../measure/index.ts'

/**
 * How an angle follows the ride height.
 *
 * @source definition
 */
export type HeightResponse =
  /** Slope, rad/m, + when the angle grows as the body rises. */
  | { readonly slope: Measured }
  /** Angle over height from a corner model, and how far its change is trusted (a Measured factor about 1). */
  | { readonly curve: (height: number) => number; readonly trust: Measured }

/**
 * What an angle would be at another ride height than it was read at.
 *
 *     angle + slope·(wanted − readAt)     or     angle + trust·(curve(wanted) − curve(readAt))
 *
 * @param readAt height during the reading, m
 * @param wanted height of the sheet, m; exact when it is a limit
 * @throws {Refusal} `not-finite` from the measure room when the curve gives no number
 * @source own derivation: docs/methods/height.md
 * @example atHeight(exact(0.01), { readAt: exact(0.4), wanted: exact(0.38), response: { slope: exact(0.1) } }).value // 0.008
 */
export function atHeight(
  angle: Measured,
  {
    readAt,
    wanted,
    response,
  }: { readonly readAt: Measured; readonly wanted: Measured; readonly response: HeightResponse },
): Measured {
  const change =
    'slope' in response
      ? propagate(([s, from, to]) => s! * (to! - from!), [response.slope, readAt, wanted])
      : propagate(
          ([trust, from, to]) => trust! * (response.curve(to!) - response.curve(from!)),
          [response.trust, readAt, wanted],
        )
  return combine([
    { of: angle, times: 1 },
    { of: change, times: 1 },
  ])
}
