import { type Metre, metre, Refusal } from '../quantity/index.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import type { Drive, Point } from './points.ts'
import type { Pose } from './pose.ts'
import { poseAt } from './pose-at.ts'
import { bodyPoint } from './pose-of-state.ts'
import { ratesAt } from './rates-at.ts'
import { cross, dot, minus, plus } from './vector.ts'

/**
 * `drawing board`: the traces of the arms' planes in the transverse plane through the wheel centre. `instantaneous`:
 * from the velocities of the knuckle in bump. They agree only where all motion stays in transverse planes.
 *
 * @source definition
 */
export type CentreMethod = 'drawing board' | 'instantaneous'

/** Front-view line from the contact point to the instant centre, and the centre itself. @source definition */
export interface InstantCentre {
  readonly how: CentreMethod
  /** y and z of the centre in body axes; null when it lies at infinity. */
  readonly centre: { readonly y: Metre; readonly z: Metre } | null
  /** Contact point to centre, along y, m; null at infinity. Positive when the centre lies inboard. */
  readonly swingArm: Metre | null
  /** Slope dz/dy of the line from the contact point to the centre. */
  readonly slope: number
  readonly pose: Pose
}

/**
 * The front-view instant centre of the wheel against the body.
 *
 * @throws {Refusal} as `poseAt`; `not-for-this-layout` for the drawing-board way where there are no arm planes;
 *   `singular` when the wheel has no front-view motion to draw
 * @source own derivation: docs/methods/roll-centre.md
 * @example instantCentre(m, ride, 'instantaneous').swingArm // 1.96731 m
 */
export function instantCentre(m: Mechanism, drive: Drive, how: CentreMethod): InstantCentre {
  const pose = poseAt(m, drive)
  return how === 'drawing board' ? byPlanes(m, pose) : byVelocities(m, pose)
}

function byVelocities(m: Mechanism, pose: Pose): InstantCentre {
  const { wheelCentre, turn } = ratesAt(m, pose)({ travel: 1 })
  const v = plus(wheelCentre, cross(turn, minus(pose.contact, pose.wheelCentre)))
  if (Math.abs(v[2]) < 1e-9) throw noMotion()
  const slope = -v[1] / v[2]
  if (Math.abs(turn[0]) < 1e-9) return { how: 'instantaneous', centre: null, swingArm: null, slope, pose }
  const arm = v[2] / turn[0]
  return {
    how: 'instantaneous',
    centre: { y: metre(pose.contact[1] - arm), z: metre(pose.contact[2] + v[1] / turn[0]) },
    swingArm: metre(arm),
    slope,
    pose,
  }
}

/** A line in the transverse plane: y · a + z · b = c. */
type Trace = readonly [a: number, b: number, c: number]

function byPlanes(m: Mechanism, pose: Pose): InstantCentre {
  const how = 'drawing board'
  if (m.points.layout === 'five-link' || m.points.layout === 'semi-trailing arm')
    throw new Refusal<LinkageRefusal>({
      code: 'not-for-this-layout',
      at: 'layout',
      sentence: `A ${m.points.layout} corner has no arm planes to draw.`,
      remedy: 'Ask for the instantaneous centre.',
    })
  const x = pose.wheelCentre[0]
  const trace = (normal: Point, through: Point): Trace => [
    normal[1],
    normal[2],
    dot(normal, through) - normal[0] * x,
  ]
  const armTrace = (name: 'upper' | 'lower'): Trace => {
    const front = bodyPoint(m, `${name}FrontInner`)
    const outer = pose.points[`${name}Outer`]!
    return trace(cross(minus(front, bodyPoint(m, `${name}RearInner`)), minus(outer, front)), outer)
  }
  const [a1, b1, c1] = armTrace('lower')
  const top = m.facts.strut ? bodyPoint(m, 'topMount') : null
  // a strut's upper "plane" goes through the top mount, square to the strut
  const [a2, b2, c2] = top ? trace(minus(top, pose.points['strutLower']!), top) : armTrace('upper')
  const scale = Math.hypot(a1, b1) * Math.hypot(a2, b2)
  if (scale === 0) throw noMotion()
  const determinant = a1 * b2 - a2 * b1
  const [, cy, cz] = pose.contact
  if (Math.abs(determinant) < 1e-9 * scale) {
    if (Math.abs(b1) < 1e-9 * Math.hypot(a1, b1)) throw noMotion()
    return { how, centre: null, swingArm: null, slope: -a1 / b1, pose }
  }
  const y = (c1 * b2 - c2 * b1) / determinant
  const z = (a1 * c2 - a2 * c1) / determinant
  if (Math.abs(y - cy) < 1e-9) throw noMotion()
  return {
    how,
    centre: { y: metre(y), z: metre(z) },
    swingArm: metre(cy - y),
    slope: (z - cz) / (y - cy),
    pose,
  }
}

const noMotion = (): Refusal<LinkageRefusal> =>
  new Refusal({
    code: 'singular',
    at: 'contact',
    sentence: 'In this pose the line from the contact point to the instant centre stands upright.',
    remedy: 'Ask for another travel.',
  })
