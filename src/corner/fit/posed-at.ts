import {
  type Direction,
  type Displacement,
  type Drive,
  displaced,
  type Point,
  poseAt,
  ratesAt,
  sumOfDisplacements,
  type WheelRates,
} from '../../linkage/index.ts'
import { atRide } from './at-ride.ts'
import type { CornerAt } from './corner-at.ts'
import { pointDirections } from './point-directions.ts'
import type { Posed } from './posed.ts'
import { seenLazily } from './seen-lazily.ts'

/** What displaces the points there, and how that changes with each unknown. */
export interface Shift {
  readonly by: Displacement
  /** By unknown; empty where it stays. */
  readonly slopes: () => readonly Displacement[]
}

/**
 * The pose at a drive, adjusters moved by `shift`, with analytic slopes.
 *
 * @throws {Refusal} what the linkage room says; `not-for-this-layout` for an angle that the layout does not have
 */
export function posedAt(corner: CornerAt, drive: Drive, shift: Shift | null = null): Posed {
  const key = `${drive.travel} ${drive.rack}`
  const known = shift ? undefined : corner.posed.get(key)
  if (known) return known
  const drawn = corner.linkage().mechanism
  const m = shift ? displaced(drawn, shift.by) : drawn
  const pose = poseAt(m, drive)
  let made: ReturnType<typeof ratesAt> | undefined
  const rates = () => {
    made ??= ratesAt(m, pose)
    return made
  }
  let columns: WheelRates[] | undefined
  const posed: Posed = {
    pose,
    angle: (name) =>
      seenLazily(pose[name] ?? atRide(corner, name).value, () => {
        columns ??= pointDirections(corner).map((direction, i) =>
          rates()(joined(beforeSpin(direction, shift?.by.spin), shift?.slopes()[i])),
        )
        return Float64Array.from(columns, (rate) => rate[name] ?? 0)
      }),
    perRack: (name) => rates()({ rack: 1 })[name] ?? 0,
  }
  if (!shift) corner.posed.set(key, posed)
  return posed
}

function joined(direction: Direction, more: Displacement | undefined): Direction {
  if (!more) return direction
  return {
    ...sumOfDisplacements([direction, more]),
    ...(direction.travel ? { travel: direction.travel } : {}),
  }
}

/**
 * Camber and toe turn the spin axis before an adjuster turns it further by φ: the rotation vector that does the same after it,
 * Jr⁻¹(φ) ω = ω + φ × ω / 2 + c φ × (φ × ω),  c = 1/θ² − (1 + cos θ) / (2 θ sin θ),  θ = |φ|.
 */
function beforeSpin(direction: Direction, phi: Point | undefined): Direction {
  if (!direction.spin || !phi) return direction
  const theta = Math.hypot(...phi)
  // 1/12 + θ²/720 is exact to a double below this, where the quotients cancel
  const c =
    theta < 1e-2
      ? 1 / 12 + theta ** 2 / 720
      : 1 / theta ** 2 - (1 + Math.cos(theta)) / (2 * theta * Math.sin(theta))
  const once = cross(phi, direction.spin)
  const twice = cross(phi, once)
  const at = (k: 0 | 1 | 2) => direction.spin![k] + once[k] / 2 + c * twice[k]
  return { ...direction, spin: [at(0), at(1), at(2)] }
}

const cross = ([a, b, c]: Point, [x, y, z]: Point): Point => [b * z - c * y, c * x - a * z, a * y - b * x]
