import { Arrow } from './arrow.tsx'

/**
 * A dimension line with end ticks. Arrows stand inside when there is room, else outside and point inward,
 * as on a drawing. Horizontal from `from` to `to` at `at`; with `upright` it stands.
 */
export function Dimension({
  from,
  to,
  at,
  tick = 6,
  colour = 'var(--ink)',
  weight = 1.4,
  dash,
  upright = false,
}: {
  from: number
  to: number
  at: number
  tick?: number
  colour?: string
  weight?: number
  dash?: string
  upright?: boolean
}) {
  const [low, high] = from <= to ? [from, to] : [to, from]
  const roomy = high - low >= 24
  const reach = roomy ? 0 : 12
  const stroke = { stroke: colour, strokeWidth: weight, fill: 'none' }
  const line = (x1: number, y1: number, x2: number, y2: number, dashed = false) => (
    <line
      x1={upright ? y1 : x1}
      y1={upright ? x1 : y1}
      x2={upright ? y2 : x2}
      y2={upright ? x2 : y2}
      style={stroke}
      strokeDasharray={dashed ? dash : undefined}
    />
  )
  const head = (along: number, back: boolean) => (
    <Arrow
      x={upright ? at : along}
      y={upright ? along : at}
      angle={(upright ? Math.PI / 2 : 0) + (back ? Math.PI : 0)}
      size={7}
      fill={colour}
    />
  )
  return (
    <g>
      {line(low - reach, at, high + reach, at, true)}
      {line(low, at - tick, low, at + tick)}
      {line(high, at - tick, high, at + tick)}
      {head(low, roomy)}
      {head(high, !roomy)}
    </g>
  )
}
