// Invented geometry, for timing only.
import type { DoubleWishbone, FiveLink } from '../src/linkage/index.ts'
import { deg, metre } from '../src/quantity/index.ts'

/** A front corner with the tie rod behind the axle. */
export const wishbone: DoubleWishbone = {
  layout: 'double wishbone',
  upperFrontInner: [0.121, 0.432, 0.552],
  upperRearInner: [-0.138, 0.441, 0.531],
  upperOuter: [-0.015, 0.683, 0.561],
  lowerFrontInner: [0.192, 0.358, 0.271],
  lowerRearInner: [-0.211, 0.363, 0.266],
  lowerOuter: [0.007, 0.735, 0.238],
  tieInner: [-0.161, 0.356, 0.303],
  tieOuter: [-0.142, 0.706, 0.281],
  wheelCentre: [0, 0.788, 0.341],
  camber: deg(-0.4),
  toe: deg(0.1),
  tyreRadius: metre(0.343),
}

/** A rear corner on five links. */
export const fiveLink: FiveLink = {
  layout: 'five-link',
  links: [
    { inner: [0.032, 0.417, 0.452], outer: [0.041, 0.679, 0.471] },
    { inner: [-0.161, 0.446, 0.439], outer: [-0.069, 0.672, 0.481] },
    { inner: [-0.018, 0.352, 0.229], outer: [-0.006, 0.719, 0.207] },
    { inner: [0.448, 0.561, 0.291], outer: [0.091, 0.713, 0.262] },
    { inner: [-0.203, 0.357, 0.261], outer: [-0.151, 0.711, 0.243] },
  ],
  wheelCentre: [0, 0.769, 0.311],
  camber: deg(-1.1),
  toe: deg(0.2),
  tyreRadius: metre(0.315),
}
