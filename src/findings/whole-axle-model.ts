import { type Corner, pointSpreads, wholeAxlePoints } from '../corner/index.ts'
import {
  type AxleDrive,
  axlePoseAt,
  type Side,
  type SolidAxle,
  type SolidAxlePoints,
  solidAxle,
  type TwistBeam,
  twistBeamReadings,
} from '../linkage/index.ts'
import { metre, rad } from '../quantity/index.ts'
import { type AxleBody, bodyWith } from './axle-body.ts'
import type { AxleModel, WholeWay } from './axle-model.ts'
import { axleCamber, axleToe, modelCamber, modelToe } from './scatter.ts'
import { type SingleWay, singleWays } from './single-ways.ts'
import { axleNumbers, ofAxle, ofTurn } from './vehicle-vector.ts'
import { wholePointNames } from './whole-point-names.ts'

const sides = ['left', 'right'] as const
const inner = (20 * Math.PI) / 180
/** Steps of the central differences: m and rad. */
const step = 1e-4

/** Where a whole axle is looked at, and how it is set. */
export interface WholeStanding {
  readonly travel: Readonly<Record<Side, number>>
  readonly set: WholeWay
  readonly turns: boolean
}

/**
 * An axle that is one body, or a twist beam: its numbers and their rates, by central differences of exact poses.
 *
 * @throws {Refusal} what the linkage says where the axle cannot stand so
 * @source own derivation: docs/methods/findings.md
 */
export function wholeAxleModel(corner: Corner, { travel, set, turns }: WholeStanding): AxleModel {
  const drawn = wholeAxlePoints(corner)
  const body = (points: SolidAxlePoints | TwistBeam, way: WholeWay, k: number): ReadyAxle =>
    readyAxle(bodyWith(points, [set, 1], [way, k]))
  const steers = turns && 'location' in drawn && drawn.steering !== null
  const straight = body(drawn, {}, 0)
  const drops = steers
    ? { left: dropForTurn(straight, travel, 'left'), right: dropForTurn(straight, travel, 'right') }
    : { left: null, right: null }
  const seen = (axle: ReadyAxle, at: Travel): Seen => seenOf(axle, at, drops)
  const here = seen(straight, travel)
  const slopes = slopesOf(straight, travel, drops)
  const difference = (after: Seen, before: Seen, over: number): Float64Array => {
    const rate = after.straight.map((x, i) => (x - before.straight[i]!) / over)
    for (const side of sides) {
      const [a, b, slope] = [after.turned[side], before.turned[side], slopes[side]]
      if (!a || !b || !slope) continue
      const outer = side === 'left' ? 'right' : 'left'
      const inside = (a[ofAxle(side, 'toe')]! - b[ofAxle(side, 'toe')]!) / over
      const outside = (a[ofAxle(outer, 'toe')]! - b[ofAxle(outer, 'toe')]!) / over
      const made = (rate[ofAxle(side, 'toe')]! - inside) / slope.inner
      rate[ofTurn(side)] = rate[ofAxle(outer, 'toe')]! - (outside + slope.outer * made)
    }
    return rate
  }
  const singles = new Map<string, Float64Array>()
  const singleRate = ({ name, way }: SingleWay): Float64Array => {
    const known = singles.get(name)
    if (known) return known
    const [after, before] = [step, -step].map((by) => seen(body(drawn, way, by), travel))
    const made = difference(after!, before!, 2 * step)
    singles.set(name, made)
    return made
  }
  const rateOf = (way: WholeWay): Float64Array => {
    const rate = new Float64Array(axleNumbers)
    for (const single of singleWays(way)) {
      const own = singleRate(single)
      for (let i = 0; i < axleNumbers; i++) rate[i]! += single.times * own[i]!
    }
    return rate
  }
  const numbers = Float64Array.from(here.straight)
  for (const side of sides) {
    const at = here.turned[side]
    if (!at) continue
    const outer = side === 'left' ? 'right' : 'left'
    numbers[ofTurn(side)] = inner - (at[ofAxle(outer, 'toe')]! - here.straight[ofAxle(outer, 'toe')]!)
  }
  const spreads = pointSpreads(corner)
  const ofModel = wholePointNames(corner).flatMap(([name, inside]) => {
    const spread = spreads[inside] ?? 0
    if (spread === 0) return []
    return [0, 1, 2].map((axis) => {
      const moved = wholeAxlePoints(shifted(corner, name, axis, step))
      const rate = difference(seen(body(moved, {}, 0), travel), here, step)
      return rate.map((x) => x * spread)
    })
  })
  const both = (camber: number, toe: number): WholeWay => ({
    shim: { left: { camber, toe }, right: { camber, toe } },
  })
  const steered = 'location' in drawn && drawn.left.kingpin !== null
  return {
    numbers,
    rate: (way) => (way.whole ? rateOf(way.whole) : new Float64Array(axleNumbers)),
    chord: (way, size) => {
      if (!way.whole) return null
      try {
        return difference(seen(body(drawn, way.whole, size), travel), here, size)
      } catch {
        return null
      }
    },
    lift: (side) =>
      difference(
        seen(straight, { ...travel, [side]: travel[side] + step }),
        seen(straight, { ...travel, [side]: travel[side] - step }),
        2 * step,
      ),
    ofModel: [...ofModel, rateOf(both(modelCamber, 0)), rateOf(both(0, modelToe))],
    ofMaking: sides.flatMap((side) => [
      rateOf({ shim: { [side]: { camber: axleCamber, toe: 0 } } }),
      rateOf({ shim: { [side]: { camber: 0, toe: axleToe } } }),
      ...(steered
        ? [
            rateOf({ tilt: { [side]: { camber: axleCamber, caster: 0 } } }),
            rateOf({ tilt: { [side]: { camber: 0, caster: axleCamber } } }),
          ]
        : []),
    ]),
  }
}

