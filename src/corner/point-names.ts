/** The linkages that can be computed with; the last two as whole axles. */
export type Family =
  | 'double wishbone'
  | 'strut'
  | 'five-link'
  | 'semi-trailing arm'
  | 'twist beam'
  | 'solid axle'

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

/** Rods that may guide a solid axle on coils: the file's name, and what the linkage knows it by. */
const guides = {
  'lower-link': 'lowerLink',
  'upper-link': 'upperLink',
  'middle-link': 'middleLink',
  'track-bar': 'trackBar',
} as const
const guidePoints: Record<string, string> = {}
for (const [name, inside] of Object.entries(guides)) {
  guidePoints[`${name}-inner`] = `${inside}Inner`
  guidePoints[`${name}-outer`] = `${inside}Outer`
}
const solidAxle = {
  'roll-axis-rear': 'rollAxisRear',
  'roll-axis-front': 'rollAxisFront',
  ...guidePoints,
  'kingpin-lower': 'kingpinLower',
  'kingpin-upper': 'kingpinUpper',
  'drop-axis-from': 'dropAxisFrom',
  'drop-axis-to': 'dropAxisTo',
  'drag-inner': 'dragInner',
  'drag-outer': 'dragOuter',
  'tie-outer': 'tieOuter',
} as const

/**
 * The one place where the names of a file meet the names of the computation: kebab-case as a person says
 * it (`lower-front-pivot`, links counted from 1) against the linkage room's own (`lowerFrontInner`, from 0).
 * Every layout also has `wheel-centre`. A solid axle has only those of its points that it is built with
 * (`neededPoints`). A corner may have other points, which only the drawing uses.
 *
 * @source definition
 */
export const pointNames: Readonly<Record<Family, Readonly<Record<string, string>>>> = {
  'double wishbone': { ...doubleWishbone, 'wheel-centre': 'wheelCentre' },
  strut: { ...strut, 'wheel-centre': 'wheelCentre' },
  'five-link': { ...fiveLink, 'wheel-centre': 'wheelCentre' },
  'semi-trailing arm': {
    'arm-front-pivot': 'innerFront',
    'arm-rear-pivot': 'innerRear',
    'wheel-centre': 'wheelCentre',
  },
  'twist beam': {
    'beam-pivot': 'pivot',
    'shear-centre': 'shearCentre',
    'wheel-centre': 'wheelCentre',
  },
  'solid axle': { ...solidAxle, 'wheel-centre': 'wheelCentre' },
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
  'semi-trailing arm': [],
  'twist beam': [],
  // Links of which each side has its own cannot be named by one side's points: they are left out.
  'solid axle': [
    ['middle-link-inner', 'middle-link-outer', 'link2'],
    ['track-bar-inner', 'track-bar-outer', 'link3'],
    // From the left rod end to its mirror image on the right.
    ['tie-outer', 'tie-outer', 'tie-rod'],
    ['drag-inner', 'drag-outer', 'drag-link'],
  ],
}
