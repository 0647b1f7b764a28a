import { type Corner, cornerPoints, pointSpreads } from '../corner/index.ts'
import {
  type AnyCornerPoints,
  type Direction,
  type Displacement,
  type Mechanism,
  mechanism,
  type Pose,
  poseAt,
  rackForSide,
  ratesAt,
  type Side,
  sumOfDisplacements,
  type WheelRates,
} from '../linkage/index.ts'
import { metre } from '../quantity/index.ts'
import type { AxleModel, AxleWay } from './axle-model.ts'
import { cornerScatter } from './corner-scatter.ts'
import { rackForTurn } from './rack-for-turn.ts'
import { scaledDisplacement } from './scaled-displacement.ts'
import { axleNumbers, ofAxle, ofTurn } from './vehicle-vector.ts'

const sides = ['left', 'right'] as const

/** Where an axle is looked at, and what stands in it already. */
export interface Standing {
  readonly travel: Readonly<Record<Side, number>>
  readonly displaced: Readonly<Record<Side, Displacement>>
  /** Whether toe-out on turns is asked. */
  readonly turns: boolean
}

interface Wheel {
  readonly m: Mechanism
  readonly pose: Pose
  readonly rates: (direction: Direction) => WheelRates
}

/**
 * An axle whose wheels hang by themselves: both corners and their exact rates.
 *
 * @throws {Refusal} what the linkage says where the corner cannot stand so
 * @source own derivation: docs/methods/findings.md
 */
export function cornerAxleModel(corner: Corner, { travel, displaced, turns }: Standing): AxleModel {
  const points = cornerPoints(corner)
  const at = (side: Side, rack: number): Wheel => {
    const m = mechanism(points, displaced[side])
    const pose = poseAt(m, {
      travel: metre(travel[side]),
      rack: rackForSide({ side, rack: metre(rack) }),
    })
    return { m, pose, rates: ratesAt(m, pose) }
  }
  const straight = { left: at('left', 0), right: at('right', 0) }
  const steered = turns ? turnsOf(straight, at) : []
  const numbers = new Float64Array(axleNumbers)
  for (const side of sides) putNumbers(numbers, side, straight[side].pose)
  for (const turn of steered) numbers[ofTurn(turn.side)] = turn.value
  const along = (by: Readonly<Record<Side, Direction | null>>): Float64Array => {
    const rate = new Float64Array(axleNumbers)
    for (const side of sides) {
      const direction = by[side]
      if (!direction) continue
      const r = straight[side].rates(direction)
      rate[ofAxle(side, 'camber')] = r.camber
      rate[ofAxle(side, 'caster')] = r.caster ?? 0
      rate[ofAxle(side, 'sai')] = r.sai ?? 0
      rate[ofAxle(side, 'toe')] = r.toe
      rate[ofAxle(side, 'x')] = r.wheelCentre[0]
    }
    for (const turn of steered) rate[ofTurn(turn.side)] = turn.rate(by, rate)
    return rate
  }
  const scatter = cornerScatter(points, { ...pointSpreads(corner) })
  const none = { left: null, right: null }
  return {
    numbers,
    rate: (way: AxleWay) =>
      along({ left: directionOf(way, 'left', points), right: directionOf(way, 'right', points) }),
    chord: (way, size) => {
      const tangent = along({
        left: directionOf(way, 'left', points),
        right: directionOf(way, 'right', points),
      })
      try {
        for (const side of sides) {
          const by = directionOf(way, side, points)
          if (!by) continue
          const { rack = 0, ...displacement } = by
          const m = mechanism(
            points,
            sumOfDisplacements([displaced[side], scaledDisplacement(displacement, size)]),
          )
          const drive = { travel: metre(travel[side]), rack: metre(rack * size) }
          const after = new Float64Array(axleNumbers)
          putNumbers(after, side, poseAt(m, drive))
          for (let i = 0; i < 5; i++) {
            const k = ofAxle(side, 'camber') + i
            tangent[k] = (after[k]! - numbers[k]!) / size
          }
        }
        return tangent
      } catch {
        return null
      }
    },
    lift: (side) => along({ ...none, [side]: { travel: 1 } }),
    ofModel: scatter.ofModel.map((direction) => along({ left: direction, right: direction })),
    ofMaking: sides.flatMap((side) =>
      scatter.ofMaking.map((direction) => along({ ...none, [side]: direction })),
    ),
  }
}

function putNumbers(into: Float64Array, side: Side, { camber, caster, sai, toe, wheelCentre }: Pose): void {
  into[ofAxle(side, 'camber')] = camber
  into[ofAxle(side, 'caster')] = caster ?? 0
  into[ofAxle(side, 'sai')] = sai ?? 0
  into[ofAxle(side, 'toe')] = toe
  into[ofAxle(side, 'x')] = wheelCentre[0]
}

function directionOf(way: AxleWay, side: Side, points: AnyCornerPoints): Direction | null {
  const own = way[side]
  const rack = steerable(points) ? (way.rack ?? 0) * (side === 'left' ? 1 : -1) : 0
  return own || rack !== 0 ? { ...own, ...(rack === 0 ? {} : { rack }) } : null
}

const steerable = (points: AnyCornerPoints): boolean =>
  'tieOuter' in points || (points.layout === 'five-link' && points.links.some((link) => link.rack))

/** Toe-out on turns to one side, and its rate along anything that also changes what is read straight ahead. */
interface TurnOf {
  readonly side: Side
  readonly value: number
  readonly rate: (by: Readonly<Record<Side, Direction | null>>, straight: Float64Array) => number
}

function turnsOf(
  straight: Readonly<Record<Side, Wheel>>,
  at: (side: Side, rack: number) => Wheel,
): readonly TurnOf[] {
  return sides.flatMap((inner): TurnOf[] => {
    const outer = inner === 'left' ? 'right' : 'left'
    const rack = rackForTurn(straight[inner].m, straight[inner].pose)
    if (rack === null) return []
    const vehicleRack = inner === 'left' ? rack : -rack
    const [near, far] = [at(inner, vehicleRack), at(outer, vehicleRack)]
    const slope = (wheel: Wheel, side: Side): number => wheel.rates({ rack: side === 'left' ? 1 : -1 }).toe
    const [innerSlope, outerSlope] = [slope(near, inner), slope(far, outer)]
    return [
      {
        side: inner,
        value: straight[inner].pose.toe - near.pose.toe - (far.pose.toe - straight[outer].pose.toe),
        rate: (by, now) => {
          const inside = by[inner] ? near.rates(by[inner]).toe : 0
          const outside = by[outer] ? far.rates(by[outer]).toe : 0
          // the inner wheel stays at its angle: the rack makes up for what moved it
          const made = (now[ofAxle(inner, 'toe')]! - inside) / innerSlope
          return now[ofAxle(outer, 'toe')]! - (outside + outerSlope * made)
        },
      },
    ]
  })
}
