/** A drafting arrowhead: its point at (x, y), looking along `angle` (rad, 0 to the right, growing clockwise on the screen). */
export function Arrow({
  x,
  y,
  angle,
  size = 8,
  fill = 'var(--ink)',
}: {
  x: number
  y: number
  angle: number
  size?: number
  fill?: string
}) {
  const half = size * 0.34
  const at = (along: number, across: number) =>
    `${(x - along * Math.cos(angle) - across * Math.sin(angle)).toFixed(2)},${(
      y - along * Math.sin(angle) + across * Math.cos(angle)
    ).toFixed(2)}`
  return <polygon points={`${at(0, 0)} ${at(size, half)} ${at(size, -half)}`} style={{ fill }} />
}
