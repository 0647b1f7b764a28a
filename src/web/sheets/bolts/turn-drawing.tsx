import { atClock } from './at-clock.ts'
import { TurnArc } from './turn-arc.tsx'

const head = 70
const sweep = 98
const flats = Array.from({ length: 6 }, (_, i) =>
  atClock(((2 * i + 1) * Math.PI) / 6, head)
    .map((n) => n.toFixed(2))
    .join(','),
).join(' ')

/** A head seen along its bolt with its mark: where it stands at the torque, and where the turn ends. */
export function TurnDrawing({ angle }: { angle: number }) {
  const degrees = Math.round((angle * 180) / Math.PI)
  const mark = (clock: number, kind: string) => {
    const [x1, y1] = atClock(clock, 20)
    const [x2, y2] = atClock(clock, head - 12)
    return <line className={kind} x1={x1} y1={y1} x2={x2} y2={y2} />
  }
  const [lx, ly] = atClock(angle / 2, sweep + 14)
  return (
    <svg
      viewBox="-150 -130 300 250"
      role="img"
      aria-label={`Turn ${degrees < 0 ? 'back' : 'forward'} by ${Math.abs(degrees)}°, ${degrees < 0 ? 'anticlockwise' : 'clockwise'}, from the mark.`}
    >
      <circle className="doing-line" r={head + 14} />
      <polygon className="doing-line" points={flats} />
      <path className="doing-seat" d={`M0 ${-head - 14}V${-sweep - 24}`} />
      {mark(0, 'doing-mark')}
      {mark(angle, 'doing-mark doing-mark-then')}
      <TurnArc from={0} to={angle} radius={sweep} />
      <text className="doing-angle" x={lx} y={ly + 7} textAnchor={lx < -1 ? 'end' : 'start'} fontSize="24">
        {degrees < 0 ? `${-degrees}° back` : `${degrees}°`}
      </text>
    </svg>
  )
}
