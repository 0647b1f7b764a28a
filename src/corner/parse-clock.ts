import { type Radian, Refusal, rad } from '../quantity/index.ts'

/** Why the corner room says no where a single text or name is asked about. @source definition */
export type CornerRefusal =
  | 'not-a-clock'
  | 'not-a-rate'
  | 'no-such-point'
  | 'not-one-corner'
  | 'not-a-whole-axle'
  | 'no-such-layout'
  | 'not-for-this-layout'
  | 'no-spread'
  | 'not-fitted'

/**
 * A clock position as the hand says it: "4 o'clock", "10:30", or an angle clockwise from 12 in degrees.
 *
 *     angle = (hours + minutes / 60) · 30°
 *
 * @returns rad, 0 ≤ angle < 2π, clockwise from 12 o'clock
 * @throws {Refusal} `not-a-clock`
 * @source definition
 * @example inDegrees(parseClock("10:30")) // 315
 */
export function parseClock(text: string): Radian {
  const hand = /^\s*(1[0-2]|[1-9])(?::([0-5]\d))?\s*(?:o['’]?\s?clock)?\s*$/i.exec(text)
  if (hand && (hand[2] !== undefined || /clock/i.test(text)))
    return rad((((Number(hand[1]) % 12) + Number(hand[2] ?? 0) / 60) * Math.PI) / 6)
  const degrees = /^\s*(\d+(?:[.,]\d+)?)\s*(?:°|deg)\s*$/.exec(text)
  const angle = degrees ? Number(degrees[1]!.replace(',', '.')) : Number.NaN
  if (angle >= 0 && angle < 360) return rad((angle * Math.PI) / 180)
  throw new Refusal<CornerRefusal>({
    code: 'not-a-clock',
    at: 'clock',
    given: text,
    sentence: `“${text}” is no clock position.`,
    remedy: 'Say where the mark stands as on a clock face: "4 o\'clock", "10:30", or "315°" from 12.',
  })
}
