import type { SuspectKind } from '../../../src/findings/index.ts'

// What the generator of simulated faults draws from. The figures are the generator's own choice (no source): they are
// published here so that whoever judges may know how often each kind comes, never what was drawn.

/** Of all vehicles: nothing wrong, only out of adjustment, one part (or the measuring) at fault. */
export const conditions = { healthy: 0.2, misadjusted: 0.2, faulty: 0.6 } as const

const degree = Math.PI / 180
const mm = 0.001

/** How often a kind comes among faulty vehicles whose layout can have it (relative), and its size, SI. */
export interface FaultFrequency {
  readonly weight: number
  readonly size: { readonly low: number; readonly median: number; readonly high: number }
  readonly unit: 'm' | 'rad'
}

const length = (weight: number, low: number, median: number, high: number): FaultFrequency => ({
  weight,
  size: { low: low * mm, median: median * mm, high: high * mm },
  unit: 'm',
})
const angle = (weight: number, low: number, median: number, high: number): FaultFrequency => ({
  weight,
  size: { low: low * degree, median: median * degree, high: high * degree },
  unit: 'rad',
})

/** Log-normal sizes: median, two standard deviations at `high`, nothing below `low` or above `high`. mm and degrees. */
export const frequencies: Readonly<Record<Exclude<SuspectKind, 'out of adjustment'>, FaultFrequency>> = {
  'bent lower arm': length(9, 2, 5, 18),
  'bent upper arm': length(4, 1.5, 4, 12),
  'bent link': length(4, 1.5, 4, 12),
  'bent knuckle': angle(5, 0.3, 0.8, 2.5),
  'bent strut tube': angle(5, 0.3, 0.8, 2.5),
  'bent steering arm or tie rod': length(7, 1.5, 4, 10),
  'bent axle or beam': angle(5, 0.25, 0.7, 2),
  'shifted tower': length(3, 3, 6, 18),
  'cross-member shifted sideways': length(3, 2, 5, 15),
  'cross-member shifted up or down': length(1, 2, 5, 12),
  'cross-member turned': angle(2, 0.15, 0.4, 1.2),
  'sagged spring': length(10, 8, 20, 45),
  'collapsed bush': length(12, 1.5, 3.5, 7),
  'worn ball joint': length(10, 0.5, 1.5, 4),
  'worn kingpin': angle(4, 0.1, 0.3, 0.9),
  'loose wheel bearing': angle(5, 0.1, 0.25, 0.7),
  'bush clamped hanging': length(3, 5, 11, 25),
  // the size is that of the turn itself; how far the washer stood from its middle decides
  'eccentric fitted the wrong way round': length(3, 0.5, 2, 10),
  // share of half the range, drawn flat from 0.4 to 1; the size here is not used
  'adjuster slipped or at its stop': length(5, 0.5, 2, 10),
  'wrong part': length(4, 2, 5, 12),
  'rack off centre': length(3, 2, 4, 10),
  'axle shifted': length(2, 3, 8, 25),
  'axle turned': angle(4, 0.12, 0.35, 1),
  'tyre pulls': length(6, 1, 1, 1),
  'gauge not zeroed': angle(5, 0.25, 0.5, 1.2),
  // height of one pad, or of one side's pads
  'floor not level': length(4, 4, 7, 14),
}

/** Standard deviations of what differs from vehicle to vehicle and from side to side, SI. */
export const scatter = {
  /** Of each coordinate of a point from the model to one side, m. */
  production: 0.7 * mm,
  /** Of the model's own design angles against the typical ones. */
  designCamber: 0.3 * degree,
  designToe: 0.04 * degree,
  /** Of camber, toe and kingpin of one end of a solid axle or a beam as made. */
  axleCamber: 0.15 * degree,
  axleToe: 0.06 * degree,
  /** Of one spring's free length, and of both of an axle together (load, age), m. */
  spring: 3 * mm,
  springs: 6 * mm,
} as const

/** Half-widths of the sheet's limits, before a factor from 0.6 to 1.2; and how often the sheet has them. */
export const sheet = {
  camber: { within: 0.75 * degree, given: 0.95 },
  caster: { within: 0.75 * degree, given: 0.9 },
  sai: { within: 0.75 * degree, given: 0.4 },
  toe: { within: 0.1 * degree, given: 0.98 },
  height: { within: 10 * mm, given: 0.8 },
} as const

/** What else is drawn: shares of the jobs. */
export const shares = {
  rearExamined: 0.55,
  /** Somebody set the angles inside (before the fault); after it, chasing it; or nobody ever, flat in half the range. */
  history: { 'set before': 0.65, 'set after': 0.2, never: 0.15 },
  marksRecorded: 0.5,
  /** The corner's points were measured and fitted instead of typical: spread 3 mm. */
  fitted: 0.25,
  fittedSpread: 3 * mm,
  noSteerGauge: 0.25,
  noStrings: 0.08,
  heights: 0.85,
  turns: 0.3,
  setBack: 0.5,
  handChecks: 0.5,
  play: 0.3,
  treads: 0.4,
  road: 0.5,
} as const
