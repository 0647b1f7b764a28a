import type { AnyCornerPoints, Displacement, Point, Side } from '../../../src/linkage/index.ts'
import type { Chance } from './chance.ts'
import { type Fault, onAxle } from './fault.ts'
import { sides, type TrueAxle } from './true-axle.ts'

type Points = Readonly<Record<string, Point>>
const degree = Math.PI / 180

/** By the linkage's names; a five-link's links as inner0, outer0 … */
function pointsOf(drawn: AnyCornerPoints): Points {
  if (drawn.layout !== 'five-link') return drawn as unknown as Points
  const all: Record<string, Point> = { wheelCentre: drawn.wheelCentre }
  for (const [i, { inner, outer }] of drawn.links.entries()) {
    all[`inner${i}`] = inner
    all[`outer${i}`] = outer
  }
  return all
}

const unit = (from: Point, to: Point): Point => {
  const d = to.map((x, i) => x - from[i]!) as unknown as Point
  const far = Math.hypot(...d)
  return [d[0] / far, d[1] / far, d[2] / far]
}
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const times = (k: number, [x, y, z]: Point): Point => [k * x, k * y, k * z]

/** The wheel leans by so much more camber and toes in by so much more, against the knuckle's joints. */
const spun = (camber: number, toe: number): Displacement => ({ spin: [-camber, 0, -toe] })

/** An arm whose outer end was knocked to another place in the arm's plane: both legs change by what they see of it. */
function armEnd(points: Points, arm: 'lower' | 'upper', by: Point): Displacement {
  const leg = (name: string): number => dot(unit(points[`${arm}${name}Inner`]!, points[`${arm}Outer`]!), by)
  return { length: { [`${arm}Front`]: leg('Front'), [`${arm}Rear`]: leg('Rear') } }
}

/** A kerb or a hole hits from the front and from outside: the end goes back and in, now and then the other way. */
function knocked(size: number, luck: Chance): Point {
  const any = luck.world === 'other'
  const heading = (any ? luck.between(0, 360) : luck.between(-10, 100)) * degree
  const way = any || luck.happens(0.85) ? 1 : -1
  return [-way * size * Math.sin(heading), -way * size * Math.cos(heading), 0]
}

/** A direction with up to 30° of scatter about the x axis; any way in the other world. */
function scattered([x, y, z]: Point, luck: Chance): Point {
  const turn = (luck.world === 'other' ? luck.between(-180, 180) : luck.between(-30, 30)) * degree
  return [x, y * Math.cos(turn) - z * Math.sin(turn), y * Math.sin(turn) + z * Math.cos(turn)]
}

/** Which way an arm's inner end gives when its rubber is gone, as the standing load has it; left corner. */
function bushGives(axle: TrueAxle, pivot: string): Point {
  const { layout } = axle.corner
  const down: Point = [0, 0, -1]
  if (layout === 'semi-trailing arm') return down
  if (layout === 'five-link') {
    // the wheel's load tips the knuckle's top inward: upper links are pushed, lower ones pulled; the spring sits on link 4
    if (pivot === 'inner0' || pivot === 'inner1') return [0, -1, 0]
    return pivot === 'inner3' ? [0, 0.5, -0.87] : [0, 1, 0]
  }
  if (pivot.startsWith('upper'))
    return layout === 'double-wishbone, coil on upper arm' ? [0, -0.5, -0.87] : [0, -1, 0]
  if (layout === 'double-wishbone, coil on lower arm') return [0, 0.6, -0.8]
  // a torsion bar gives the arm a couple: its pivot must hold the arm down, so the arm's end goes up
  if (layout === 'double-wishbone, torsion bar') return [0, 0.6, 0.8]
  return [0, 1, 0]
}

/** Faults of a corner that is held by links or hinged, both sides. */
export function faultsOfCorner(axle: TrueAxle, fileNames: Readonly<Record<string, string>>): Fault[] {
  const { corner } = axle
  const drawn = axle.drawn as AnyCornerPoints
  const points = pointsOf(drawn)
  const list: Fault[] = []
  for (const side of sides) list.push(...faultsOfSide(axle, { drawn, points, side, fileNames }))
  const { parts } = corner
  const mounts = Object.entries(corner.joints).flatMap(([, joint]) => {
    const point = joint.at === undefined ? undefined : fileNames[joint.at]
    const onFrame = joint.joins.some((part) => parts[part]!.kind === 'sub-frame')
    return point && points[point] && joint.bush && onFrame ? [point] : []
  })
  const steered = Object.values(corner.adjusters).some(
    (one) => one.kind === 'sub-frame shift' && one.moves.includes('tie-inner'),
  )
  const names = [...new Set([...mounts, ...(steered ? ['tieInner'] : [])])]
  if (names.length > 1) list.push(...faultsOfFrame(axle, points, names))
  if ('tieInner' in points)
    list.push(
      onAxle(axle, { kind: 'rack off centre', side: null, at: null }, (state, size, luck) => {
        state.rack += luck.sign() * size
      }),
    )
  return list
}

