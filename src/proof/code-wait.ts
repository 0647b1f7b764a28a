/** Wrong codes that were typed for one person on one device since the last right one. @source definition */
export interface WrongCodes {
  readonly count: number
  /** When the last one was typed, ms. */
  readonly last: number
}

/**
 * How long the next code must wait, ms: nothing after two wrong ones, then five seconds, twice as long each time, at most
 * a quarter of an hour. A clock that was set back waits no longer than that.
 *
 * @param now ms, by the clock that `last` is of
 * @source own derivation: docs/methods/record.md
 * @example codeWait({ count: 3, last: 0 }, 2000) // 3000
 */
export function codeWait({ count, last }: WrongCodes, now: number): number {
  if (count < free + 1) return 0
  const whole = Math.min(first * 2 ** (count - free - 1), longest)
  return Math.min(Math.max(0, last + whole - now), whole)
}

/** @source own choice */
const free = 2
const first = 5000
const longest = 15 * 60_000
