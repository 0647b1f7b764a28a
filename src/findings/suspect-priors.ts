import type { SuspectKind } from './suspect-kind.ts'

const degree = Math.PI / 180
const mm = 0.001

/** How often a kind is the cause, and how large it is when it is. */
export interface KindPrior {
  /** Weight among all faults that a vehicle can have; shared by all suspects of the kind. */
  readonly weight: number
  readonly unit: 'm' | 'rad'
  /** Mean and spread of the size (of a normal distribution, cut at the ends), SI. */
  readonly mean: number
  readonly spread: number
  /** Below this nobody calls it a fault. */
  readonly low: number
  readonly high: number
  /** Share of those that go against the main way; 0 where physics says only one way. */
  readonly back: number
}

/** Sizes in mm or degrees. */
function kind(
  weight: number,
  unit: 'm' | 'rad',
  [low, mean, spread, high]: readonly [number, number, number, number],
  back = 0,
): KindPrior {
  const scale = unit === 'm' ? mm : degree
  return {
    weight,
    unit,
    mean: mean * scale,
    spread: spread * scale,
    low: low * scale,
    high: high * scale,
    back,
  }
}

/**
 * How often each kind is the cause on a vehicle that comes for its angles, and how large it is: least, mean, spread,
 * largest; mm or degrees. One-signed where physics says so: a spring sags, a rod gets shorter when it bends, a joint
 * wears along its load. Sizes of adjusters count in thousandths of half their range.
 *
 * @source from memory, common practice, no source
 */
export const suspectPriors: Readonly<Record<SuspectKind, KindPrior>> = {
  'out of adjustment': kind(0, 'm', [0, 1, 1, 1]),
  'bent lower arm': kind(8, 'm', [1.5, 5, 6, 40], 0.2),
  'bent upper arm': kind(3, 'm', [1.5, 4, 5, 35], 0.2),
  'bent link': kind(4, 'm', [1.5, 4, 5, 30]),
  'bent knuckle': kind(5, 'rad', [0.2, 0.9, 0.8, 6], 0.4),
  'bent strut tube': kind(5, 'rad', [0.2, 0.9, 0.8, 6], 0.4),
  'bent steering arm or tie rod': kind(7, 'm', [1, 4, 2.5, 15], 0.2),
  'bent axle or beam': kind(4, 'rad', [0.2, 0.8, 0.5, 3], 0.4),
  'shifted tower': kind(3, 'm', [2, 7, 7, 40], 0.3),
  'cross-member shifted sideways': kind(3, 'm', [1.5, 5, 4, 20], 0.5),
  'cross-member shifted up or down': kind(1, 'm', [1.5, 4, 3, 15], 0.5),
  'cross-member turned': kind(2, 'rad', [0.1, 0.4, 0.3, 2], 0.5),
  'sagged spring': kind(10, 'm', [6, 18, 11, 60]),
  'collapsed bush': kind(13, 'm', [1, 3.5, 1.8, 12]),
  'worn ball joint': kind(12, 'm', [0.4, 1.4, 0.9, 5]),
  'worn kingpin': kind(5, 'rad', [0.1, 0.35, 0.25, 2]),
  'loose wheel bearing': kind(5, 'rad', [0.05, 0.25, 0.15, 1.5]),
  'bush clamped hanging': kind(4, 'm', [4, 10, 5, 30]),
  'eccentric fitted the wrong way round': kind(2, 'm', [0.1, 0.8, 0.5, 2], 0.5),
  'adjuster slipped or at its stop': kind(5, 'm', [0.1, 0.6, 0.4, 2], 0.5),
  'wrong part': kind(4, 'm', [1.5, 5, 3, 20], 0.5),
  'rack off centre': kind(3, 'm', [1.5, 4, 2.5, 12], 0.5),
  'axle shifted': kind(2, 'm', [2, 8, 6, 25], 0.5),
  'axle turned': kind(4, 'rad', [0.1, 0.35, 0.25, 1.5], 0.5),
  'tyre pulls': kind(6, 'rad', [0, 1, 1, 3]),
  'gauge not zeroed': kind(5, 'rad', [0.15, 0.5, 0.3, 1.5], 0.5),
  'floor not level': kind(4, 'm', [3, 7, 3.5, 20], 0.5),
}

/** Share of vehicles that have nothing wrong, and whose adjusters alone are wrong. @source from memory, common practice, no source */
export const soundShare = { healthy: 0.15, misadjusted: 0.2 } as const

/** Shares of what happened to the adjusters of a vehicle with a fault. @source from memory, common practice, no source */
export const storyShares = { 'set before': 0.55, 'set after': 0.3, anywhere: 0.15 } as const