function faultsOfFrame(axle: TrueAxle, points: Points, names: readonly string[]): Fault[] {
  const all = (by: (point: Point, out: 1 | -1) => Point) => ({
    left: { body: Object.fromEntries(names.map((name) => [name, by(points[name]!, 1)])) },
    right: { body: Object.fromEntries(names.map((name) => [name, by(points[name]!, -1)])) },
  })
  const middle = names.reduce((sum, name) => sum + points[name]![0], 0) / names.length
  const put = (kind: Fault['suspect']['kind'], by: (point: Point, out: 1 | -1, size: number) => Point) =>
    onAxle(axle, { kind, side: null, at: null }, (state, size, luck) => {
      const shift = all((point, out) => by(point, out, size * (signs.get(luck) ?? 1)))
      state.displaced.left.push(shift.left)
      state.displaced.right.push(shift.right)
    })
  const signs = new WeakMap<Chance, number>()
  const either = (fault: Fault): Fault => ({
    ...fault,
    apply: (vehicle, size, luck) => {
      signs.set(luck, luck.sign())
      return fault.apply(vehicle, size, luck)
    },
  })
  return [
    either(put('cross-member shifted sideways', (_, out, size) => [0, out * size, 0])),
    either(put('cross-member shifted up or down', (_, __, size) => [0, 0, size])),
    // turned to the left, seen from above: the left points go back and all go sideways by their distance from the middle
    either(
      put('cross-member turned', ([x, y], out, size) => [-out * y * size, out * (x - middle) * size, 0]),
    ),
  ]
}

interface Of {
  readonly drawn: AnyCornerPoints
  readonly points: Points
  readonly side: Side
  readonly fileNames: Readonly<Record<string, string>>
}

function faultsOfSide(axle: TrueAxle, { drawn, points, side, fileNames }: Of): Fault[] {
  const { corner } = axle
  const list: Fault[] = []
  const put = (
    kind: Fault['suspect']['kind'],
    at: string | null,
    by: (size: number, luck: Chance) => Displacement,
    share = 1,
  ): void => {
    list.push(
      onAxle(
        axle,
        { kind, side, at },
        (state, size, luck) => {
          state.displaced[side].push(by(size, luck))
        },
        share,
      ),
    )
  }
  const linkOf = (file: string): string | undefined => {
    const inside = fileNames[file]
    return inside?.startsWith('inner') && drawn.layout === 'five-link' ? `link${inside.slice(5)}` : undefined
  }
  // arms and links
  if ('lowerOuter' in points) {
    put('bent lower arm', null, (size, luck) => armEnd(points, 'lower', knocked(size, luck)))
    put('wrong part', 'lower-arm', (size, luck) => armEnd(points, 'lower', [0, luck.sign() * size, 0]))
  }
  if ('upperOuter' in points) {
    put('bent upper arm', null, (size, luck) => armEnd(points, 'upper', knocked(size, luck)))
    put('wrong part', 'upper-arm', (size, luck) => armEnd(points, 'upper', [0, luck.sign() * size, 0]))
  }
  if (corner.parts['radius-rod'])
    put('bent link', 'radius-rod', (size) => ({ length: { lowerFront: -size } }))
  if (drawn.layout === 'semi-trailing arm')
    put('bent lower arm', null, (size, luck) => {
      // the arm gives way by so much at the wheel, an arm's length from its hinge
      const turn = size / 0.35
      return spun(luck.sign() * turn * luck.between(0.3, 1), luck.sign() * turn * luck.between(0.2, 0.8))
    })
  for (const joint of Object.values(corner.joints)) {
    const link = joint.at === undefined ? undefined : linkOf(joint.at)
    const part = joint.joins.find((one) => ['rod', 'arm'].includes(corner.parts[one]!.kind))
    if (!link || !part || !joint.bush) continue
    // a bent rod is a shorter one
    put('bent link', part, (size) => ({ length: { [link]: -size } }))
    put('wrong part', part, (size, luck) => ({ length: { [link]: luck.sign() * size } }))
  }
  // knuckle, strut, tower
  if (drawn.layout !== 'semi-trailing arm') {
    put('bent knuckle', null, (size, luck) => {
      const way = luck.happens(0.6) ? 1 : -1
      const lean = luck.between(-35, 35) * degree
      return spun(way * size * Math.cos(lean), size * Math.sin(lean))
    })
    put('wrong part', 'knuckle', (size, luck) =>
      spun((luck.sign() * size) / 0.25, (luck.normal(0.3) * size) / 0.25),
    )
  }
  if (drawn.layout === 'strut') {
    put('bent strut tube', null, (size, luck) => bentTube(points, luck.sign() * size, luck))
    put('shifted tower', null, (size, luck) => {
      const heading = luck.between(-50, 50) * degree
      const way = luck.happens(0.75) ? -1 : 1
      return { body: { topMount: [size * Math.sin(heading), way * size * Math.cos(heading), 0] } }
    })
  }
  if ('tieOuter' in points) put('bent steering arm or tie rod', null, steering)
  list.push(...wornOf(axle, { drawn, points, side, fileNames }))
  for (const one of axle.adjusters) {
    if (one.kind === 'eccentric')
      list.push(
        onAxle(axle, { kind: 'eccentric fitted the wrong way round', side, at: one.id }, (state) => {
          state.turned[side].push(one.id)
        }),
      )
  }
  return list
}

