const degree = Math.PI / 180
const mm = 0.001

/** Minutes that a check by hand takes at one place. @source from memory, common practice, no source */
export const checkMinutes = {
  'rock at 12 and 6': 3,
  'rock at 3 and 9': 2,
  'lever at the bush': 4,
  'spin the bearing': 3,
  'looked at': 3,
  'free movement of the steering wheel': 2,
  'pull swaps with the front wheels': 30,
} as const

/** A further reading of an axle: what both wheels are read for, how long that takes, and how well one difference of them is known. */
export const readingMinutes = {
  camber: { minutes: 6, spread: 0.14 * degree },
  'caster and SAI by a sweep': { minutes: 14, spread: 0.35 * degree },
  toe: { minutes: 10, spread: 0.11 * degree },
  'ride height': { minutes: 3, spread: 1.7 * mm },
  'set-back': { minutes: 6, spread: 2 * mm },
} as const
