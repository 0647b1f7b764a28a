import { type Radian, Refusal, rad } from '../quantity/index.ts'
import { angleOnCircle } from './angle-on-circle.ts'
import { checkKinds } from './check-kinds.ts'
import { checkFinite } from './check-points.ts'
import { type RodOnPin, rodOnPin } from './knuckle-on-axle.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Point } from './points.ts'
import { noTurn, turnAbout, turnedBy } from './quaternion.ts'
import type { BoxSteering } from './steering-points.ts'
import { cross, minus, norm, plus, unit } from './vector.ts'

/** Shorter than this is no length, m; below this part of a length there is no lever. */
const nothing = 1e-6

/**
 * The idler arm's angle for the drop arm's: a spatial four-bar with a ball joint at each end of the centre link. Of
 * the two assemblies the one of straight ahead.
 *
 * @param drop turn of the drop arm from straight ahead, rad
 * @returns rad, 0 at 0
 * @throws {Refusal} `not-finite`; `bad-input`; `zero-length-link` of the centre link; `coincident-pivots` of an axis;
 *   `degenerate` for a joint on its arm's axis; `singular` at a dead centre; `unreachable` past the end of the way
 * @source own derivation: docs/methods/steering.md; E cos φ + F sin φ + G = 0 (Hartenberg and Denavit)
 * @example inDegrees(idlerAngle(box, deg(20))) // 20
 */
export function idlerAngle(box: BoxSteering, drop: Radian): Radian {
  checkFinite({ drop }, '')
  checkKinds(drop, 'number', 'drop')
  checkBox(box)
  const found = idlerAt(box, drop)
  if (typeof found === 'number') return rad(found)
  let [low, high] = [0, 1]
  // in steps, so that a gap on the way counts; then closed in on
  for (let i = 1; i <= 64; i++)
    if (typeof idlerAt(box, (drop * i) / 64) !== 'number') {
      ;[low, high] = [(i - 1) / 64, i / 64]
      break
    }
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (typeof idlerAt(box, drop * middle) === 'number') low = middle
    else high = middle
  }
  throw tooFar(drop, low * drop, found, norm(minus(box.idlerJoint, box.dropJoint)))
}

/** Where the drop arm's joint stands. */
export const dropJointAt = ({ dropAxis, dropJoint }: BoxSteering, drop: number): Point =>
  aboutAxis(dropAxis, dropJoint, drop)

/** A point turned about an axis. */
export const aboutAxis = ([from, to]: readonly [Point, Point], point: Point, angle: number): Point =>
  plus(from, turnedBy(turnAbout(unit(minus(to, from)), angle), minus(point, from)))

function idlerAt(box: BoxSteering, drop: number): number | RodOnPin {
  const rod = idlerRod(box, dropJointAt(box, drop))
  return angleOnCircle(rod.p, rod.q, rod.value, idlerRod(box, box.dropJoint).q > 0) ?? rod
}

function idlerRod({ idlerAxis, idlerJoint, dropJoint }: BoxSteering, end: Point): RodOnPin {
  const [lower, to] = idlerAxis
  const pin = { lower, k: unit(minus(to, lower)) }
  const arm = { side: 'left', pin, seat: noTurn, spin: [0, 1, 0] } as const
  return rodOnPin(arm, idlerJoint, end, norm(minus(idlerJoint, dropJoint)))
}

const no = (code: LinkageRefusal, at: string, sentence: string, remedy: string): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({ code, at, given: '', sentence, remedy })

/** A box that can steer. */
function checkBox(box: BoxSteering): void {
  checkFinite(box, '')
  const line = ['point', 'point'] as const
  checkKinds(
    box,
    { dropAxis: line, dropJoint: 'point', idlerAxis: line, idlerJoint: 'point', ratio: 'number' },
    '',
  )
  const { dropAxis, dropJoint, idlerAxis, idlerJoint, ratio } = box
  const again = 'Measure these points again.'
  if (!(Math.abs(ratio) > nothing))
    throw no(
      'bad-input',
      'ratio',
      `The steering ratio of the box is ${ratio}.`,
      'Give how far the steering wheel turns per turn of the drop arm.',
    )
  if (norm(minus(dropJoint, idlerJoint)) < nothing)
    throw no(
      'zero-length-link',
      'centreLink',
      'The centre link has no length: its joints are one point.',
      again,
    )
  const arms = [
    ['drop', dropAxis, dropJoint],
    ['idler', idlerAxis, idlerJoint],
  ] as const
  for (const [name, [from, to]] of arms)
    if (norm(minus(from, to)) < nothing)
      throw no(
        'coincident-pivots',
        `${name}Axis`,
        `The ${name} arm has no axis: its two points are one.`,
        again,
      )
  for (const [name, [from, to], joint] of arms) {
    const out = minus(joint, from)
    if (norm(cross(unit(minus(to, from)), out)) < Math.max(nothing, nothing * norm(out)))
      throw no('degenerate', `${name}Joint`, `The ${name} arm's joint lies on its own axis.`, again)
  }
  const { q } = idlerRod(box, dropJoint)
  const room = norm(minus(dropJoint, idlerJoint)) * norm(minus(idlerJoint, idlerAxis[0]))
  if (!(Math.abs(q) > nothing * room))
    throw no(
      'singular',
      'centreLink',
      'At straight ahead the centre link points through the idler, so it cannot say which way the idler turns.',
      again,
    )
}

function tooFar(drop: number, end: number, rod: RodOnPin, length: number): Refusal<LinkageRefusal> {
  const degrees = (angle: number): string => `${angle > 0 ? '+' : ''}${((angle * 180) / Math.PI).toFixed(2)}°`
  const [way, by] = length < rod.shortest ? ['short', rod.shortest - length] : ['long', length - rod.longest]
  return new Refusal<LinkageRefusal>({
    code: 'unreachable',
    at: 'centreLink',
    given: degrees(drop),
    sentence: `The drop arm cannot be at ${degrees(drop)}: there the centre link is too ${way} by about ${(1000 * by).toFixed(1)} mm. Coming from straight ahead the way ends at ${degrees(end)}.`,
    remedy: 'Ask for less than that, or measure both arms and the centre link again.',
  })
}
