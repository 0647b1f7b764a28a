import { GcsWrapper, init_planegcs_module, type SketchPrimitive } from '@salusoft89/planegcs'
import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import {
  type CornerPoints,
  type DoubleWishbone,
  mechanism,
  type Point,
  poseAt,
} from '../../../src/linkage/index.ts'
import { inDegrees, metre, rad } from '../../../src/quantity/index.ts'
import { type PublishedRow, published } from '../../support/published.ts'
import { pointsOf, poseCases } from './read-cases.ts'

// Judges from outside: solvers that know nothing of corners, given the same constraints in their own words.

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const length = (a: Point): number => Math.hypot(...a)

/** Turned by a rotation vector, by the series of its sine and cosine (small turns). */
function turned(a: Point, by: Point): Point {
  const angle = length(by)
  if (angle === 0) return a
  const [x, y, z] = by.map((e) => e / angle) as unknown as Point
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const d = (1 - c) * (x * a[0] + y * a[1] + z * a[2])
  return [
    c * a[0] + s * (y * a[2] - z * a[1]) + d * x,
    c * a[1] + s * (z * a[0] - x * a[2]) + d * y,
    c * a[2] + s * (x * a[1] - y * a[0]) + d * z,
  ]
}

/** Errors of the constraints from the points themselves: knuckle at wheel centre `at`, turned by `by`. */
function errors(p: CornerPoints, at: Point, by: Point, rack: number): number[] {
  const place = (q: Point): Point => {
    const [x, y, z] = turned(minus(q, p.wheelCentre), by)
    return [at[0] + x, at[1] + y, at[2] + z]
  }
  const gap = (inner: Point, outer: Point, moved: number): number =>
    length(minus(place(outer), [inner[0], inner[1] + moved, inner[2]])) - length(minus(outer, inner))
  if (p.layout === 'five-link')
    return p.links.map(({ inner, outer, rack: steered }) => gap(inner, outer, steered ? rack : 0))
  const shared = [
    gap(p.lowerFrontInner, p.lowerOuter, 0),
    gap(p.lowerRearInner, p.lowerOuter, 0),
    gap(p.tieInner, p.tieOuter, rack),
  ]
  if (p.layout === 'double wishbone')
    return [...shared, gap(p.upperFrontInner, p.upperOuter, 0), gap(p.upperRearInner, p.upperOuter, 0)]
  const foot = place(p.strutLower)
  const line = turned(minus(p.topMount, p.strutLower), by)
  const [a, b] = [minus(p.topMount, foot), line.map((e) => e / length(line)) as unknown as Point]
  const across: Point = [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
  return [...shared, ...across]
}

function byLeastSquares(
  p: CornerPoints,
  travel: number,
  rack: number,
): { camber: number; toe: number; y: number } {
  const [x0, y0, z0] = p.wheelCentre
  const model = (v: number[]) => {
    const e = errors(p, [x0 + v[0]!, y0 + v[1]!, z0 + travel], [v[2]!, v[3]!, v[4]!], rack)
    return (i: number) => e[i]!
  }
  const count = errors(p, p.wheelCentre, [0, 0, 0], 0).length
  let values = [0, 0, 0, 0, 0]
  for (let round = 0; round < 3; round++)
    values = levenbergMarquardt(
      { x: Array.from({ length: count }, (_, i) => i), y: new Array(count).fill(0) },
      model,
      {
        initialValues: values,
        damping: 1e-6,
        gradientDifference: 1e-6,
        centralDifference: true,
        maxIterations: 60,
        errorTolerance: 1e-30,
        improvementThreshold: 1e-12,
      },
    ).parameterValues
  const s = turned(
    [Math.cos(p.camber) * Math.sin(p.toe), Math.cos(p.camber) * Math.cos(p.toe), -Math.sin(p.camber)],
    [values[2]!, values[3]!, values[4]!],
  )
  return { camber: inDegrees(-Math.asin(s[2])), toe: inDegrees(Math.atan2(s[0], s[1])), y: y0 + values[1]! }
}

published(
  'LI1 against a general least-squares fitter',
  poseCases.cases.flatMap((c) => {
    const p = pointsOf(c)
    const m = mechanism(p)
    return [
      [-0.05, 0.01],
      [0.02, -0.02],
      [0.06, 0.015],
    ].flatMap(([travel, rack]): PublishedRow[] => {
      const want = byLeastSquares(p, travel!, rack!)
      const pose = poseAt(m, { travel: metre(travel!), rack: metre(rack!) })
      // the fitter's differences of 1e-6 leave its minimum uncertain by about 1e-9 of a metre or radian
      const shared = {
        source: 'ml-levenberg-marquardt 5.1.0 on the raw distances',
        basis: 'derived' as const,
      }
      const id = `${c.id} ${travel} ${rack}`
      return [
        { id: `${id} camber`, got: inDegrees(pose.camber), want: want.camber, within: 1e-6, ...shared },
        { id: `${id} toe`, got: inDegrees(pose.toe), want: want.toe, within: 1e-6, ...shared },
        { id: `${id} wheel centre y`, got: pose.wheelCentre[1], want: want.y, within: 1e-8, ...shared },
      ]
    })
  }),
)

// Arms with straight axes and a tie rod that repeats the lower arm move in transverse planes: a sketch in y and z.
const flat: DoubleWishbone = {
  layout: 'double wishbone',
  upperFrontInner: [0.15, 0.42, 0.5],
  upperRearInner: [-0.15, 0.42, 0.5],
  upperOuter: [0, 0.64, 0.53],
  lowerFrontInner: [0.15, 0.35, 0.22],
  lowerRearInner: [-0.15, 0.35, 0.22],
  lowerOuter: [0, 0.7, 0.2],
  tieInner: [-0.14, 0.35, 0.22],
  tieOuter: [-0.14, 0.7, 0.2],
  wheelCentre: [0, 0.75, 0.3],
  camber: rad(0),
  toe: rad(0),
  tyreRadius: metre(0.3),
}
const gcs = await init_planegcs_module()

function bySketch(travel: number): { camber: number; y: number } {
  const sketch = new GcsWrapper(new gcs.GcsSystem())
  const point = (id: string, [, y, z]: Point, fixed: boolean): SketchPrimitive => ({
    id,
    type: 'point',
    x: y,
    y: z,
    fixed,
  })
  const bar = (id: string, a: [string, Point], b: [string, Point]): SketchPrimitive => ({
    id,
    type: 'p2p_distance',
    p1_id: a[0],
    p2_id: b[0],
    distance: Math.hypot(a[1][1] - b[1][1], a[1][2] - b[1][2]),
  })
  const [li, lo]: [string, Point][] = [
    ['1', flat.lowerFrontInner],
    ['2', flat.lowerOuter],
  ]
  const [ui, uo]: [string, Point][] = [
    ['3', flat.upperFrontInner],
    ['4', flat.upperOuter],
  ]
  const hub: [string, Point] = ['5', flat.wheelCentre]
  sketch.push_primitives_and_params([
    point(...li!, true),
    point(...lo!, false),
    point(...ui!, true),
    point(...uo!, false),
    point(...hub, false),
    bar('6', li!, lo!),
    bar('7', ui!, uo!),
    bar('8', lo!, uo!),
    bar('9', lo!, hub),
    bar('10', uo!, hub),
    { id: '11', type: 'coordinate_y', p_id: '5', y: flat.wheelCentre[2] + travel },
  ])
  sketch.solve()
  sketch.apply_solution()
  const at = (id: string) => sketch.sketch_index.get_sketch_point(id)
  const [a, b, h] = [at('2'), at('4'), at('5')]
  sketch.destroy_gcs_module()
  const lean = (y: number, z: number): number => Math.atan2(y, z)
  const design = lean(flat.upperOuter[1] - flat.lowerOuter[1], flat.upperOuter[2] - flat.lowerOuter[2])
  return { camber: inDegrees(lean(b.x - a.x, b.y - a.y) - design), y: h.x }
}

published(
  'LI1 against a planar constraint solver',
  [-0.06, -0.02, 0.03, 0.07].flatMap((travel): PublishedRow[] => {
    const want = bySketch(travel)
    const pose = poseAt(mechanism(flat), { travel: metre(travel), rack: metre(0) })
    // the solver stops at 1e-10 of its squared errors
    const shared = { source: 'planegcs 1.3.0, distances in a plane', basis: 'derived' as const }
    return [
      {
        id: `flat ${travel} camber`,
        got: inDegrees(pose.camber),
        want: want.camber,
        within: 1e-6,
        ...shared,
      },
      { id: `flat ${travel} y`, got: pose.wheelCentre[1], want: want.y, within: 1e-8, ...shared },
    ]
  }),
)
