// Invented geometry, for tests only.
import type { Eccentric, TieRodThread } from '../../../src/adjust/index.ts'
import type { DoubleWishbone, FiveLink, Strut } from '../../../src/linkage/index.ts'
import { deg, metre, mm, rad, turn } from '../../../src/quantity/index.ts'

/** A light truck's long arms. */
export const longArms: DoubleWishbone = {
  layout: 'double wishbone',
  upperFrontInner: [0.13, 0.45, 0.545],
  upperRearInner: [-0.15, 0.455, 0.53],
  upperOuter: [-0.018, 0.715, 0.575],
  lowerFrontInner: [0.2, 0.36, 0.3],
  lowerRearInner: [-0.22, 0.36, 0.295],
  lowerOuter: [0.012, 0.765, 0.265],
  tieInner: [-0.17, 0.375, 0.325],
  tieOuter: [-0.15, 0.755, 0.31],
  wheelCentre: [0, 0.84, 0.385],
  camber: deg(-0.25),
  toe: deg(0.08),
  tyreRadius: metre(0.385),
}

/** Arms with tilted axes. */
export const tiltedAxes: DoubleWishbone = {
  layout: 'double wishbone',
  upperFrontInner: [0.14, 0.44, 0.54],
  upperRearInner: [-0.16, 0.47, 0.49],
  upperOuter: [-0.025, 0.7, 0.545],
  lowerFrontInner: [0.18, 0.35, 0.245],
  lowerRearInner: [-0.22, 0.385, 0.285],
  lowerOuter: [0.01, 0.74, 0.225],
  tieInner: [-0.15, 0.36, 0.28],
  tieOuter: [-0.135, 0.725, 0.275],
  wheelCentre: [0.002, 0.79, 0.335],
  camber: deg(-0.4),
  toe: deg(-0.05),
  tyreRadius: metre(0.337),
}

export const familyStrut: Strut = {
  layout: 'strut',
  lowerFrontInner: [0.03, 0.36, 0.2],
  lowerRearInner: [-0.3, 0.37, 0.21],
  lowerOuter: [0.008, 0.71, 0.18],
  topMount: [-0.04, 0.57, 0.83],
  strutLower: [-0.003, 0.63, 0.35],
  tieInner: [-0.14, 0.36, 0.245],
  tieOuter: [-0.13, 0.69, 0.235],
  wheelCentre: [0.002, 0.755, 0.3],
  camber: deg(-0.35),
  toe: deg(0.1),
  tyreRadius: metre(0.303),
}

export const rearLinks: FiveLink = {
  layout: 'five-link',
  links: [
    { inner: [0.03, 0.42, 0.45], outer: [0.04, 0.68, 0.47] },
    { inner: [-0.16, 0.45, 0.44], outer: [-0.07, 0.67, 0.48] },
    { inner: [-0.02, 0.35, 0.23], outer: [-0.005, 0.72, 0.205] },
    { inner: [0.45, 0.56, 0.29], outer: [0.09, 0.715, 0.26] },
    { inner: [-0.2, 0.36, 0.26], outer: [-0.15, 0.71, 0.245] },
  ],
  wheelCentre: [0, 0.77, 0.31],
  camber: deg(-1),
  toe: deg(0.2),
  tyreRadius: metre(0.314),
}

/** An eccentric that shows all it has; settings in degrees for the reader. */
export function eccentric(id: string, moves: string, more: Partial<Eccentric> = {}): Eccentric {
  return {
    kind: 'eccentric',
    id,
    name: `${id} eccentric`,
    moves,
    along: [0, 1, 0],
    throw: mm(7),
    range: [deg(-90), deg(90)],
    step: deg(1),
    play: deg(0),
    seenFrom: 'front',
    positiveLooks: 'clockwise',
    markAt: rad(0),
    ...more,
  }
}

export function tieRod(more: Partial<TieRodThread> = {}): TieRodThread {
  return {
    kind: 'thread',
    id: 'tie rod',
    name: 'tie rod',
    length: 'tie',
    pitch: mm(1.5),
    sleeve: false,
    range: [turn(-5), turn(5)],
    step: turn(1 / 12),
    play: turn(0),
    seenFrom: 'outside',
    positiveLooks: 'clockwise',
    ...more,
  }
}
