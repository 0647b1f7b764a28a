import {
  type AxleDrive,
  type AxleSettings,
  axlePoseAt,
  mirrorPoint,
  type Point,
  type SolidAxlePoints,
  solidAxle,
} from '../../../src/linkage/index.ts'
import { deg, inDegrees, metre } from '../../../src/quantity/index.ts'
import { fourLinkAxle, mirrored, trackBarAxle } from '../../property/linkage/any-axle.ts'
import { axlePoints } from '../../support/linkage-examples.ts'
import { type PublishedRow, published } from '../../support/published.ts'
import { byLeastSquares, camberOf, distance, minus, plus, spinOf, toeOf, turned } from './least-squares.ts'

// Axle and both knuckles are three free bodies of six unknowns each; what joins them is told as places and distances.

interface Body {
  readonly from: Point
  readonly shift: Point
  readonly turn: Point
}
const bodies = (p: SolidAxlePoints, v: readonly number[]): readonly [Body, Body, Body] => {
  const middle = plus(p.left.wheelCentre, p.right.wheelCentre).map((x) => x / 2) as unknown as Point
  const of = (i: number, from: Point): Body => ({
    from,
    shift: v.slice(6 * i, 6 * i + 3) as unknown as Point,
    turn: v.slice(6 * i + 3, 6 * i + 6) as unknown as Point,
  })
  return [of(0, middle), of(1, p.left.wheelCentre), of(2, p.right.wheelCentre)]
}
const place = (b: Body, q: Point): Point => plus(plus(b.from, b.shift), turned(minus(q, b.from), b.turn))

/** The upper end of the pin where sleeves have put it, 1 m along the tilted axis. */
function pinTop(p: SolidAxlePoints, by: AxleSettings, side: 'left' | 'right'): { lower: Point; top: Point } {
  const { lower, upper } = p[side].kingpin!
  const flip = (q: Point): Point => (side === 'left' ? q : mirrorPoint(q))
  const k = flip(minus(upper, lower))
  const caster = Math.atan2(-k[0], k[2]) + (by.tilt?.[side]?.caster ?? 0)
  const sai = Math.atan2(-k[1], k[2]) - (by.tilt?.[side]?.camber ?? 0)
  const n: Point = [-Math.tan(caster), -Math.tan(sai), 1]
  const long = Math.hypot(...n)
  return { lower, top: plus(lower, flip(n.map((x) => x / long) as unknown as Point)) }
}
/** 1 m along the pin as designed: the knuckle's own. */
function ownTop(p: SolidAxlePoints, side: 'left' | 'right'): Point {
  const { lower, upper } = p[side].kingpin!
  return plus(lower, minus(upper, lower).map((x) => x / distance(upper, lower)) as unknown as Point)
}

