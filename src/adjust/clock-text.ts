/**
 * A clock angle as the hand reads it, to a quarter of an hour (7.5°).
 *
 * @param angle rad clockwise from 12 o'clock
 * @returns "10", "10:30"; `o'clock` is added by the speaker
 * @source common practice, no source
 * @example clockText(5.236) // '10'
 */
export function clockText(angle: number): string {
  const quarters = Math.round((angle * 24) / Math.PI)
  const whole = ((quarters % 48) + 48) % 48
  const hour = Math.floor(whole / 4) || 12
  const minute = (whole % 4) * 15
  return minute === 0 ? `${hour}` : `${hour}:${minute}`
}