/** Half of them rods, which get shorter; half of them the arm on the knuckle. */
function steering(size: number, luck: Chance): Displacement {
  if (luck.happens(0.5)) return { length: { tie: -size } }
  const heading = luck.between(0, 360) * degree
  return { knuckle: { tieOuter: [size * Math.cos(heading), size * Math.sin(heading), 0] } }
}

/** The tube bends above its clamp: the line of the piston leaves the knuckle at another angle. */
function bentTube(points: Points, size: number, luck: Chance): Displacement {
  const [low, top] = [points.strutLower!, points.topMount!]
  const share = luck.between(0, 0.35)
  const at = low.map((x, i) => x + share * (top[i]! - x)) as unknown as Point
  const toe = luck.normal(0.25) * size
  // seen from the front the line leans about x, seen from the side about y
  const turned = ([x, y, z]: Point): Point => [
    toe * (z - at[2]),
    -size * (z - at[2]),
    size * (y - at[1]) - toe * (x - at[0]),
  ]
  return { knuckle: { strutLower: turned(low), strutTop: turned(top) } }
}

function wornOf(axle: TrueAxle, { drawn, points, side, fileNames }: Of): Fault[] {
  const { corner } = axle
  const list: Fault[] = []
  const put = (
    kind: Fault['suspect']['kind'],
    at: string | null,
    by: (size: number, luck: Chance) => Displacement,
    share = 1,
  ): void => {
    list.push(
      onAxle(
        axle,
        { kind, side, at },
        (state, size, luck) => {
          state.displaced[side].push(by(size, luck))
        },
        share,
      ),
    )
  }
  const bushes = Object.entries(corner.joints).filter(
    ([, joint]) => joint.bush && joint.at && points[fileNames[joint.at] ?? ''],
  )
  for (const [id, joint] of bushes) {
    const pivot = fileNames[joint.at!]!
    put(
      'collapsed bush',
      id,
      (size, luck) => ({ body: { [pivot]: times(size, scattered(bushGives(axle, pivot), luck)) } }),
      1 / bushes.length,
    )
  }
  for (const [id, joint] of Object.entries(corner.joints)) {
    if (!/^tapered stud|^pinch bolt/.test(joint.kind) || joint.at === undefined) continue
    const point = fileNames[joint.at]
    if (point === 'lowerOuter' || point === 'upperOuter') {
      // the wheel's load pushes the knuckle's lower end out and its top in against their joints; a spring on the arm
      // presses its joint down on the knuckle as well
      const y = point === 'lowerOuter' ? -1 : 1
      const loaded =
        (point === 'lowerOuter' && /coil on lower|torsion/.test(corner.layout)) ||
        (point === 'upperOuter' && /coil on upper/.test(corner.layout))
      put('worn ball joint', id, (size, luck) => {
        const part = luck.between(0.5, 1)
        return { knuckle: { [point]: [0, y * part * size, loaded ? -0.6 * size : 0] } }
      })
    } else if (point === 'tieOuter') {
      // rolling drags the wheel to toe-out: a rod behind is pressed together, one ahead is drawn out
      const behind = points.tieOuter![0] < points.wheelCentre![0]
      put('worn ball joint', id, (size) => ({ length: { tie: behind ? -size : size } }), 0.6)
    } else if (point?.startsWith('outer') && drawn.layout === 'five-link')
      put('worn ball joint', id, (size) => ({ length: { [`link${point.slice(5)}`]: -size } }), 0.6)
  }
  // the load stands outside the bearing's middle: the wheel's top comes in
  put('loose wheel bearing', null, (size, luck) => spun(-size, luck.normal(0.3) * size))
  return list
}
