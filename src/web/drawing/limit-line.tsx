import { memo } from 'react'
import type { SheetReading } from '../../sheet/index.ts'
import { Arrow } from './arrow.tsx'
import { Dimension } from './dimension.tsx'
import { scaleOver } from './scale.ts'
import { typeset } from './typeset.ts'
import { useWidth } from './use-width.ts'

/** Heights in pixels: the axis with its limits, and the line of the prediction above it. */
const below = 29
const room = 39
const above = 13
/** Usual width of a figure of the limits' letters. */
const figure = 6.3

interface Label {
  readonly at: number
  readonly text: string
}

/** Where two limit texts start so that neither leaves the drawing nor covers the other. */
function sideBySide(
  labels: readonly Label[],
  width: number,
): readonly (Label & { readonly start: number })[] {
  const wide = labels.map(({ text }) => text.length * figure)
  const start = labels.map(({ at }, i) => Math.max(0, Math.min(width - wide[i]!, at - wide[i]! / 2)))
  const over = labels.length === 2 ? start[0]! + wide[0]! + 6 - start[1]! : 0
  if (over > 0) {
    const left = Math.min(start[0]!, over / 2)
    start[0] = start[0]! - left
    start[1] = Math.min(width - wide[1]!, start[1]! + over - left)
    start[0] = Math.max(0, Math.min(start[0]!, start[1]! - wide[0]! - 6))
  }
  return labels.map((label, i) => ({ ...label, start: start[i]! }))
}

/** A reading as a dimension line: limits as marks, the spread between end ticks, the prediction above it in blue. */
export const LimitLine = memo(function LimitLine({ reading }: { reading: SheetReading }) {
  const [element, width] = useWidth<HTMLDivElement>(300, 480)
  const { limit, predicted } = reading
  const axis = predicted ? room : 18
  const height = axis + below
  const shown = [
    reading.low,
    reading.high,
    ...(limit ? [limit.low, limit.high].filter(Number.isFinite) : []),
    ...(predicted ? [predicted.low, predicted.high] : []),
  ]
  const x = scaleOver(shown, 0, width)
  const now = x(reading.value)
  const labels = limit
    ? sideBySide(
        [
          { at: x(limit.low), text: typeset(limit.lowText) },
          { at: x(limit.high), text: typeset(limit.highText) },
        ].filter(({ at }) => Number.isFinite(at)),
        width,
      )
    : []
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
        {labels.map(({ at, start, text }) => (
          <g key={at}>
            <line
              x1={at}
              y1={axis - 15}
              x2={at}
              y2={axis + 14}
              style={{ stroke: 'var(--ink)', strokeWidth: 2 }}
            />
            <text x={start} y={axis + 26} fontSize="12.5">
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
          <Prediction
            axis={axis}
            now={now}
            at={x(predicted.value)}
            low={x(predicted.low)}
            high={x(predicted.high)}
          />
        )}
      </svg>
    </div>
  )
})

function Prediction({
  axis,
  now,
  at,
  low,
  high,
}: {
  axis: number
  now: number
  at: number
  low: number
  high: number
}) {
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
