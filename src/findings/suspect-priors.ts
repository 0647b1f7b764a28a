import type { SuspectKind } from './suspect-kind.ts'

const degree = Math.PI / 180
const mm = 0.001

/** How often a kind is the cause, and how large it is when it is. */
export interface KindPrior {
  /** Weight among all faults that a vehicle can have; shared by all suspects of the kind. */
  readonly weight: number
  readonly unit: 'm' | 'rad'
  /** Mean and spread of the size (of a normal distribution, cut at the ends). */
  readonly mean: number
  readonly spread: number
  readonly low: number
  readonly high: number
}

const oneWay = (weight: number, unit: 'm' | 'rad', mean: number, spread: number, high: number): KindPrior => {
  const scale = unit === 'm' ? mm : degree
  return { weight, unit, mean: mean * scale, spread: spread * scale, low: 0, high: high * scale }
}
const eitherWay = (weight: number, unit: 'm' | 'rad', spread: number, high: number): KindPrior => ({
  ...oneWay(weight, unit, 0, spread, high),
  low: -high * (unit === 'm' ? mm : degree),
})

/**
 * How often each kind is the cause on a vehicle that comes for its angles, and how large it is: mm or degrees.
 * One-signed where physics says so: a spring sags, a rod gets shorter when it bends, a joint wears along its load.
 *
 * @source from memory, common practice, no source
 */
export const suspectPriors: Readonly<Record<SuspectKind, KindPrior>> = {
  'out of adjustment': oneWay(0, 'm', 1, 1, 1),
  'bent lower arm': eitherWay(8, 'm', 7, 30),
  'bent upper arm': eitherWay(2, 'm', 6, 25),
  'bent link': oneWay(3, 'm', 3, 4, 20),
  'bent knuckle': eitherWay(4, 'rad', 1, 4),
  'bent strut tube': eitherWay(4, 'rad', 1, 4),
  'bent steering arm or tie rod': oneWay(6, 'm', 3, 3, 15),
  'bent axle or beam': eitherWay(3, 'rad', 0.8, 4),
  'shifted tower': eitherWay(2, 'm', 8, 30),
  'cross-member shifted sideways': eitherWay(3, 'm', 5, 20),
  'cross-member shifted up or down': eitherWay(1, 'm', 4, 15),
  'cross-member turned': eitherWay(2, 'rad', 0.4, 2),
  'sagged spring': oneWay(10, 'm', 15, 12, 60),
  'collapsed bush': oneWay(14, 'm', 3, 2.5, 12),
  'worn ball joint': oneWay(14, 'm', 1.2, 1, 5),
  'worn kingpin': oneWay(5, 'rad', 0.4, 0.4, 2),
  'loose wheel bearing': oneWay(5, 'rad', 0.25, 0.25, 1.5),
  'bush clamped hanging': oneWay(4, 'm', 8, 6, 30),
  'eccentric fitted the wrong way round': eitherWay(2, 'm', 1, 2),
  'adjuster slipped or at its stop': eitherWay(6, 'm', 1, 2),
  'wrong part': eitherWay(3, 'm', 5, 20),
  'rack off centre': eitherWay(3, 'm', 3, 12),
  'axle shifted': eitherWay(2, 'm', 7, 25),
  'axle turned': eitherWay(3, 'rad', 0.3, 1.5),
  'tyre pulls': oneWay(6, 'rad', 1, 1, 3),
  'gauge not zeroed': eitherWay(5, 'rad', 0.35, 1.5),
  'floor not level': eitherWay(4, 'm', 5, 20),
}

/** Share of vehicles that have nothing wrong, and whose adjusters alone are wrong. @source from memory, common practice, no source */
export const soundShare = { healthy: 0.15, misadjusted: 0.2 } as const

/** Shares of what happened to the adjusters of a vehicle with a fault. @source from memory, common practice, no source */
export const storyShares = { 'set before': 0.55, 'set after': 0.3, anywhere: 0.15 } as const
