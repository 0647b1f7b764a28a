import { metre, type Radian, Refusal } from '../../quantity/index.ts'
import { familyOf } from '../layouts.ts'
import type { CornerRefusal } from '../parse-clock.ts'
import type { CornerAt } from './corner-at.ts'
import type { Posed } from './posed.ts'
import { posedAt } from './posed-at.ts'

/** A steered corner: its pose, and how the rack that steers it there changes with each unknown. */
export interface SteeredTo {
  readonly posed: Posed
  readonly rack: number
  /** m per unit of the unknown, steer held. */
  readonly rackSlopes: () => Float64Array
}

/** Turns of Newton; four are usual. */
const mostTurns = 30
/** Close enough, rad: far below any gauge, and then the slope takes up the rest. */
const closeEnough = 1e-12

/**
 * The rack at which a wheel has turned outward by an angle from straight ahead, as turn plates show it.
 *
 *     toe(rack) = toe(0) − outward
 *
 * @param outward front of the wheel away from the centre line is positive: the wheel on the inside of its turn
 * @throws {Refusal} `not-for-this-layout` where no rack steers; `unreachable` past the lock
 * @source own derivation: docs/methods/fit.md
 */
export function steeredTo(corner: CornerAt, travel: number, outward: Radian): SteeredTo {
  const { layout, steeredLink, axle } = corner.unknowns.corner
  const family = familyOf(layout)
  const steers =
    axle === 'front' && (family === 'five-link' ? steeredLink !== undefined : family !== 'semi-trailing arm')
  if (!steers)
    throw new Refusal<CornerRefusal>({
      code: 'not-for-this-layout',
      at: 'outward',
      given: layout,
      sentence: 'No steering moves a link of this corner, so nothing can be read of it at lock.',
      remedy: 'Leave out what was read at lock.',
    })
  const straight = posedAt(corner, { travel: metre(travel), rack: metre(0) })
  const toe0 = straight.angle('toe')
  let rack = outward === 0 ? 0 : -outward / straight.perRack('toe')
  let posed = posedAt(corner, { travel: metre(travel), rack: metre(rack) })
  for (let turn = 0; turn < mostTurns; turn++) {
    const off = posed.pose.toe - (toe0.value - outward)
    if (Math.abs(off) < closeEnough) break
    rack -= off / posed.perRack('toe')
    posed = posedAt(corner, { travel: metre(travel), rack: metre(rack) })
  }
  const rackSlopes = () => {
    const per = posed.perRack('toe')
    return posed.angle('toe').slopes.map((slope, i) => (toe0.slopes[i]! - slope) / per)
  }
  return { posed, rack, rackSlopes }
}
