import type { Family } from '../point-names.ts'

/** How vehicles of one layout differ from the typical one, beyond the spread of each point. @source definition */
export interface Population {
  /** Standard deviation of one factor on all coordinates: a larger vehicle is larger every way. */
  readonly size: number
  /** Of a further factor for each of length, breadth and height. */
  readonly shape: number
  /** Of a shift that both inner pivots of an arm share, m: an arm is fitted further forward, or higher. */
  readonly armShift: number
  /** Of camber and toe at the design pose, rad. */
  readonly camber: number
  readonly toe: number
}

const degree = Math.PI / 180
const usual: Population = {
  size: 0.04,
  shape: 0.03,
  armShift: 0.008,
  camber: 0.7 * degree,
  toe: 0.25 * degree,
}

/**
 * The population behind each layout to start from. Lengths are taken from the wheel centre, breadths from the centre
 * line, heights from the floor. The spread of each point by itself stands in the layout's own file.
 *
 * @source own choice: invented from memory of how far such vehicles differ; docs/methods/fit.md
 */
export const populations: Readonly<Record<Family, Population>> = {
  'double wishbone': usual,
  strut: { ...usual, armShift: 0.01 },
  'five-link': { ...usual, armShift: 0 },
  'semi-trailing arm': { ...usual, armShift: 0 },
  'twist beam': { ...usual, armShift: 0 },
  'solid axle': { ...usual, armShift: 0 },
}

/** Pairs of inner pivots that are fitted together. */
export const armPairs: Readonly<Partial<Record<Family, readonly (readonly [string, string])[]>>> = {
  'double wishbone': [
    ['upper-front-pivot', 'upper-rear-pivot'],
    ['lower-front-pivot', 'lower-rear-pivot'],
  ],
  strut: [['lower-front-pivot', 'lower-rear-pivot']],
}
