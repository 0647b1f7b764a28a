import { metre, type Radian, Refusal, rad } from '../quantity/index.ts'
import { checkKinds } from './check-kinds.ts'
import { checkFinite } from './check-points.ts'
import { aboutAxis, dropJointAt, idlerAngle } from './idler-angle.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Point } from './points.ts'
import { leastTurn, turnedBy } from './quaternion.ts'
import type { BoxSteering, RackSteering } from './steering-points.ts'
import { minus, plus, unit } from './vector.ts'
import type { Side } from './wheel-angles.ts'

/** How far the steering moves the inner tie-rod points of both sides, vehicle axes. @source definition */
export interface SteeringShift {
  readonly shift: Readonly<Record<Side, Point>>
  /** Turns of the arms from straight ahead; null with a rack. */
  readonly drop: Radian | null
  readonly idler: Radian | null
}

/**
 * What a steering wheel angle does to the inner tie-rod points: a rack pushes both along y; a box turns the drop arm,
 * the idler follows, and the centre link carries them.
 *
 * @param wheel steering wheel from straight ahead, to the left positive, rad
 * @param inner the points at straight ahead, vehicle axes (right: negative y)
 * @assumes the centre link does not roll about itself; points on the line of its joints do not notice
 * @throws {Refusal} `not-finite`; `bad-input`; `unreachable` and the rest, as `idlerAngle`
 * @source own derivation: docs/methods/steering.md
 * @example steeringShift({ kind: 'rack', perTurn: mm(45) }, { wheel: deg(90), inner }).shift.left // [0, 0.01125, 0]
 */
export function steeringShift(
  steering: RackSteering | BoxSteering,
  { wheel, inner }: { readonly wheel: Radian; readonly inner: Readonly<Record<Side, Point>> },
): SteeringShift {
  checkFinite({ wheel, inner, steering }, '')
  checkKinds({ wheel, inner }, { wheel: 'number', inner: { left: 'point', right: 'point' } }, '')
  if (steering.kind === 'rack') {
    const push: Point = [0, rackAt(steering, wheel), 0]
    return { shift: { left: push, right: push }, drop: null, idler: null }
  }
  const drop = rad(wheel / steering.ratio)
  const idler = idlerAngle(steering, drop)
  const from = steering.dropJoint
  const to = dropJointAt(steering, drop)
  const turn = leastTurn(
    unit(minus(steering.idlerJoint, from)),
    unit(minus(aboutAxis(steering.idlerAxis, steering.idlerJoint, idler), to)),
  )
  const shift = (point: Point): Point => minus(plus(to, turnedBy(turn, minus(point, from))), point)
  return { shift: { left: shift(inner.left), right: shift(inner.right) }, drop, idler }
}

/** Where a rack stands at a steering wheel angle, to the left positive, m. */
export function rackAt({ perTurn }: RackSteering, wheel: number): number {
  if (perTurn === 0)
    throw new Refusal<LinkageRefusal>({
      code: 'bad-input',
      at: 'perTurn',
      given: '0',
      sentence: 'The rack does not move when the steering wheel turns.',
      remedy: 'Give how far the rack moves per turn of the steering wheel.',
    })
  return metre((perTurn * wheel) / (2 * Math.PI))
}
