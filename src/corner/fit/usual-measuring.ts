/** How well something is usually measured, and how long that takes. @source definition */
export interface UsualMeasuring {
  /** Standard uncertainty, m or rad. */
  readonly spread: number
  readonly minutes: number
}

const degree = Math.PI / 180

/**
 * What a workshop reaches with tape, rule, inclinometer, toe gauge and turn plates. A tape between two pivots is hardly
 * better for being read twice: finding their centres is what it lacks.
 *
 * @source own choice, after common practice
 * @example usualMeasuring.tape.spread // 0.0015
 */
export const usualMeasuring = {
  /** From pivot to pivot. */
  tape: { spread: 0.0015, minutes: 2 },
  /** Square to the vehicle, with plumb lines. */
  across: { spread: 0.003, minutes: 4 },
  /** Height above the floor. */
  rule: { spread: 0.0015, minutes: 1 },
  slope: { spread: 0.15 * degree, minutes: 2 },
  camber: { spread: 0.06 * degree, minutes: 4 },
  toe: { spread: 0.04 * degree, minutes: 6 },
  /** Caster and SAI. */
  axis: { spread: 0.2 * degree, minutes: 10 },
  /** Change of an angle from one height to another. */
  change: { spread: 0.05 * degree, minutes: 8 },
  /** Turned on plates. */
  lock: { spread: 0.2 * degree, minutes: 8 },
  /** Change by a trial move. */
  moved: { spread: 0.05 * degree, minutes: 15 },
} as const satisfies Readonly<Record<string, UsualMeasuring>>
