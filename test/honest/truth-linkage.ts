// Wheels on rods and on kingpins as they truly move: plain vectors and differences. No code of src.

export type Vector = readonly [number, number, number]

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
const size = (a: Vector) => Math.hypot(a[0], a[1], a[2])
const crossed = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]
const dotted = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

/** Turned by a rotation vector. */
function turned(by: Vector, v: Vector): Vector {
  const angle = size(by)
  if (angle === 0) return v
  const k: Vector = [by[0] / angle, by[1] / angle, by[2] / angle]
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const across = crossed(k, v)
  const along = dotted(k, v) * (1 - c)
  return [
    v[0] * c + across[0] * s + k[0] * along,
    v[1] * c + across[1] * s + k[1] * along,
    v[2] * c + across[2] * s + k[2] * along,
  ]
}

export interface TrueAngles {
  readonly camber: number
  readonly toe: number
}

/** A left wheel held by five rods, each from the body to the knuckle. */
export interface FiveRods {
  readonly rods: readonly (readonly [inner: Vector, outer: Vector])[]
  readonly centre: Vector
  readonly camber: number
  readonly toe: number
}

const spin = (camber: number, toe: number): Vector => [
  Math.cos(camber) * Math.sin(toe),
  Math.cos(camber) * Math.cos(toe),
  -Math.sin(camber),
]
const anglesOf = (s: Vector): TrueAngles => ({ camber: -Math.asin(s[2]), toe: Math.atan2(s[0], s[1]) })

/**
 * Camber and toe with inner ends shifted and rods made longer, at a height of the wheel above design: six equations,
 * Newton with differences.
 */
export function onFiveRods(
  { rods, centre, camber, toe }: FiveRods,
  { shift, longer, travel }: { shift: readonly Vector[]; longer: readonly number[]; travel: number },
): TrueAngles {
  const misses = (x: readonly number[]): number[] => {
    const at = [x[0]!, x[1]!, x[2]!] as const
    const by = [x[3]!, x[4]!, x[5]!] as const
    const lengths = rods.map(([inner, outer], i) => {
      const end = plus(plus(centre, at), turned(by, minus(outer, centre)))
      return size(minus(end, plus(inner, shift[i]!))) - size(minus(outer, inner)) - longer[i]!
    })
    return [...lengths, x[2]! - travel]
  }
  let x = [0, 0, travel, 0, 0, 0]
  for (let round = 0; round < 12; round++) {
    const now = misses(x)
    if (Math.max(...now.map(Math.abs)) < 1e-13) break
    const columns = x.map((_, i) => {
      const there = (by: number) => misses(x.map((v, k) => (k === i ? v + by : v)))
      const [up, down] = [there(1e-6), there(-1e-6)]
      return up.map((v, k) => (v - down[k]!) / 2e-6)
    })
    const step = solved(columns, now)
    x = x.map((v, i) => v - step[i]!)
  }
  return anglesOf(turned([x[3]!, x[4]!, x[5]!], spin(camber, toe)))
}

/** Columns · x = right, by elimination with exchange of rows. */
function solved(columns: readonly (readonly number[])[], right: readonly number[]): number[] {
  const n = right.length
  const rows = right.map((r, i) => [...columns.map((column) => column[i]!), r])
  for (let k = 0; k < n; k++) {
    let p = k
    for (let i = k; i < n; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[p]![k]!)) p = i
    ;[rows[k], rows[p]] = [rows[p]!, rows[k]!]
    for (let i = k + 1; i < n; i++) {
      const factor = rows[i]![k]! / rows[k]![k]!
      for (let c = k; c <= n; c++) rows[i]![c]! -= factor * rows[k]![c]!
    }
  }
  const x = new Array<number>(n).fill(0)
  for (let k = n - 1; k >= 0; k--) {
    let value = rows[k]![n]!
    for (let c = k + 1; c < n; c++) value -= rows[k]![c]! * x[c]!
    x[k] = value / rows[k]![k]!
  }
  return x
}

/** One end of a straight-ahead solid axle that does not move: kingpin, wheel, and where its rods take hold. */
interface PinnedWheel {
  readonly side: 1 | -1
  readonly lower: Vector
  readonly upper: Vector
  readonly camber: number
  readonly toe: number
}
/** A pin with its sleeve: leaned by so much camber and caster. */
export interface Lean {
  readonly camber: number
  readonly caster: number
}

/** Turn of the knuckle that the sleeve's lean gives, then about the leaned pin. */
function knuckle({ side, lower, upper }: PinnedWheel, lean: Lean) {
  const k = minus(upper, lower)
  const caster = Math.atan2(-k[0], k[2])
  const inward = Math.atan2(-side * k[1], k[2])
  // camber grows as the pin's lean inward falls
  const now: Vector = [-Math.tan(caster + lean.caster), -side * Math.tan(inward - lean.camber), 1]
  const was: Vector = [k[0] / k[2], k[1] / k[2], 1]
  const [a, b] = [was, now].map((v) => [v[0] / size(v), v[1] / size(v), v[2] / size(v)] as Vector) as [
    Vector,
    Vector,
  ]
  const across = crossed(a, b)
  const sine = size(across)
  const angle = Math.asin(Math.min(1, sine))
  const by: Vector =
    sine === 0 ? [0, 0, 0] : ([0, 1, 2].map((i) => (across[i]! / sine) * angle) as unknown as Vector)
  return (steer: number, v: Vector): Vector =>
    turned([b[0] * steer, b[1] * steer, b[2] * steer], turned(by, v))
}

/** A steered solid axle standing still: drag link to the left knuckle, tie rod to the right one. */
export interface PinnedAxle {
  readonly left: PinnedWheel
  readonly right: PinnedWheel
  readonly dragInner: Vector
  readonly dragOuter: Vector
  readonly tieLeft: Vector
  readonly tieRight: Vector
}

/** Angles of both wheels with sleeves leaned and rods made longer; the drop arm stands still. */
export function onKingpins(
  axle: PinnedAxle,
  set: { left: Lean; right: Lean; drag: number; tie: number },
): { left: TrueAngles; right: TrueAngles } {
  const { left, right, dragInner, dragOuter, tieLeft, tieRight } = axle
  const [turnLeft, turnRight] = [knuckle(left, set.left), knuckle(right, set.right)]
  const place = (turn: typeof turnLeft, lower: Vector, steer: number, point: Vector) =>
    plus(lower, turn(steer, minus(point, lower)))
  const drag = size(minus(dragOuter, dragInner)) + set.drag
  const steerLeft = rootOf(
    (steer) => size(minus(place(turnLeft, left.lower, steer, dragOuter), dragInner)) - drag,
  )
  const end = place(turnLeft, left.lower, steerLeft, tieLeft)
  const tie = size(minus(tieRight, tieLeft)) + set.tie
  const steerRight = rootOf((steer) => size(minus(place(turnRight, right.lower, steer, tieRight), end)) - tie)
  const seen = ({ side, camber, toe }: PinnedWheel, turn: typeof turnLeft, steer: number) => {
    const [x, y, z] = spin(camber, toe)
    const s = turn(steer, [x, side * y, z])
    return anglesOf([s[0], side * s[1], s[2]])
  }
  return { left: seen(left, turnLeft, steerLeft), right: seen(right, turnRight, steerRight) }
}

/** Root within ± 0.3 rad, by halves. */
function rootOf(f: (x: number) => number): number {
  let [low, high] = [-0.3, 0.3]
  const rising = f(high) > f(low)
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (f(middle) < 0 === rising) low = middle
    else high = middle
  }
  return (low + high) / 2
}
