// Directions that a knuckle carries along when it is steered.
/** Vector product. */
export const cross = ([a, b, c], [x, y, z]) => [b * z - c * y, c * x - a * z, a * y - b * x]
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const minus = (a, b) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
/** Of length 1. */
export const unit = (v) => v.map((x) => x / Math.hypot(...v))

/** Three axes that turn with the knuckle: its spin axis and two more. */
export function frame({ spinAxis, points }) {
  const along = minus(points.tieOuter, points.lowerOuter)
  const across = unit(
    minus(
      along,
      spinAxis.map((x) => x * dot(along, spinAxis)),
    ),
  )
  return { spin: spinAxis, axes: [spinAxis, across, cross(spinAxis, across)] }
}
/** A direction fixed in the knuckle, from one pose to another. */
export const carried = (from, to) => (v) => {
  const parts = from.axes.map((axis) => dot(axis, v))
  return [0, 1, 2].map((i) => parts.reduce((sum, part, k) => sum + part * to.axes[k][i], 0))
}

/** The same for a knuckle that turns about a kingpin, whose direction caster and SAI give. */
export function aboutPin(from, to, side) {
  const k = unit([-Math.tan(from.caster), -Math.tan(from.sai), 1])
  const angle = (side === 'left' ? 1 : -1) * (to.steer - from.steer)
  const turned = (v) => {
    const across = cross(k, v)
    const along = dot(k, v) * (1 - Math.cos(angle))
    return v.map((x, i) => x * Math.cos(angle) + across[i] * Math.sin(angle) + k[i] * along)
  }
  if (Math.hypot(...minus(turned(from.spinAxis), to.spinAxis)) > 1e-9)
    throw new Error('The knuckle does not turn about its kingpin.')
  return turned
}
