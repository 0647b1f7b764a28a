import { type Metre, type Radian, Refusal, rad } from '../quantity/index.ts'
import { angleOnCircle } from './angle-on-circle.ts'
import { checkDrive } from './check-drive.ts'
import { checkKinds } from './check-kinds.ts'
import { checkFinite } from './check-points.ts'
import { checkTwistBeam, effectivePoint } from './effective-point.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import { mirrorPoint } from './mirror-point.ts'
import type { Point } from './points.ts'
import { contactOf } from './pose-of-state.ts'
import { type Quaternion, turnAbout, turnAfter, turnedBy } from './quaternion.ts'
import type { TwistBeam } from './twist-beam-points.ts'
import { cross, dot, minus, plus, times, unit } from './vector.ts'
import type { Side } from './wheel-angles.ts'

/** What is read at one wheel of a twist beam; places in vehicle axes. @source definition */
export interface TwistBeamWheel {
  readonly camber: Radian
  readonly toe: Radian
  readonly wheelCentre: Point
  /** Unit, outward. */
  readonly spinAxis: Point
  readonly contact: Point
  /** Turn of this arm against the middle position of both, bump positive: half of the beam's twist. */
  readonly twist: Radian
}
type Travel = Readonly<Record<Side, Metre>>

/**
 * Camber and toe of both wheels of a twist beam at their travels: first both arms turn together about the pivots' line
 * to the mean height, then each about the line from its pivot to the effective point, to its own height.
 *
 * @throws {Refusal} `not-finite`; `bad-input`; `coincident-pivots`; `singular`; `unreachable` past the top or bottom of
 *   a wheel's circle; `degenerate` when a wheel would lie flat
 * @assumes bushes give way to turning only; a real beam's toe also moves with side force
 * @source own derivation: docs/methods/twist-beam.md
 * @example inDegrees(twistBeamReadings(beam, { left: mm(40), right: mm(-40) }).left.camber) // -2.708474
 */
export function twistBeamReadings(beam: TwistBeam, travel: Travel): Readonly<Record<Side, TwistBeamWheel>> {
  checkTwistBeam(beam)
  checkFinite({ travel }, '')
  checkKinds(travel, { left: 'number', right: 'number' }, 'travel')
  checkDrive({ left: travel.left, right: travel.right })
  const turns = turnsOf(beam, travel, 1)
  if ('barred' in turns) throw tooFar(beam, travel, turns.barred)
  return { left: wheelOf(beam, 'left', turns.left), right: wheelOf(beam, 'right', turns.right) }
}

interface ArmTurn {
  readonly turn: Quaternion
  readonly twist: number
}
const sides = ['left', 'right'] as const

/** Height of a point turned about an axis through `through`: level + p cos + q sin. */
function heightOf(through: Point, axis: Point, point: Point): { level: number; p: number; q: number } {
  const r = minus(point, through)
  const level = dot(r, axis) * axis[2]
  return { level: through[2] + level, p: r[2] - level, q: cross(axis, r)[2] }
}

/** Turns of both arms at a share of the travels, or what bars them. */
function turnsOf(
  beam: TwistBeam,
  travel: Travel,
  share: number,
): Readonly<Record<Side, ArmTurn>> | { readonly barred: Side | 'beam' } {
  const { left, right } = beam
  const line = unit(minus(left.pivot, right.pivot))
  const [a, b] = sides.map((side) => heightOf(left.pivot, line, beam[side].wheelCentre)) as [Height, Height]
  const mean = (left.wheelCentre[2] + right.wheelCentre[2] + share * (travel.left + travel.right)) / 2
  const p = (a.p + b.p) / 2
  const q = (a.q + b.q) / 2
  const together = angleOnCircle(p, q, mean - (a.level + b.level) / 2, q > 0)
  if (together === null) return { barred: 'beam' }
  const common = turnAbout(line, together)
  const carried = (point: Point): Point => plus(left.pivot, turnedBy(common, minus(point, left.pivot)))
  const still = carried(effectivePoint(beam))
  const arms: Partial<Record<Side, ArmTurn>> = {}
  for (const side of sides) {
    const { pivot, wheelCentre } = beam[side]
    const axis = bumpAxis(pivot, effectivePoint(beam), wheelCentre, unit(minus(pivot, still)))
    const h = heightOf(pivot, axis, carried(wheelCentre))
    const twist = angleOnCircle(h.p, h.q, wheelCentre[2] + share * travel[side] - h.level, true)
    if (twist === null) return { barred: side }
    arms[side] = { turn: turnAfter(turnAbout(axis, twist), common), twist }
  }
  return arms as Record<Side, ArmTurn>
}
type Height = ReturnType<typeof heightOf>

/** The axis turned so that at design a turn about it lifts the wheel. */
const bumpAxis = (pivot: Point, still: Point, hub: Point, axis: Point): Point =>
  cross(minus(pivot, still), minus(hub, pivot))[2] < 0 ? times(-1, axis) : axis

function wheelOf(beam: TwistBeam, side: Side, { turn, twist }: ArmTurn): TwistBeamWheel {
  const { pivot, wheelCentre, camber, toe, tyreRadius } = beam[side]
  const c = camber + (beam.shim?.[side]?.camber ?? 0)
  const t = toe + (beam.shim?.[side]?.toe ?? 0)
  const mirrored = (p: Point): Point => (side === 'left' ? p : mirrorPoint(p))
  const spinAxis = turnedBy(
    turn,
    mirrored([Math.cos(c) * Math.sin(t), Math.cos(c) * Math.cos(t), -Math.sin(c)]),
  )
  const hub = plus(pivot, turnedBy(turn, minus(wheelCentre, pivot)))
  const s = mirrored(spinAxis)
  return {
    camber: rad(-Math.asin(Math.min(1, Math.max(-1, s[2])))),
    toe: rad(Math.atan2(s[0], s[1])),
    wheelCentre: hub,
    spinAxis,
    contact: mirrored(contactOf(mirrored(hub), s, tyreRadius)),
    twist: rad(twist),
  }
}

function tooFar(beam: TwistBeam, travel: Travel, barred: Side | 'beam'): Refusal<LinkageRefusal> {
  let [low, high] = [0, 1]
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if ('barred' in turnsOf(beam, travel, middle)) high = middle
    else low = middle
  }
  const spoken = (share: number): string =>
    sides.map((side) => `${side} ${(1000 * share * travel[side]).toFixed(2)} mm`).join(', ')
  const who = barred === 'beam' ? 'both wheels together come' : `the ${barred} wheel comes`
  return new Refusal<LinkageRefusal>({
    code: 'unreachable',
    at: barred,
    given: spoken(1),
    sentence: `The wheels cannot be at ${spoken(1)} of travel: ${who} to the top or bottom of the circle before that. Coming from the design pose the way ends at ${spoken(low)}.`,
    remedy: 'Ask for less than that, or measure the pivots and the wheel centres again.',
  })
}
