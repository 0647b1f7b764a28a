import { memo } from 'react'
import type { SheetReach, SheetReading } from '../../../sheet/index.ts'
import { Balloon } from '../../drawing/balloon.tsx'
import { degreeText } from '../../drawing/degree-text.ts'
import { Dimension } from '../../drawing/dimension.tsx'
import { roundTicks, type Scale, scaleOver } from '../../drawing/scale.ts'
import { typeset } from '../../drawing/typeset.ts'
import { useWidth } from '../../drawing/use-width.ts'
import './reach-map.css'

const left = 46
const right = 34
const top = 36
const bottom = 44

type Spot = readonly [number, number]

/** Camber against caster: what the adjusters reach, the limits, and the way of the moves. */
export const ReachMap = memo(function ReachMap({
  reach,
  readings,
}: {
  reach: SheetReach
  readings: readonly SheetReading[]
}) {
  const [element, width] = useWidth<HTMLDivElement>(420, 325)
  const height = Math.round(Math.min(Math.max(width * 0.92, 280), 380))
  const spots: Spot[] = [
    ...reach.outline,
    ...reach.path.flatMap((step) => [step.at, ...(step.ellipse ?? [])]),
    ...(reach.limit
      ? ([
          [reach.limit.camber[0], reach.limit.caster[0]],
          [reach.limit.camber[1], reach.limit.caster[1]],
        ] as Spot[])
      : []),
  ]
  if (spots.length === 0) return null
  const cambers = spots.map((spot) => spot[0])
  const casters = spots.map((spot) => spot[1])
  const x = scaleOver(cambers, left, width - right, 0.05)
  const y = scaleOver(casters, height - bottom, top, 0.05)
  const shape = (points: readonly Spot[]) =>
    points.map((point) => `${x(point[0]).toFixed(1)},${y(point[1]).toFixed(1)}`).join(' ')
  const last = reach.path.length - 1
  const end = reach.path[last]
  const said = reach.path.map(
    (step, i) =>
      `${i === 0 ? step.label : `after move ${step.label}`}: camber ${degreeText(step.at[0])}°, caster ${degreeText(step.at[1])}°`,
  )
  return (
    <section aria-label={reach.title} className="reach">
      <h2>{reach.title}</h2>
      <div ref={element}>
        <svg
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          role="img"
          aria-label={`${reach.title}. ${said.join('; ')}.`}
        >
          <polygon className="reach-patch" points={shape(reach.outline)} />
          <Axes x={x} y={y} width={width} height={height} cambers={cambers} casters={casters} />
          {reach.limit && <LimitBox limit={reach.limit} x={x} y={y} readings={readings} side={reach.side} />}
          {reach.path.map((step, i) =>
            step.ellipse ? (
              <polygon
                key={step.label}
                className={i === 0 ? 'reach-spread' : 'reach-spread reach-spread-then'}
                points={shape(step.ellipse)}
              />
            ) : null,
          )}
          <polyline className="reach-path" points={shape(reach.path.map((step) => step.at))} />
          {reach.path.slice(1, last).map((step) => (
            <Balloon
              key={step.label}
              x={x(step.at[0])}
              y={y(step.at[1])}
              text={step.label}
              colour="var(--blue)"
              radius={10}
            />
          ))}
          {end && last > 0 && (
            <Balloon
              x={x(end.at[0])}
              y={y(end.at[1])}
              text={end.label}
              filled
              colour="var(--blue)"
              radius={10}
            />
          )}
          {reach.path[0] && <Now spot={reach.path[0]} x={x} y={y} height={height} />}
        </svg>
      </div>
    </section>
  )
})

