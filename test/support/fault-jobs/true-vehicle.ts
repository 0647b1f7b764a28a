import type { ExaminedWheel } from '../../../src/findings/index.ts'
import type { Point, ReadingName, Side } from '../../../src/linkage/index.ts'
import { type AxleState, sides, type TrueAxle, type WheelInBody, wheelsInBody } from './true-axle.ts'

/** The four springs, in this order everywhere. */
export const wheels: readonly ExaminedWheel[] = ['front left', 'front right', 'rear left', 'rear right']

/** A vehicle in the state that it is in, and the way it is read. */
export interface TrueVehicle {
  readonly axles: readonly TrueAxle[]
  readonly states: readonly AxleState[]
  /** How much shorter each spring is than the sheet has it (sagged: positive), m. */
  readonly springs: Readonly<Record<ExaminedWheel, number>>
  /** What measuring adds beside its stated errors. */
  readonly misread: Misread
}

interface Misread {
  /** Added to every camber, rad. */
  readonly camber: number
  /** Steer gauge off straight ahead, to the left, rad. */
  readonly steer: number
  /** Heights of the pads that nobody knows of, m. */
  readonly pads: Readonly<Record<ExaminedWheel, number>>
}

/** What gauges without error would read. Angles rad, lengths m. */
export interface TrueReadings {
  readonly angles: Readonly<Partial<Record<ReadingName, number>>>
  readonly heights: Readonly<Record<ExaminedWheel, number>>
  readonly setBack: number
}

/** Of a vehicle whose other axle is not looked at, m. */
const usualWheelbase = 2.65
const centreOf = ({ drawn }: TrueAxle): Point =>
  'layout' in drawn ? drawn.wheelCentre : drawn.left.wheelCentre
const wheelbaseOf = (axles: readonly TrueAxle[]): number =>
  axles.length === 2 ? Math.abs(centreOf(axles[0]!)[0] - centreOf(axles[1]!)[0]) : usualWheelbase

/** A body with four like springs on a flat floor: it can lift, pitch and roll, so only a warp of the springs' lengths is lost. */
const warp: Readonly<Record<ExaminedWheel, number>> = {
  'front left': 0.5,
  'front right': -0.5,
  'rear left': -0.5,
  'rear right': 0.5,
}

/** How far each wheel stands above its design height in the body. */
export function travels(springs: TrueVehicle['springs']): Record<ExaminedWheel, number> {
  const lost = wheels.reduce((sum, wheel) => sum + warp[wheel] * springs[wheel], 0)
  const at = {} as Record<ExaminedWheel, number>
  for (const wheel of wheels) at[wheel] = springs[wheel] - warp[wheel] * lost
  return at
}

/** Angles against the floor, heights, set-back. @throws {Refusal} where an axle cannot be assembled. */
export function readingsOf({ axles, states, springs, misread }: TrueVehicle): TrueReadings {
  const heights = travels(springs)
  const angles: Partial<Record<ReadingName, number>> = {}
  const ends = (pick: Readonly<Record<ExaminedWheel, number>>, end: 'front' | 'rear'): number =>
    (pick[`${end} left`] + pick[`${end} right`]) / 2
  const wheelbase = wheelbaseOf(axles)
  // nose down, by the springs; nose up, by the pads
  const pitch = (ends(heights, 'front') - ends(heights, 'rear')) / wheelbase
  const floorPitch = (ends(misread.pads, 'front') - ends(misread.pads, 'rear')) / wheelbase
  let setBack = 0
  for (const [i, axle] of axles.entries()) {
    const { end } = axle
    const travel = { left: heights[`${end} left`], right: heights[`${end} right`] }
    const both = wheelsInBody(axle, states[i]!, { travel, steer: 0 })
    const track = 2 * centreOf(axle)[1]
    const lean = (travel.left - travel.right) / track
    const floor = (misread.pads[`${end} left`] - misread.pads[`${end} right`]) / track
    for (const side of sides) {
      const out = side === 'left' ? 1 : -1
      const one = both[side]
      angles[`${end} ${side} camber`] = one.camber + out * (lean - floor) + misread.camber
      angles[`${end} ${side} toe`] = one.toe
      if (end !== 'front' || one.caster === null || one.sai === null) continue
      const sai = one.sai - out * (lean - floor)
      angles[`front ${side} sai`] = sai
      // a sweep that starts off centre takes some of the axis' inward tilt for caster, left against right
      angles[`front ${side} caster`] =
        one.caster - pitch + floorPitch + out * Math.tan(misread.steer) * Math.tan(sai)
    }
    if (end === 'front') setBack = both.left.x - both.right.x
  }
  return { angles, heights, setBack }
}

const inner = (20 * Math.PI) / 180

/**
 * Toe-out on turns to a side: how much more the inner wheel has turned since straight ahead, when it has turned 20°.
 * Null when the steering does not get there.
 */
export function turnTo(vehicle: TrueVehicle, side: Side): number | null {
  const i = vehicle.axles.findIndex(({ end }) => end === 'front')
  const axle = vehicle.axles[i]!
  const heights = travels(vehicle.springs)
  const travel = { left: heights['front left'], right: heights['front right'] }
  const at = (steer: number): Record<Side, WheelInBody> =>
    wheelsInBody(axle, vehicle.states[i]!, { travel, steer })
  try {
    const straight = at(0)
    const outer = side === 'left' ? 'right' : 'left'
    /** Turned to the side asked for, since straight ahead: that wheel goes to toe-out. */
    const turned = (one: Record<Side, WheelInBody>): number => straight[side].toe - one[side].toe
    const unit = 'location' in axle.drawn ? 0.01 : 0.001
    let [a, b] = [0, unit]
    let [fa, fb] = [-inner, turned(at(b)) - inner]
    for (let turn = 0; turn < 20 && Math.abs(fb) > 1e-7; turn++) {
      const step = (-fb * (b - a)) / (fb - fa)
      const next = b + Math.max(-20 * unit, Math.min(20 * unit, step))
      ;[a, fa] = [b, fb]
      b = next
      fb = turned(at(b)) - inner
    }
    if (Math.abs(fb) > 1e-6) return null
    return inner - (at(b)[outer].toe - straight[outer].toe)
  } catch {
    return null
  }
}
