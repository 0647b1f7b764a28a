import { Arrow } from '../../drawing/arrow.tsx'
import { atClock } from './at-clock.ts'

const ring = 92

/** A ring of fasteners seen from outside, numbered in the order in which they are pulled. */
export function RingDrawing({ order, count }: { order: readonly number[]; count: number }) {
  const radius = Math.min(24, (Math.PI * ring * 0.62) / count)
  const at = (place: number) => atClock((2 * Math.PI * place) / count, ring)
  return (
    <svg
      viewBox="-130 -130 260 260"
      role="img"
      aria-label={`${count} fasteners, place 1 at the top, counted clockwise; pulled in the order ${order.map((place) => place + 1).join(', ')}.`}
    >
      <circle className="doing-centre" r={ring} />
      <circle className="doing-line" r="20" />
      <path className="doing-centre" d="M-34 0H34M0 -34V34" />
      {order.slice(1).map((place, i) => {
        const [x1, y1] = at(order[i]!)
        const [x2, y2] = at(place)
        const t = Math.atan2(y2 - y1, x2 - x1)
        const end = [x2 - (radius + 3) * Math.cos(t), y2 - (radius + 3) * Math.sin(t)] as const
        return (
          <g key={place}>
            <line
              className="doing-way"
              x1={x1 + radius * Math.cos(t)}
              y1={y1 + radius * Math.sin(t)}
              x2={end[0] - 8 * Math.cos(t)}
              y2={end[1] - 8 * Math.sin(t)}
            />
            <Arrow x={end[0]} y={end[1]} angle={t} size={11} fill="var(--blue)" />
          </g>
        )
      })}
      {order.map((place, i) => {
        const [x, y] = at(place)
        return (
          <g key={place}>
            <circle
              className={i === 0 ? 'doing-fastener doing-fastener-first' : 'doing-fastener'}
              cx={x}
              cy={y}
              r={radius}
            />
            <text
              x={x}
              y={y + radius * 0.36}
              textAnchor="middle"
              fontSize={radius * 1.08}
              fontWeight="600"
              style={i === 0 ? { fill: 'var(--on-blue)' } : undefined}
            >
              {i + 1}
            </text>
          </g>
        )
      })}
    </svg>
  )
}
