/** A letter or number in a circle, as on an assembly drawing. */
export function Balloon({
  x,
  y,
  text,
  filled = false,
  colour = 'var(--ink)',
  radius = 13,
}: {
  x: number
  y: number
  text: string
  filled?: boolean
  colour?: string
  radius?: number
}) {
  return (
    <g className="balloon">
      <circle
        cx={x}
        cy={y}
        r={radius}
        style={{ fill: filled ? colour : 'var(--paper)', stroke: colour, strokeWidth: 1.6 }}
      />
      <text
        x={x}
        y={y + radius * 0.36}
        textAnchor="middle"
        fontSize={radius * 1.08}
        fontWeight="600"
        style={{ fill: filled ? 'var(--on-blue)' : colour }}
      >
        {text}
      </text>
    </g>
  )
}
