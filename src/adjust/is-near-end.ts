import type { Adjuster } from './adjuster.ts'

/** Near its end a washer hardly moves its point any more and soon slips back. */
const nearEnd = (10 * Math.PI) / 180
const wholeTurn = 2 * Math.PI * (1 - 1e-9)

/**
 * Whether a setting stands so near an end of its range that the hand should know: within 10° for an
 * eccentric, within the last step for anything else; a wedge has no end, nor has a sleeve that turns all the way round.
 *
 * @source common practice, no source
 */
export function isNearEnd(adjuster: Adjuster, setting: number): boolean {
  // a sleeve that goes all the way round has no end
  const round =
    adjuster.kind === 'offset sleeve' && adjuster.range[1] - adjuster.range[0] > wholeTurn - adjuster.step
  if (round || adjuster.kind === 'wedge') return false
  const left = Math.min(setting - adjuster.range[0], adjuster.range[1] - setting)
  return adjuster.kind === 'eccentric' ? left < nearEnd - 1e-9 : left < adjuster.step * (1 - 1e-9)
}