function Now({
  spot,
  x,
  y,
  height,
}: {
  spot: SheetReach['path'][number]
  x: Scale
  y: Scale
  height: number
}) {
  const below = Math.max(...(spot.ellipse ?? [spot.at]).map((point) => y(point[1])))
  const above = Math.min(...(spot.ellipse ?? [spot.at]).map((point) => y(point[1])))
  const room = below + 18 < height - bottom
  return (
    <g>
      <circle cx={x(spot.at[0])} cy={y(spot.at[1])} r="4.5" style={{ fill: 'var(--ink)' }} />
      <text
        className="reach-now"
        x={x(spot.at[0])}
        y={room ? below + 15 : above - 6}
        textAnchor="middle"
        fontSize="14"
      >
        {spot.label}
      </text>
    </g>
  )
}

function LimitBox({
  limit,
  x,
  y,
  readings,
  side,
}: {
  limit: NonNullable<SheetReach['limit']>
  x: Scale
  y: Scale
  readings: readonly SheetReading[]
  side: string
}) {
  const [x1, x2] = [x(limit.camber[0]), x(limit.camber[1])]
  const [y1, y2] = [y(limit.caster[1]), y(limit.caster[0])]
  // As the workshop typed them, when these are the limits of a reading of this wheel.
  const words = (angle: 'camber' | 'caster') => {
    const [low, high] = limit[angle]
    const typed = readings.find(
      (reading) =>
        reading.name.endsWith(`${side} ${angle}`) &&
        reading.limit?.low === low &&
        reading.limit.high === high,
    )?.limit
    return typed
      ? typeset(`${typed.lowText} … ${typed.highText}`)
      : `${degreeText(low)}° … ${degreeText(high)}°`
  }
  const middle = (y1 + y2) / 2
  return (
    <g>
      <rect className="reach-limit" x={x1} y={y1} width={x2 - x1} height={y2 - y1} />
      <Dimension from={x1} to={x2} at={y1 - 14} tick={5} weight={1} />
      <text className="reach-halo" x={(x1 + x2) / 2} y={y1 - 20} textAnchor="middle" fontSize="13">
        {words('camber')}
      </text>
      <Dimension from={y1} to={y2} at={x2 + 13} tick={5} weight={1} upright />
      <text
        className="reach-halo"
        x={x2 + 27}
        y={middle}
        textAnchor="middle"
        fontSize="13"
        transform={`rotate(-90 ${x2 + 27} ${middle})`}
      >
        {words('caster')}
      </text>
    </g>
  )
}

function Axes({
  x,
  y,
  width,
  height,
  cambers,
  casters,
}: {
  x: Scale
  y: Scale
  width: number
  height: number
  cambers: readonly number[]
  casters: readonly number[]
}) {
  const degree = Math.PI / 180
  const marks = (values: readonly number[], count: number) =>
    roundTicks(Math.min(...values) / degree, Math.max(...values) / degree, count).map((tick) => tick * degree)
  const floor = height - bottom
  const middle = (top + floor) / 2
  return (
    <g>
      <path className="reach-axis" d={`M${left} ${top - 12}V${floor}H${width - right + 12}`} />
      {marks(cambers, width > 380 ? 6 : 4).map((tick) => (
        <g key={tick}>
          <line className="reach-axis" x1={x(tick)} y1={floor} x2={x(tick)} y2={floor + 5} />
          <text x={x(tick)} y={floor + 18} textAnchor="middle" fontSize="12.5">
            {degreeText(tick)}
          </text>
        </g>
      ))}
      {marks(casters, 5).map((tick) => (
        <g key={tick}>
          <line className="reach-axis" x1={left - 5} y1={y(tick)} x2={left} y2={y(tick)} />
          <text x={left - 9} y={y(tick) + 4} textAnchor="end" fontSize="12.5">
            {degreeText(tick)}
          </text>
        </g>
      ))}
      <text x={(left + width - right) / 2} y={height - 6} textAnchor="middle" fontSize="13">
        camber, degrees
      </text>
      <text x={12} y={middle} textAnchor="middle" fontSize="13" transform={`rotate(-90 12 ${middle})`}>
        caster, degrees
      </text>
    </g>
  )
}
