/** A point in pixels. */
export interface Spot {
  readonly x: number
  readonly y: number
}

const directions = 24
const reaches = [30, 40, 52, 66, 82]

const apart = (a: Spot, b: Spot) => Math.hypot(a.x - b.x, a.y - b.y)

function fromLine(p: Spot, [a, b]: readonly [Spot, Spot]): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const length = dx * dx + dy * dy
  const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length))
  return apart(p, { x: a.x + t * dx, y: a.y + t * dy })
}

/** Whether two lines cross between their ends. */
function cross([a, b]: readonly [Spot, Spot], [c, d]: readonly [Spot, Spot]): boolean {
  const side = (o: Spot, p: Spot, q: Spot) => Math.sign((p.x - o.x) * (q.y - o.y) - (p.y - o.y) * (q.x - o.x))
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}

/**
 * Places for balloons beside their joints: for each in turn the direction and distance that stay clear of
 * lines, joints, other balloons and the edge, nearest first.
 */
export function placeBalloons(
  joints: readonly Spot[],
  lines: readonly (readonly [Spot, Spot])[],
  box: { readonly width: number; readonly height: number },
  radius = 13,
): readonly Spot[] {
  const placed: Spot[] = []
  for (const joint of joints) {
    let best: Spot = joint
    let least = Number.POSITIVE_INFINITY
    for (const reach of reaches)
      for (let i = 0; i < directions; i++) {
        const t = (2 * Math.PI * i) / directions
        const spot = { x: joint.x + reach * Math.cos(t), y: joint.y + reach * Math.sin(t) }
        const edge = Math.min(spot.x, spot.y, box.width - spot.x, box.height - spot.y)
        let cost = reach * 0.5
        if (edge < radius + 3) cost += 400 + 20 * (radius + 3 - edge)
        for (const other of placed) cost += Math.max(0, 2 * radius + 10 - apart(spot, other)) * 12
        for (const other of joints) cost += Math.max(0, radius + 9 - apart(spot, other)) * 8
        for (const line of lines) cost += Math.max(0, radius + 5 - fromLine(spot, line)) * 3
        // The leader should not run over another balloon.
        for (const other of placed) cost += Math.max(0, radius + 3 - fromLine(other, [joint, spot])) * 10
        placed.forEach((other, k) => {
          if (cross([joint, spot], [joints[k]!, other])) cost += 60
        })
        if (cost < least) {
          least = cost
          best = spot
        }
      }
    placed.push(best)
  }
  return placed
}
