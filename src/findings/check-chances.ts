/** What a check by hand can show: how often it does when the thing is there, and when it is not. */
export interface CheckChance {
  readonly there: number
  readonly not: number
}

/**
 * What hands, eyes and the road see, by what is there.
 *
 * @source from memory, common practice, no source
 */
export const checkChances = {
  'rock at 12 and 6, ball joint': { there: 0.7, not: 0.04 },
  'rock at 12 and 6, kingpin': { there: 0.8, not: 0.06 },
  'rock at 12 and 6, wheel bearing': { there: 0.8, not: 0.04 },
  'rock at 3 and 9, rod end': { there: 0.75, not: 0.05 },
  'rock at 3 and 9, wheel bearing': { there: 0.6, not: 0.05 },
  'lever at the bush': { there: 0.75, not: 0.05 },
  'spin the bearing': { there: 0.5, not: 0.04 },
  'free movement of the steering wheel, rod end': { there: 0.4, not: 0.05 },
  'looked at, arm or link': { there: 0.45, not: 0.02 },
  'looked at, knuckle': { there: 0.2, not: 0.01 },
  'looked at, strut': { there: 0.35, not: 0.02 },
  'looked at, steering': { there: 0.5, not: 0.02 },
  'looked at, spring': { there: 0.2, not: 0.01 },
  'looked at, beam': { there: 0.3, not: 0.01 },
  'looked at, mounting': { there: 0.3, not: 0.01 },
} as const satisfies Readonly<Record<string, CheckChance>>

/** Of the play that a rocked wheel shows, how often the brake takes it away. @source from memory, common practice, no source */
export const brakeTakesAway = { bearing: 0.65, other: 0.03 } as const

/** What the road answers. @source from memory, common practice, no source */
export const roadChances = {
  /** A pull that the angles explain stays; one that they do not may be a little of a tyre's on any vehicle. */
  swaps: { tyre: 0.85, explained: 0.07, unexplained: 0.4 },
  wanders: { loose: 0.4, other: 0.12 },
  knocks: { loose: 0.5, other: 0.08 },
} as const
