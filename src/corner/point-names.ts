/** The layouts whose points can be computed with. */
export type Family = 'double wishbone' | 'strut' | 'five-link'

const wishboneLower = {
  'lower-front-pivot': 'lowerFrontInner',
  'lower-rear-pivot': 'lowerRearInner',
  'lower-outer': 'lowerOuter',
} as const
const tie = { 'tie-inner': 'tieInner', 'tie-outer': 'tieOuter' } as const

const doubleWishbone = {
  'upper-front-pivot': 'upperFrontInner',
  'upper-rear-pivot': 'upperRearInner',
  'upper-outer': 'upperOuter',
  ...wishboneLower,
  ...tie,
} as const
const strut = { ...wishboneLower, 'strut-top': 'topMount', 'strut-lower': 'strutLower', ...tie } as const
const fiveLink: Record<string, string> = {}
for (let i = 0; i < 5; i++) {
  fiveLink[`link-${i + 1}-inner`] = `inner${i}`
  fiveLink[`link-${i + 1}-outer`] = `outer${i}`
}

/**
 * The one place where the names of a file meet the names of the computation: kebab-case as a person says
 * it (`lower-front-pivot`, links counted from 1) against the linkage room's own (`lowerFrontInner`, from 0).
 * Every layout also has `wheel-centre`. A corner may have other points, which only the drawing uses.
 *
 * @source definition
 */
export const pointNames: Readonly<Record<Family, Readonly<Record<string, string>>>> = {
  'double wishbone': { ...doubleWishbone, 'wheel-centre': 'wheelCentre' },
  strut: { ...strut, 'wheel-centre': 'wheelCentre' },
  'five-link': { ...fiveLink, 'wheel-centre': 'wheelCentre' },
}

/** Which two points a link runs between, and what the linkage room calls its length. @source definition */
export const linkNames: Readonly<Record<Family, readonly (readonly [string, string, string])[]>> = {
  'double wishbone': [
    ['upper-front-pivot', 'upper-outer', 'upperFront'],
    ['upper-rear-pivot', 'upper-outer', 'upperRear'],
    ['lower-front-pivot', 'lower-outer', 'lowerFront'],
    ['lower-rear-pivot', 'lower-outer', 'lowerRear'],
    ['tie-inner', 'tie-outer', 'tie'],
  ],
  strut: [
    ['lower-front-pivot', 'lower-outer', 'lowerFront'],
    ['lower-rear-pivot', 'lower-outer', 'lowerRear'],
    ['tie-inner', 'tie-outer', 'tie'],
  ],
  'five-link': [0, 1, 2, 3, 4].map(
    (i) => [`link-${i + 1}-inner`, `link-${i + 1}-outer`, `link${i}`] as const,
  ),
}
