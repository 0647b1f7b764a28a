// What gauges see of a true wheel: plain vectors, x forward, y left, z up. No code of src.

type Vector = readonly [number, number, number]

const turnedAbout = ([kx, ky, kz]: Vector, by: number, [x, y, z]: Vector): Vector => {
  const [c, s] = [Math.cos(by), Math.sin(by)]
  const along = (kx * x + ky * y + kz * z) * (1 - c)
  return [
    x * c + (ky * z - kz * y) * s + kx * along,
    y * c + (kz * x - kx * z) * s + ky * along,
    z * c + (kx * y - ky * x) * s + kz * along,
  ]
}
const X: Vector = [1, 0, 0]
const Y: Vector = [0, 1, 0]

/** The floor as it tips the whole vehicle: + left side high, + front high. */
export interface Tip {
  readonly roll: number
  readonly pitch: number
}
/** Left side high: y rises. Front high: x rises. */
const tipped = ({ roll, pitch }: Tip, v: Vector): Vector => turnedAbout(X, roll, turnedAbout(Y, -pitch, v))

/** A true wheel. Side +1 left, −1 right. Angles in the vehicle's own axes. */
export interface TrueWheel {
  readonly side: 1 | -1
  readonly camber: number
  readonly caster: number
  readonly sai: number
}

const spinOf = ({ side, camber }: TrueWheel): Vector => [0, side * Math.cos(camber), -Math.sin(camber)]
const axisOf = ({ side, caster, sai }: TrueWheel): Vector => {
  const v: Vector = [-Math.tan(caster), -side * Math.tan(sai), 1]
  const size = Math.hypot(...v)
  return [v[0] / size, v[1] / size, v[2] / size]
}

/** Angle of the spin axis below the level on a tipped floor: what a perfect gauge across the wheel shows. */
export const camberSeen = (wheel: TrueWheel, tip: Tip): number => -Math.asin(tipped(tip, spinOf(wheel))[2])

/** Gauges across and along a wheel steered to a heading (+ left) about its axis, on a tipped floor. */
export function steeredSeen(wheel: TrueWheel, heading: number, tip: Tip): { camber: number; tilt: number } {
  const axis = axisOf(wheel)
  const spin = spinOf(wheel)
  const headingOf = (by: number) => {
    const s = turnedAbout(axis, by, spin)
    return Math.atan2(-wheel.side * s[0], wheel.side * s[1])
  }
  let [low, high] = [-1, 1]
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (headingOf(middle) < heading) low = middle
    else high = middle
  }
  return {
    camber: -Math.asin(tipped(tip, turnedAbout(axis, low, spin))[2]),
    tilt: Math.asin(tipped(tip, turnedAbout(axis, low, X))[2]),
  }
}

/** A point of the tread circle below the hub, ahead (+1) or behind (−1) of it, from the hub. */
export function treadPoint(
  { side, camber, toe }: { side: 1 | -1; camber: number; toe: number },
  { radius, below, end }: { radius: number; below: number; end: 1 | -1 },
): Vector {
  // Two directions of the wheel's plane: level, and up it.
  const level: Vector = [Math.cos(toe), -side * Math.sin(toe), 0]
  const spin: Vector = [
    Math.cos(camber) * Math.sin(toe),
    side * Math.cos(camber) * Math.cos(toe),
    -Math.sin(camber),
  ]
  const up: Vector = [
    side * (spin[1] * level[2] - spin[2] * level[1]),
    side * (spin[2] * level[0] - spin[0] * level[2]),
    side * (spin[0] * level[1] - spin[1] * level[0]),
  ]
  const rise = -below / up[2]
  const ahead = end * Math.sqrt(radius ** 2 - rise ** 2)
  return [0, 1, 2].map((i) => ahead * level[i]! + rise * up[i]!) as unknown as Vector
}
