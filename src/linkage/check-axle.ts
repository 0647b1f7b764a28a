import { Refusal } from '../quantity/index.ts'
import { checkKinds } from './check-kinds.ts'
import { checkFinite } from './check-points.ts'
import { axleKnuckle, middleOf, rodOnPin } from './knuckle-on-axle.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Point } from './points.ts'
import { sentenceStart } from './sentence-start.ts'
import type { AxleSettings, AxleWheel, SolidAxlePoints } from './solid-axle-points.ts'
import { solveLinear } from './solve-linear.ts'
import { spokenPlace } from './spoken-place.ts'
import { cross, minus, norm, unit } from './vector.ts'
import type { Side } from './wheel-angles.ts'

/** Shorter than this is no length, m; below this part of a length there is no lever. */
const nothing = 1e-6

const no = (code: LinkageRefusal, at: string, sentence: string, remedy: string): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({ code, at, given: '', sentence, remedy })

const line = ['point', 'point'] as const
const hub = { wheelCentre: 'point', camber: 'number', toe: 'number', tyreRadius: 'number' } as const
const rod = { inner: 'point', outer: 'point' } as const

/** Everything that an axle and its settings are made of is there. */
function checkMade(points: SolidAxlePoints, by: AxleSettings): void {
  checkKinds(points, { left: hub, right: hub, location: {} }, '')
  const { location, steering, left, right } = points
  for (const [side, { kingpin }] of Object.entries({ left, right }))
    if (kingpin !== null) checkKinds(kingpin, { lower: 'point', upper: 'point' }, `${side}.kingpin`)
  if (location.kind === 'leaf') checkKinds(location.rollAxis, line, 'location.rollAxis')
  else if (location.kind === 'links') checkKinds(location.links, [rod, rod, rod, rod], 'location.links')
  else
    throw no(
      'bad-input',
      'location.kind',
      'It is not said what guides the axle.',
      'Say leaf, with a roll axis, or links, with four of them.',
    )
  if (steering !== null)
    checkKinds(
      steering,
      { dropAxis: line, dragInner: 'point', dragOuter: 'point', tieLeft: 'point', tieRight: 'point' },
      'steering',
    )
  checkKinds(by, {}, 'settings')
  const angles = {
    tilt: { camber: 'number', caster: 'number' },
    shim: { camber: 'number', toe: 'number' },
  } as const
  for (const name of ['tilt', 'shim'] as const)
    for (const [side, value] of Object.entries(by[name] ?? {}))
      if (value !== undefined) checkKinds(value, angles[name], `settings.${name}.${side}`)
  for (const name of ['tieRod', 'dragLink'] as const)
    if (by[name] !== undefined) checkKinds(by[name], 'number', `settings.${name}`)
  if (by.links !== undefined) checkKinds(by.links, ['number', 'number', 'number', 'number'], 'settings.links')
}

function wheel(w: AxleWheel, side: Side, steered: boolean): void {
  if (!(w.tyreRadius > 0))
    throw no(
      'bad-input',
      `${side}.tyreRadius`,
      `The ${side} tyre radius is ${w.tyreRadius} m.`,
      'Give the loaded radius, above 0.',
    )
  for (const name of ['camber', 'toe'] as const)
    if (!(Math.abs(w[name]) < Math.PI / 2))
      throw no(
        'bad-input',
        `${side}.${name}`,
        `${sentenceStart(spokenPlace(`${side}.${name}`))} is a right angle or more.`,
        'Give it as measured.',
      )
  if (steered !== (w.kingpin !== null))
    throw no(
      'bad-input',
      `${side}.kingpin`,
      steered
        ? `The axle is steered, but the ${side} wheel has no kingpin.`
        : `The ${side} wheel has a kingpin, but nothing steers it.`,
      'Give both kingpins and the steering, or none of them.',
    )
}

