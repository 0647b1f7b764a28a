import { type Metre, metre, Refusal } from '../quantity/index.ts'
import { angleOnCircle } from './angle-on-circle.ts'
import { bumpSense } from './bump-sense.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import { bodyAt, strutTopAt } from './numeric-form.ts'
import type { Point } from './points.ts'
import { leastTurn, type Quaternion, turnAbout, turnAfter, turnedBy } from './quaternion.ts'
import { cross, dot, minus, plus, times, unit } from './vector.ts'

/** The circle that a hinged wheel centre goes round on, as displaced. */
interface HingeCircle {
  /** Where the front eye sits on the body. */
  readonly front: Point
  /** Unit, front bush → rear bush. */
  readonly axis: Point
  /** Quaternion that lays the arm's eyes on the axis by the least turn. */
  readonly laid: Quaternion
  /** Front bush to wheel centre, arm laid on the axis. */
  readonly arm: Point
  /** Height of the wheel centre = middle + p cos φ + q sin φ. */
  readonly middle: number
  readonly p: number
  readonly q: number
}

/**
 * State of a hinged wheel at a height: turned about the axis until its centre is there, on the side of the circle
 * where the design pose lies. Null past the circle's top or bottom.
 *
 * @param form numbers of the corner as displaced
 * @source own derivation: docs/methods/trailing-arm.md
 */
export function hingeState(m: Mechanism, form: Float64Array, height: number): Float64Array | null {
  const { front, axis, laid, arm, middle, p, q } = hingeCircle(form)
  // the axis used here runs from front to rear, against the sense of the arm's angle
  const phi = angleOnCircle(p, q, height - middle, bumpSense(m.points) < 0)
  if (phi === null) return null
  const [c, s] = [Math.cos(phi / 2), Math.sin(phi / 2)]
  const turn = turnAfter(turnAbout(axis, phi), laid)
  // Rodrigues with 1 − cos φ = 2 sin²(φ/2)
  const centre = plus(
    plus(front, arm),
    plus(times(2 * s * c, cross(axis, arm)), times(2 * s * s, cross(axis, cross(axis, arm)))),
  )
  return Float64Array.of(centre[0], centre[1], height, ...turn)
}

/** Travel at the top and the bottom of a hinged wheel's circle: where it turns back. */
export function hingeRange(m: Mechanism): { up: Metre; down: Metre } {
  const { middle, p, q } = hingeCircle(m.form)
  const radius = Math.hypot(p, q)
  return { up: metre(middle + radius - m.home[2]), down: metre(middle - radius - m.home[2]) }
}

/** The refusal for a travel past the top or bottom of the wheel's circle. */
export function hingeTooShort(m: Mechanism, travel: Metre): Refusal<LinkageRefusal> {
  const { up, down } = hingeRange(m)
  const [end, place] = travel > up ? [up, 'top'] : [down, 'bottom']
  const by = Math.abs(travel - end)
  return new Refusal<LinkageRefusal>({
    code: 'unreachable',
    at: 'arm',
    given: `travel ${signed(travel)}`,
    sentence: `The wheel cannot be at travel ${signed(travel)}: the ${place} of its circle about the hinge lies ${(1000 * by).toFixed(1)} mm short of it. Coming from the design pose the way ends at travel ${signed(end)}.`,
    remedy: 'Ask for less than that, or measure both bushes and the wheel centre again.',
  })
}

const signed = (metres: number): string => `${metres > 0 ? '+' : ''}${(metres * 1000).toFixed(2)} mm`

function hingeCircle(form: Float64Array): HingeCircle {
  const at = (i: number, j: number, k: number): Point => [form[i]!, form[j]!, form[k]!]
  // each of the three links that hold the front eye is shifted along another coordinate
  const front = at(bodyAt + 3, bodyAt + 1, bodyAt + 2)
  const axis = unit(minus(at(bodyAt + 9, bodyAt + 10, bodyAt + 11), front))
  const eye = at(0, 1, 2)
  const laid = leastTurn(unit(minus(at(strutTopAt, strutTopAt + 1, strutTopAt + 2), eye)), axis)
  const arm = turnedBy(laid, times(-1, eye))
  const along = dot(arm, axis)
  const [p, q] = [arm[2] - along * axis[2], cross(axis, arm)[2]]
  return { front, axis, laid, arm, middle: front[2] + along * axis[2], p, q }
}
