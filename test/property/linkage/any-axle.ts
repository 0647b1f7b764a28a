import fc from 'fast-check'
import {
  type AxleDrive,
  type AxleLink,
  type AxleWheel,
  mirrorPoint,
  type Point,
  type SolidAxlePoints,
} from '../../../src/linkage/index.ts'
import { deg, metre, rad } from '../../../src/quantity/index.ts'
import { axlePoints } from '../../support/linkage-examples.ts'

const link = (inner: Point, outer: Point): AxleLink => ({ inner, outer })
/** Three links and a track bar, steered: invented. */
export const trackBarAxle: SolidAxlePoints = {
  ...axlePoints,
  location: {
    kind: 'links',
    links: [
      link([-0.85, 0.4, 0.44], [-0.03, 0.48, 0.28]),
      link([-0.85, -0.4, 0.44], [-0.03, -0.48, 0.28]),
      link([-0.75, 0.2, 0.6], [-0.05, 0.22, 0.52]),
      link([0.1, 0.5, 0.54], [0.12, -0.46, 0.46]),
    ],
  },
}
const rearWheel = (y: number): AxleWheel => ({
  wheelCentre: [0, y, 0.34],
  camber: deg(-0.5),
  toe: deg(0.1),
  tyreRadius: metre(0.34),
  kingpin: null,
})
/** Four trailing links, the upper two splayed, not steered: invented. */
export const fourLinkAxle: SolidAxlePoints = {
  location: {
    kind: 'links',
    links: [
      link([0.6, 0.5, 0.3], [0.02, 0.52, 0.27]),
      link([0.6, -0.5, 0.3], [0.02, -0.52, 0.27]),
      link([0.45, 0.45, 0.5], [-0.05, 0.12, 0.49]),
      link([0.45, -0.45, 0.5], [-0.05, -0.12, 0.49]),
    ],
  },
  left: rearWheel(0.76),
  right: rearWheel(-0.76),
  steering: null,
}
const bases = [axlePoints, trackBarAxle, fourLinkAxle]

const moved = (value: unknown, next: () => number): unknown =>
  Array.isArray(value) && typeof value[0] === 'number'
    ? value.map((x: number) => x + next())
    : Array.isArray(value)
      ? value.map((each) => moved(each, next))
      : typeof value === 'object' && value !== null
        ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, moved(v, next)]))
        : value

/** Every coordinate of one of the axles off by up to 15 mm. */
export const anyAxle: fc.Arbitrary<SolidAxlePoints> = fc
  .record({
    base: fc.constantFrom(...bases),
    shifts: fc.array(fc.double({ min: -0.015, max: 0.015, noNaN: true }), { minLength: 80, maxLength: 80 }),
  })
  .map(({ base, shifts }) => {
    let at = 0
    return moved(base, () => shifts[at++]!) as SolidAxlePoints
  })

/** Ordinary heave, roll and drop. */
export const anyAxleDrive: fc.Arbitrary<AxleDrive> = fc
  .tuple(...[0.08, 0.06, 0.25].map((most) => fc.double({ min: -most, max: most, noNaN: true })))
  .map(([heave, roll, drop]) => ({ heave: metre(heave!), roll: rad(roll!), drop: rad(drop!) }))

/** The axle seen in a mirror: sides change places, and so does the sense of the drop arm. */
export function mirrored(p: SolidAxlePoints): SolidAxlePoints {
  const wheel = (w: AxleWheel): AxleWheel => ({
    ...w,
    wheelCentre: mirrorPoint(w.wheelCentre),
    kingpin: w.kingpin && { lower: mirrorPoint(w.kingpin.lower), upper: mirrorPoint(w.kingpin.upper) },
  })
  const s = p.steering
  const both = <T extends readonly Point[]>(list: T): T => list.map(mirrorPoint) as unknown as T
  const { location } = p
  return {
    location:
      location.kind === 'leaf'
        ? { kind: 'leaf', rollAxis: both(location.rollAxis) }
        : {
            kind: 'links',
            links: location.links.map((l) =>
              link(mirrorPoint(l.inner), mirrorPoint(l.outer)),
            ) as unknown as typeof location.links,
          },
    left: wheel(p.right),
    right: wheel(p.left),
    steering: s && {
      dropAxis: both(s.dropAxis),
      dragInner: mirrorPoint(s.dragInner),
      dragOuter: mirrorPoint(s.dragOuter),
      drags: s.drags === 'left' ? 'right' : 'left',
      tieLeft: mirrorPoint(s.tieRight),
      tieRight: mirrorPoint(s.tieLeft),
    },
  }
}