function judged(p: SolidAxlePoints, by: AxleSettings, drive: AxleDrive): Record<string, number> {
  const { location, steering: s } = p
  const errors = (v: readonly number[]): number[] => {
    const [axle, left, right] = bodies(p, v)
    const [l, r] = [place(axle, p.left.wheelCentre), place(axle, p.right.wheelCentre)]
    const [dl, dr] = [p.left.wheelCentre, p.right.wheelCentre]
    const rest = Math.asin((dl[2] - dr[2]) / distance(dl, dr))
    const out = [
      (l[2] + r[2] - dl[2] - dr[2]) / 2 - drive.heave,
      (l[2] - r[2]) / distance(dl, dr) - Math.sin(rest + drive.roll),
    ]
    if (location.kind === 'leaf') {
      // the roll axis goes straight up with the axle
      const [a, b] = location.rollAxis.map((q) => minus(place(axle, q), q)) as [Point, Point]
      out.push(a[0], a[1], b[0], b[1], a[2] - b[2])
    } else
      for (const [i, { inner, outer }] of location.links.entries())
        out.push(distance(place(axle, outer), inner) - distance(inner, outer) - (by.links?.[i] ?? 0))
    if (!s) {
      for (const body of [left, right])
        out.push(...minus(body.shift, minus(place(axle, body.from), body.from)))
      for (const body of [left, right]) out.push(...minus(body.turn, axle.turn))
      return out
    }
    for (const [side, knuckle] of [
      ['left', left],
      ['right', right],
    ] as const) {
      const { lower, top } = pinTop(p, by, side)
      out.push(...minus(place(knuckle, lower), place(axle, lower)))
      out.push(...minus(place(knuckle, ownTop(p, side)), place(axle, top)))
    }
    const [from, to] = s.dropAxis
    const ahead = minus(to, from).map((x) => (x / distance(from, to)) * drive.drop) as unknown as Point
    const end = plus(from, turned(minus(s.dragInner, from), ahead))
    const dragged = s.drags === 'left' ? left : right
    out.push(
      distance(place(dragged, s.dragOuter), end) - distance(s.dragInner, s.dragOuter) - (by.dragLink ?? 0),
    )
    out.push(
      distance(place(left, s.tieLeft), place(right, s.tieRight)) -
        distance(s.tieLeft, s.tieRight) -
        (by.tieRod ?? 0),
    )
    return out
  }
  const v = byLeastSquares(errors, new Array(18).fill(0))
  const [, left, right] = bodies(p, v)
  const spin = (body: Body, side: 'left' | 'right'): Point =>
    turned(spinOf(p[side].camber, p[side].toe, side === 'left' ? 1 : -1), body.turn)
  return {
    'left camber': inDegrees(camberOf(spin(left, 'left'))),
    'left toe': inDegrees(toeOf(spin(left, 'left'))),
    'right camber': inDegrees(camberOf(spin(right, 'right'))),
    'right toe': inDegrees(toeOf(spin(right, 'right'))),
  }
}

const drive = (heave: number, roll: number, drop: number): AxleDrive => ({
  heave: metre(heave),
  roll: deg(roll),
  drop: deg(drop),
})
const set: AxleSettings = {
  tilt: { left: { camber: deg(0.5), caster: deg(0.75) }, right: { camber: deg(-0.25), caster: deg(1) } },
  tieRod: metre(0.003),
  dragLink: metre(-0.004),
}
/** Four trailing links, the upper two splayed, under steered knuckles: invented. */
const steeredFour: SolidAxlePoints = { ...axlePoints, location: fourLinkAxle.location }
const stretched: AxleSettings = {
  ...set,
  links: [metre(0.004), metre(0), metre(0), metre(-0.002)],
}
const cases: readonly (readonly [string, SolidAxlePoints, AxleSettings])[] = [
  ['leaf springs', axlePoints, {}],
  ['leaf springs, sleeves and rods set', axlePoints, set],
  ['right knuckle dragged', mirrored(axlePoints), set],
  ['three links and track bar', trackBarAxle, set],
  ['four links, steered', steeredFour, stretched],
  ['four links, steered, right knuckle dragged', mirrored(steeredFour), stretched],
  ['four links, not steered', fourLinkAxle, { links: [metre(0.004), metre(0), metre(0), metre(-0.002)] }],
]

published(
  'LI17 solid axles against a general least-squares fitter',
  cases.flatMap(([name, points, by]) =>
    [drive(0, 0, 0), drive(0.05, 2, 0), drive(-0.04, -2.5, 6), drive(0.02, 3, -8)].flatMap(
      (d, i): PublishedRow[] => {
        const want = judged(points, by, d)
        const pose = axlePoseAt(solidAxle(points, by), d)
        return (['left', 'right'] as const).flatMap((side) =>
          (['camber', 'toe'] as const).map((angle) => ({
            id: `${name} ${i} ${side} ${angle}`,
            got: inDegrees(pose[side][angle]),
            want: want[`${side} ${angle}`]!,
            // differences of 1e-6 leave about 1e-8 of a radian with eighteen unknowns
            within: 2e-6,
            source: 'ml-levenberg-marquardt 5.1.0 on places and distances of three free bodies',
            basis: 'derived' as const,
          })),
        )
      },
    ),
  ),
)
