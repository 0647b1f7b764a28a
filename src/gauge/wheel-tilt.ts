import { finiteReading, gaugeRefusal } from './gauge-refusal.ts'

/** No wheel that a vehicle stands on leans further, rad. @source own choice */
const MOST = Math.PI / 4

/** Passes on what an inclinometer shows on a wheel, where a wheel can lean so far. */
export function wheelTilt(value: number, at: string): number {
  if (Math.abs(finiteReading(value, at)) <= MOST) return value
  throw gaugeRefusal(
    'not-level',
    at,
    value,
    `The inclinometer is said to show ${((value * 180) / Math.PI).toPrecision(3).replace('-', '−')}° at the wheel, and no wheel leans beyond 45°.`,
    'Read it again, and mind the decimal point and the unit; a gauge that counts from the level shows 90° less the lean.',
  )
}
