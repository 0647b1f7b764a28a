import type { Adjuster } from './adjuster.ts'

/** Near its end a washer hardly moves its point any more and soon slips back. */
const nearEnd = (10 * Math.PI) / 180

/**
 * Whether a setting stands so near an end of its range that the hand should know: within 10° for an
 * eccentric, within the last step for anything else.
 *
 * @source common practice, no source
 */
export function isNearEnd(adjuster: Adjuster, setting: number): boolean {
  const left = Math.min(setting - adjuster.range[0], adjuster.range[1] - setting)
  return adjuster.kind === 'eccentric' ? left < nearEnd - 1e-9 : left < adjuster.step * (1 - 1e-9)
}