/** All checks of an axle, the first fault in the order of the codes. Returns the sign of the links' determinant. */
export function checkAxle(points: SolidAxlePoints, by: AxleSettings): number {
  checkFinite(points, '')
  checkFinite(by, 'settings')
  checkMade(points, by)
  const { location, steering, left, right } = points
  wheel(left, 'left', steering !== null)
  wheel(right, 'right', steering !== null)
  if (!(left.wheelCentre[1] > right.wheelCentre[1]))
    throw no(
      'bad-input',
      'right.wheelCentre',
      'The right wheel does not stand to the right of the left one.',
      'Give an axle in vehicle axes: y is positive on the left and negative on the right.',
    )
  const axes: (readonly [string, Point, Point])[] = []
  const rods: (readonly [string, Point, Point, number])[] = []
  if (location.kind === 'leaf') axes.push(['location.rollAxis', location.rollAxis[0], location.rollAxis[1]])
  else {
    for (const [i, l] of location.links.entries())
      rods.push([`location.links.${i}`, l.inner, l.outer, by.links?.[i] ?? 0])
  }
  for (const side of ['left', 'right'] as const) {
    const pin = points[side].kingpin
    if (pin) axes.push([`${side}.kingpin`, pin.lower, pin.upper])
  }
  if (steering) {
    if (steering.drags !== 'left' && steering.drags !== 'right')
      throw no(
        'bad-input',
        'steering.drags',
        'It is not said which knuckle is dragged.',
        'Say left or right.',
      )
    axes.push(['steering.dropAxis', steering.dropAxis[0], steering.dropAxis[1]])
    rods.push(['dragLink', steering.dragInner, steering.dragOuter, by.dragLink ?? 0])
    rods.push(['tieRod', steering.tieLeft, steering.tieRight, by.tieRod ?? 0])
  }
  for (const [at, a, b, more] of rods)
    if (!(Math.min(norm(minus(a, b)), norm(minus(a, b)) + more) > nothing))
      throw no(
        'zero-length-link',
        at,
        `${sentenceStart(spokenPlace(at))} has no length.`,
        'Measure both of its ends again.',
      )
  for (const [at, a, b] of axes)
    if (!(norm(minus(a, b)) > nothing))
      throw no(
        'coincident-pivots',
        at,
        `${sentenceStart(spokenPlace(at))} has no direction: its two points are one.`,
        'Measure both again.',
      )
  for (const side of ['left', 'right'] as const) pin(points, side)
  if (steering) levers(points)
  return held(points)
}

/** A kingpin stands upright enough to have caster and SAI. */
function pin(points: SolidAxlePoints, side: Side): void {
  const { kingpin } = points[side]
  if (kingpin && !(unit(minus(kingpin.upper, kingpin.lower))[2] > nothing))
    throw no(
      'bad-input',
      `${side}.kingpin`,
      `The upper end of the ${side} kingpin does not lie above the lower one.`,
      'Give the lower and the upper end.',
    )
}

/** Drag link and tie rod have a lever about their pins. */
function levers(points: SolidAxlePoints): void {
  const { drags, dragInner, dragOuter, tieLeft, tieRight } = points.steering!
  const rods = [
    ['dragLink', drags, dragOuter, dragInner],
    ['tieRod', 'left', tieLeft, tieRight],
    ['tieRod', 'right', tieRight, tieLeft],
  ] as const
  for (const [at, side, outer, inner] of rods) {
    const length = norm(minus(outer, inner))
    const { q } = rodOnPin(axleKnuckle(points, {}, side), outer, inner, length)
    if (!(Math.abs(q) > nothing * length * norm(minus(outer, points[side].kingpin!.lower))))
      throw no(
        'singular',
        at,
        `The ${at === 'tieRod' ? 'tie rod' : 'drag link'} has no lever about the ${side} kingpin, so it cannot hold the wheel.`,
        'Measure both of its ends again.',
      )
  }
}

/** The links, the height and the tilt hold the axle; sign of the determinant, 1 on leaf springs. */
function held(points: SolidAxlePoints): number {
  const { location, left, right } = points
  const e = unit(minus(left.wheelCentre, right.wheelCentre))
  if (location.kind === 'leaf') {
    const axis = unit(minus(location.rollAxis[1], location.rollAxis[0]))
    if (Math.abs(cross(axis, e)[2]) > 1e-3) return 1
    throw no(
      'singular',
      'location.rollAxis',
      'A turn about the roll axis does not tilt the axle: it lies along the axle or stands upright.',
      'Give a rear and a front point of the axis that the axle rolls about.',
    )
  }
  const middle = middleOf(points)
  const size = norm(minus(left.wheelCentre, middle))
  const a = new Float64Array(36)
  for (const [i, { inner, outer }] of location.links.entries()) {
    const u = unit(minus(outer, inner))
    const turn = cross(minus(outer, middle), u)
    a.set([...u, ...turn.map((x) => x / size)], 6 * i)
  }
  a[26] = 1
  a.set([e[1], -e[0]], 33)
  const determinant = solveLinear(a, new Float64Array(6), 6)
  if (Math.abs(determinant) > 1e-6) return Math.sign(determinant)
  throw no(
    'singular',
    'location.links',
    'At the design pose the four links do not hold the axle: it could move although its height and tilt stay.',
    'Look for two links that are the same, or that lie in one line, and measure them again.',
  )
}
