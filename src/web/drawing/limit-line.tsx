import type { SheetReading } from '../../sheet/index.ts'
import { Arrow } from './arrow.tsx'
import { Dimension } from './dimension.tsx'
import { scaleOver } from './scale.ts'
import { useWidth } from './use-width.ts'

const height = 68
const axis = 39
const above = 13

/** A reading as a dimension line: limits as marks, the spread between end ticks, the prediction above it in blue. */
export function LimitLine({ reading }: { reading: SheetReading }) {
  const [element, width] = useWidth<HTMLDivElement>(300)
  const { limit, predicted } = reading
  const shown = [
    reading.low,
    reading.high,
    ...(limit ? [limit.low, limit.high].filter(Number.isFinite) : []),
    ...(predicted ? [predicted.low, predicted.high] : []),
  ]
  const x = scaleOver(shown, 0, width)
  const now = x(reading.value)
  const labels = limit
    ? [
        { at: x(limit.low), text: limit.lowText, end: false },
        { at: x(limit.high), text: limit.highText, end: true },
      ].filter(({ at }) => Number.isFinite(at))
    : []
  const close = labels.length === 2 && labels[1]!.at - labels[0]!.at < 62
  const anchor = (end: boolean, at: number) => {
    if (close) return end ? 'start' : 'end'
    return at < 24 ? 'start' : at > width - 24 ? 'end' : 'middle'
  }
  return (
    <div ref={element} className="limit-line">
      <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        <line x1="0" y1={axis} x2={width} y2={axis} style={{ stroke: 'var(--line)', strokeWidth: 1 }} />
        {labels.length === 2 && (
          <rect
            x={labels[0]!.at}
            y={axis - 8}
            width={labels[1]!.at - labels[0]!.at}
            height="16"
            fill="url(#hatch)"
          />
        )}
        {limit?.preferred != null && (
          <line
            x1={x(limit.preferred)}
            y1={axis - 12}
            x2={x(limit.preferred)}
            y2={axis + 12}
            style={{ stroke: 'var(--soft)', strokeWidth: 1 }}
            strokeDasharray="7 2 1.5 2"
          />
        )}
        {labels.map(({ at, text, end }) => (
          <g key={String(end)}>
            <line
              x1={at}
              y1={axis - 15}
              x2={at}
              y2={axis + 14}
              style={{ stroke: 'var(--ink)', strokeWidth: 2 }}
            />
            <text
              x={close ? at + (end ? -2 : 2) : at}
              y={height - 3}
              fontSize="12.5"
              textAnchor={anchor(end, at)}
            >
              {text}
            </text>
          </g>
        ))}
        <Dimension from={x(reading.low)} to={x(reading.high)} at={axis} />
        <circle
          cx={now}
          cy={axis}
          r="4.6"
          style={{ fill: 'var(--paper)', stroke: 'var(--ink)', strokeWidth: 1.8 }}
        />
        {predicted && (
          <Prediction now={now} at={x(predicted.value)} low={x(predicted.low)} high={x(predicted.high)} />
        )}
      </svg>
    </div>
  )
}

function Prediction({ now, at, low, high }: { now: number; at: number; low: number; high: number }) {
  const from = axis - 7
  const to = above + 12
  return (
    <g>
      <path
        d={`M${now} ${from}C${now} ${(from + to) / 2 - 2} ${at} ${(from + to) / 2 + 6} ${at} ${to}`}
        style={{ stroke: 'var(--blue)', strokeWidth: 1.6, fill: 'none' }}
        strokeDasharray="4 3"
      />
      <Arrow x={at} y={above + 5} angle={-Math.PI / 2} size={8} fill="var(--blue)" />
      <Dimension from={low} to={high} at={above} tick={5} colour="var(--blue)" />
      <circle cx={at} cy={above} r="4" style={{ fill: 'var(--blue)' }} />
    </g>
  )
}
