import type { SheetFigure } from '../../sheet/index.ts'
import type { Flat } from './corner-view.ts'
import { outline } from './outline.ts'

type Place = readonly [number, number, number]

const steps = 48
/** How far the shoulder is rounded, as a share of the tyre's width; and the rim's share of its radius. */
const shoulder = 0.16
const rimShare = 0.62

/** A circle about the wheel's axis, `offset` along it. */
function ring(wheel: SheetFigure['wheel'], radius: number, offset: number): readonly Place[] {
  const [ax, ay, az] = wheel.spinAxis
  // Two directions square to the axis: one in the vehicle's x-z plane, one upright.
  const u: Place = [az === 0 && ax === 0 ? 1 : az, 0, az === 0 && ax === 0 ? 0 : -ax]
  const uLength = Math.hypot(...u) || 1
  const e: Place = [u[0] / uLength, 0, u[2] / uLength]
  const f: Place = [ay * e[2] - az * e[1], az * e[0] - ax * e[2], ax * e[1] - ay * e[0]]
  return Array.from({ length: steps }, (_, i) => {
    const t = (2 * Math.PI * i) / steps
    const [c, s] = [radius * Math.cos(t), radius * Math.sin(t)]
    const at = (k: 0 | 1 | 2) => wheel.centre[k] + offset * wheel.spinAxis[k] + c * e[k] + s * f[k]
    return [at(0), at(1), at(2)] as const
  })
}

/** What the eye sees of a tyre: its outline with rounded shoulders, and the rim on both faces. */
export function tyre(wheel: SheetFigure['wheel'], eye: (place: Place) => Flat) {
  const half = wheel.width / 2
  const round = shoulder * wheel.width
  const rings = [0, 0.25, 0.5, 0.75, 1].flatMap((k) => {
    const drop = round * (1 - Math.cos((k * Math.PI) / 2))
    const out = half - round + round * Math.sin((k * Math.PI) / 2)
    return [out, -out].flatMap((offset) => ring(wheel, wheel.radius - drop, offset))
  })
  const face = ring(wheel, wheel.radius * rimShare, half * 0.7).map(eye)
  const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
  const seenOpen = Math.min(spread(face.map((p) => p[0])), spread(face.map((p) => p[1])))
  return {
    outline: outline(rings.map(eye)),
    /** Null where the face is seen from its edge. */
    rim: seenOpen > wheel.radius * 0.5 ? face : null,
  }
}
