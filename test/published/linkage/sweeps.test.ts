import { type CornerPoints, mechanism, type Point, poseAt } from '../../../src/linkage/index.ts'
import { deg, inDegrees, mm } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'
import { dataFile } from './read-cases.ts'

type Row = Readonly<Record<string, number>> & { readonly wheel_centre: readonly number[] }
const wishbone = dataFile('sweep-double-wishbone.json') as {
  readonly hardpoints: Readonly<Record<string, readonly [number, number, number]>>
  readonly static: Readonly<{ camber_deg: number; toe_in_deg: number }>
  readonly bump_sweep: readonly Row[]
  readonly steer_sweep_at_zero_travel: readonly Row[]
}
const five = dataFile('sweep-five-link.json') as {
  readonly inner_points: readonly (readonly [number, number, number])[]
  readonly outer_points: readonly (readonly [number, number, number])[]
  readonly wheel_centre: readonly [number, number, number]
  readonly static: Readonly<{ camber_deg: number; toe_in_deg: number }>
  readonly bump_sweep: readonly Row[]
}

const metres = ([x, y, z]: readonly [number, number, number]): Point => [x / 1000, y / 1000, z / 1000]
const at = (name: string): Point => metres(wishbone.hardpoints[name]!)
const points: CornerPoints = {
  layout: 'double wishbone',
  upperFrontInner: at('uf'),
  upperRearInner: at('ur'),
  upperOuter: at('uo'),
  lowerFrontInner: at('lf'),
  lowerRearInner: at('lr'),
  lowerOuter: at('lo'),
  tieInner: at('ti'),
  tieOuter: at('to'),
  wheelCentre: at('wc'),
  camber: deg(wishbone.static.camber_deg),
  toe: deg(wishbone.static.toe_in_deg),
  tyreRadius: mm(310),
}
const link = (i: number) => ({ inner: metres(five.inner_points[i]!), outer: metres(five.outer_points[i]!) })
const fiveLink: CornerPoints = {
  layout: 'five-link',
  links: [link(0), link(1), link(2), link(3), link(4)],
  wheelCentre: metres(five.wheel_centre),
  camber: deg(five.static.camber_deg),
  toe: deg(five.static.toe_in_deg),
  tyreRadius: mm(300),
}

const two = 'invented hard points, two independent parameterisations that agree to 4e-13 mm'
// printed to 9 decimals of a millimetre and of a degree (five-link: 8)
const within = 5.1e-10
const rows = (name: string, points: CornerPoints, sweep: readonly Row[], half: number) => {
  const m = mechanism(points)
  return sweep.flatMap((row) => {
    const pose = poseAt(m, { travel: mm(row['travel_mm'] ?? 0), rack: mm(row['rack_mm'] ?? 0) })
    const got: Readonly<Record<string, number>> = {
      camber_deg: inDegrees(pose.camber),
      toe_deg: inDegrees(pose.toe),
      heading_deg_left_positive: -inDegrees(pose.toe),
      caster_deg: inDegrees(pose.caster ?? 0),
      kingpin_inclination_deg: inDegrees(pose.sai ?? 0),
      x: pose.wheelCentre[0] * 1000,
      y: pose.wheelCentre[1] * 1000,
    }
    const [x, y] = row.wheel_centre ?? []
    const want = { ...row, ...(row.wheel_centre ? { x, y } : {}) }
    return Object.entries(want).flatMap(([key, value]) =>
      key in got && typeof value === 'number'
        ? [
            {
              id: `${name} ${row['travel_mm'] ?? row['rack_mm']} mm ${key}`,
              got: got[key]!,
              want: value,
              within: half,
              source: two,
              basis: 'derived' as const,
            },
          ]
        : [],
    )
  })
}

published('LI1 double wishbone in bump', rows('bump', points, wishbone.bump_sweep, within))
published('LI1 double wishbone steered', rows('steer', points, wishbone.steer_sweep_at_zero_travel, within))
published('LI1 five-link in bump', rows('five-link', fiveLink, five.bump_sweep, 5.1e-9))
