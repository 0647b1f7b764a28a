import { GcsWrapper, init_planegcs_module, type SketchPrimitive } from '@salusoft89/planegcs'
import { axlePoseAt, type Point, solidAxle } from '../../../src/linkage/index.ts'
import { inDegrees, metre, rad } from '../../../src/quantity/index.ts'
import { fourLinkAxle } from '../../property/linkage/any-axle.ts'
import { type PublishedRow, published } from '../../support/published.ts'

// An axle that is the same on both sides and only heaves keeps both sides the same: each link turns in a plane x, z at
// its own slant across, so in side view it is a bar of √(Δx² + Δz²). Two bars, one body, one height: a sketch.
const [lower, , upper] = fourLinkAxle.location.kind === 'links' ? fourLinkAxle.location.links : []
const hub: Point = [fourLinkAxle.left.wheelCentre[0], 0, fourLinkAxle.left.wheelCentre[2]]
const gcs = await init_planegcs_module()

function bySketch(heave: number): { x: number; pitch: number } {
  const sketch = new GcsWrapper(new gcs.GcsSystem())
  const places: Readonly<Record<string, Point>> = {
    '1': lower!.inner,
    '2': lower!.outer,
    '3': upper!.inner,
    '4': upper!.outer,
    '5': hub,
  }
  const point = (id: string): SketchPrimitive => ({
    id,
    type: 'point',
    x: places[id]![0],
    // begun near the answer: from the design pose it stalls at a large heave
    y: places[id]![2] + (id === '1' || id === '3' ? 0 : heave),
    fixed: id === '1' || id === '3',
  })
  const bar = (id: string, a: string, b: string): SketchPrimitive => ({
    id,
    type: 'p2p_distance',
    p1_id: a,
    p2_id: b,
    distance: Math.hypot(places[a]![0] - places[b]![0], places[a]![2] - places[b]![2]),
  })
  sketch.push_primitives_and_params([
    ...['1', '2', '3', '4', '5'].map(point),
    bar('6', '1', '2'),
    bar('7', '3', '4'),
    bar('8', '2', '4'),
    bar('9', '2', '5'),
    bar('10', '4', '5'),
    { id: '11', type: 'coordinate_y', p_id: '5', y: hub[2] + heave },
  ])
  sketch.solve()
  sketch.apply_solution()
  const at = (id: string) => sketch.sketch_index.get_sketch_point(id)
  const [a, b, h] = [at('2'), at('4'), at('5')]
  sketch.destroy_gcs_module()
  // nose down is positive: the top goes forward
  const lean = (x: number, z: number): number => Math.atan2(x, z)
  const design = lean(upper!.outer[0] - lower!.outer[0], upper!.outer[2] - lower!.outer[2])
  return { x: h.x, pitch: inDegrees(rad(lean(b.x - a.x, b.y - a.y) - design)) }
}

published(
  'LI17 an axle on four links that heaves against a planar constraint solver',
  [-0.12, -0.05, 0.03, 0.09, 0.15].flatMap((heave): PublishedRow[] => {
    const want = bySketch(heave)
    const { middle, turn } = axlePoseAt(solidAxle(fourLinkAxle), {
      heave: metre(heave),
      roll: rad(0),
      drop: rad(0),
    })
    // the solver stops at 1e-10 of its squared errors
    const shared = { source: 'planegcs 1.3.0, distances in side view', basis: 'derived' as const }
    return [
      { id: `heave ${heave} x`, got: middle[0], want: want.x, within: 1e-8, ...shared },
      { id: `heave ${heave} y`, got: middle[1], want: 0, within: 1e-12, ...shared },
      {
        id: `heave ${heave} pitch`,
        got: inDegrees(rad(2 * Math.atan2(turn[2], turn[0]))),
        want: want.pitch,
        within: 1e-6,
        ...shared,
      },
    ]
  }),
)
