import type { WholeAxleSetup } from '../adjust/index.ts'
import { type Corner, jointLetters } from '../corner/index.ts'
import type { AxlePose, Point, Side } from '../linkage/index.ts'
import type { AxleStanding } from './axle-standing.ts'
import type { SheetFigure } from './sheet.ts'

type Stroke = SheetFigure['strokes'][number]
type Place = (name: string) => Point | null

/**
 * One half of a whole axle as strokes, in vehicle axes: the beam to the middle of the vehicle, kingpin and knuckle, half
 * the tie rod, the drag link on the side it moves, springs and dampers by their ends.
 */
export function axleFigure({
  corner,
  setup,
  stands,
  side,
}: {
  readonly corner: Corner
  readonly setup: WholeAxleSetup
  readonly stands: AxleStanding
  readonly side: Side
}): SheetFigure {
  const wheel = stands.kind === 'solid axle' ? stands.pose[side] : stands.wheels[side]
  const moved = stands.kind === 'solid axle' ? withAxle(setup, stands.pose) : withBeam(setup, stands)
  const flip = side === 'left' ? 1 : -1
  const place: Place = (name) => {
    const drawn = corner.points[name]?.at
    if (!drawn) return null
    const [x, y, z] = drawn
    const stays = standsOnce(name)
    // What stands only once is drawn on its own side.
    if (stays && y * flip < 0) return null
    return moved([x, stays ? y : flip * y, z], carrierOf(corner, name), side)
  }
  const middle = (point: Point): Point => [point[0], 0, point[2]]
  const hub = wheel.wheelCentre
  const strokes: Stroke[] = []
  const draw = (part: string, kind: Stroke['kind'], from: Point | null, to: Point | null) => {
    if (from && to) strokes.push({ part, kind, from, to })
  }
  if (stands.kind === 'solid axle') {
    const [lower, upper] = [place('kingpin-lower'), place('kingpin-upper')]
    const end: Point = lower && upper ? between(lower, upper) : hub
    draw('axle beam', 'arm', end, moved(middle(setup.axle[side].wheelCentre), 'axle', side))
    draw('kingpin', 'knuckle', lower, upper)
    draw('knuckle', 'knuckle', lower ? end : null, hub)
    const tie = place('tie-outer')
    draw('knuckle', 'knuckle', tie, hub)
    draw('tie rod', 'rod', tie, tie && middle(tie))
    draw('knuckle', 'knuckle', place('drag-outer'), hub)
    draw('drag link', 'rod', place('drag-inner'), place('drag-outer'))
    draw('drop arm', 'arm', place('drop-axis-to'), place('drag-inner'))
    for (const rod of ['lower-link', 'upper-link', 'middle-link', 'track-bar'])
      draw(rod.replace('-', ' '), 'arm', place(`${rod}-inner`), place(`${rod}-outer`))
  } else {
    draw('trailing arm', 'arm', place('beam-pivot'), hub)
    const beam = place('shear-centre')
    const pivot = place('beam-pivot')
    draw('beam', 'arm', pivot && between(pivot, hub), beam)
  }
  for (const [part, model] of Object.entries(corner.parts)) {
    if ((model.kind !== 'spring' && model.kind !== 'damper') || !model.ends) continue
    const name = model.name ?? part.replaceAll('-', ' ')
    const [from, to] = model.ends.map(place)
    const seat = model.kind === 'spring' && model.stores === 'leaf' ? place('spring-seat') : null
    if (seat) {
      draw(name, 'strut', from!, seat)
      draw(name, 'strut', seat, to!)
    } else draw(name, 'strut', from!, to!)
  }
  return {
    strokes,
    joints: joints(corner, place, side, hub),
    wheel: {
      centre: hub,
      spinAxis: wheel.spinAxis,
      radius: corner.wheel.loadedRadius,
      width: corner.wheel.width,
    },
    ground: wheel.contact[2],
  }
}

/** Points of the steering and of the axle's own location, given in vehicle axes. */
const standsOnce = (name: string): boolean =>
  /^(drop-axis|drag|middle-link|track-bar|shear-centre|roll-axis)/.test(name)

function joints(corner: Corner, place: Place, side: Side, hub: Point): SheetFigure['joints'] {
  const letters = jointLetters(corner)
  return Object.entries(corner.joints).flatMap(([id, joint]) => {
    if (joint.at === undefined || (joint.side && joint.side !== side)) return []
    const at = joint.at === 'wheel-centre' ? hub : place(joint.at)
    const name = joint.name ?? id.replaceAll('-', ' ')
    return at ? [{ letter: letters[id] ?? '', name, at, adjuster: joint.adjuster ?? null }] : []
  })
}

type Carrier = 'body' | 'axle' | 'knuckle'

/** What a point moves with: a part of the axle or the knuckle where a joint there joins one, else the body. */
function carrierOf(corner: Corner, name: string): Carrier {
  if (/^(tie-outer|tie-thread|drag-outer|wheel-centre)/.test(name)) return 'knuckle'
  if (/^kingpin/.test(name) || /(link|track-bar)-outer$/.test(name)) return 'axle'
  const parts = Object.values(corner.joints).flatMap(({ at, joins }) => (at === name ? joins : []))
  const kinds = parts.map((part) => corner.parts[part]?.kind)
  const held = kinds.includes('axle beam') || (corner.layout === 'twist beam' && kinds.includes('arm'))
  return held ? 'axle' : 'body'
}

type Moved = (point: Point, carrier: Carrier, side: Side) => Point

function withAxle({ axle }: WholeAxleSetup, pose: AxlePose): Moved {
  if (!('location' in axle)) return (point) => point
  const design = between(axle.left.wheelCentre, axle.right.wheelCentre)
  const [w, x, y, z] = pose.turn
  const angle = 2 * Math.acos(Math.max(-1, Math.min(1, w)))
  const carried = (point: Point): Point => plus(pose.middle, about([x, y, z], angle, minus(point, design)))
  return (point, carrier, side) => {
    if (carrier === 'body') return point
    const pin = axle[side].kingpin
    if (carrier === 'axle' || !pin) return carried(point)
    const turned = plus(
      pin.lower,
      about(minus(pin.upper, pin.lower), pose[side].steer, minus(point, pin.lower)),
    )
    return carried(turned)
  }
}

/** A beam's arm turns about its pivot as its wheel rises. */
function withBeam({ axle }: WholeAxleSetup, stands: Extract<AxleStanding, { kind: 'twist beam' }>): Moved {
  if ('location' in axle) return (point) => point
  return (point, carrier, side) => {
    const { pivot, wheelCentre } = axle[side]
    if (carrier === 'body' && point[1] !== 0) return point
    const turn = (to: Point) => Math.atan2(to[2] - pivot[2], to[0] - pivot[0])
    const by = turn(stands.wheels[side].wheelCentre) - turn(wheelCentre)
    // In the plane x, z from x to z is against the right-handed sense about y.
    return plus(pivot, about([0, -1, 0], by, minus(point, pivot)))
  }
}

const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const between = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2]

/** A vector turned about an axis of any length, right-handed. */
function about(axis: Point, angle: number, v: Point): Point {
  const length = Math.hypot(...axis)
  if (length === 0) return v
  const [x, y, z] = [axis[0] / length, axis[1] / length, axis[2] / length]
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const along = (x * v[0] + y * v[1] + z * v[2]) * (1 - c)
  return [
    v[0] * c + (y * v[2] - z * v[1]) * s + x * along,
    v[1] * c + (z * v[0] - x * v[2]) * s + y * along,
    v[2] * c + (x * v[1] - y * v[0]) * s + z * along,
  ]
}
