/**
 * The angle at which p cos φ + q sin φ takes a value: a point going round on a circle at a given height, or at a
 * given distance from a point. Of the two, the one where the value grows with φ (`rising`) or falls.
 *
 *     φ = atan2(q, p) ∓ atan2(√(ρ² − c²), c),  ρ = √(p² + q²)
 *
 * @returns rad, nearest to 0; null when the value is not taken
 * @source own derivation: docs/methods/trailing-arm.md
 */
export function angleOnCircle(p: number, q: number, value: number, rising: boolean): number | null {
  const radius = Math.hypot(p, q)
  const room = (radius - value) * (radius + value)
  if (!(room >= 0)) return null
  const away = Math.atan2(Math.sqrt(room), value)
  const angle = Math.atan2(q, p) + (rising ? -away : away)
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))
}