type Travel = Readonly<Record<Side, number>>
interface Seen {
  readonly straight: Float64Array
  readonly turned: Readonly<Record<Side, Float64Array | null>>
}

function shifted(corner: Corner, name: string, axis: number, by: number): Corner {
  const point = corner.points[name]!
  const at = point.at.map((x, i) => (i === axis ? x + by : x)) as unknown as typeof point.at
  return { ...corner, points: { ...corner.points, [name]: { ...point, at } } }
}

/** A whole axle that was checked once, for as many poses as wanted. */
type ReadyAxle =
  | { readonly beam: TwistBeam }
  | { readonly beam: null; readonly points: SolidAxlePoints; readonly axle: SolidAxle }

function readyAxle({ points, settings }: AxleBody): ReadyAxle {
  if ('location' in points) return { beam: null, points, axle: solidAxle(points, settings) }
  return { beam: { ...points, ...(settings.shim ? { shim: settings.shim } : {}) } }
}

function seenOf(axle: ReadyAxle, travel: Travel, drops: Readonly<Record<Side, number | null>>): Seen {
  const at = (side: Side): Float64Array | null =>
    drops[side] === null ? null : numbersOf(axle, travel, drops[side])
  return { straight: numbersOf(axle, travel, 0), turned: { left: at('left'), right: at('right') } }
}

function numbersOf(ready: ReadyAxle, travel: Travel, drop: number): Float64Array {
  const numbers = new Float64Array(axleNumbers)
  if (ready.beam) {
    const wheels = twistBeamReadings(ready.beam, { left: metre(travel.left), right: metre(travel.right) })
    for (const side of sides) {
      numbers[ofAxle(side, 'camber')] = wheels[side].camber
      numbers[ofAxle(side, 'toe')] = wheels[side].toe
      numbers[ofAxle(side, 'x')] = wheels[side].wheelCentre[0]
    }
    return numbers
  }
  const pose = axlePoseAt(ready.axle, driveOf(ready.points, travel, drop))
  for (const side of sides) {
    const wheel = pose[side]
    numbers[ofAxle(side, 'camber')] = wheel.camber
    numbers[ofAxle(side, 'caster')] = wheel.caster ?? 0
    numbers[ofAxle(side, 'sai')] = wheel.sai ?? 0
    numbers[ofAxle(side, 'toe')] = wheel.toe
    numbers[ofAxle(side, 'x')] = wheel.wheelCentre[0]
  }
  return numbers
}

function driveOf({ left, right }: SolidAxlePoints, travel: Travel, drop: number): AxleDrive {
  const across = left.wheelCentre[1] - right.wheelCentre[1]
  return {
    heave: metre((travel.left + travel.right) / 2),
    roll: rad(Math.asin(Math.max(-1, Math.min(1, (travel.left - travel.right) / across)))),
    drop: rad(drop),
  }
}

const slopeStep = 1e-3

/** Drop arm at which a wheel has turned 20° to its own side, rad; null where it does not get there. */
function dropForTurn(axle: ReadyAxle, travel: Travel, side: Side): number | null {
  try {
    const toe = (drop: number): number => numbersOf(axle, travel, drop)[ofAxle(side, 'toe')]!
    const straight = toe(0)
    let drop = 0
    for (let turn = 0; turn < 12; turn++) {
      const now = toe(drop)
      const miss = straight - inner - now
      if (Math.abs(miss) < 1e-7) return drop
      const slope = (toe(drop + slopeStep) - now) / slopeStep
      drop += Math.max(-0.15, Math.min(0.15, miss)) / slope
    }
  } catch {
    // the steering does not get there
  }
  return null
}

function slopesOf(
  axle: ReadyAxle,
  travel: Travel,
  drops: Readonly<Record<Side, number | null>>,
): Readonly<Record<Side, { readonly inner: number; readonly outer: number } | null>> {
  const of = (side: Side) => {
    const drop = drops[side]
    if (drop === null) return null
    const a = numbersOf(axle, travel, drop - slopeStep)
    const b = numbersOf(axle, travel, drop + slopeStep)
    const slope = (one: Side): number => (b[ofAxle(one, 'toe')]! - a[ofAxle(one, 'toe')]!) / (2 * slopeStep)
    return { inner: slope(side), outer: slope(side === 'left' ? 'right' : 'left') }
  }
  return { left: of('left'), right: of('right') }
}
