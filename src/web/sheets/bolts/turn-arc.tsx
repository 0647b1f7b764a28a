import { Arrow } from '../../drawing/arrow.tsx'
import { atClock } from './at-clock.ts'

/** Length of the arrow's head. */
const head = 15

/** An arc that turns from one clock angle to another, rad clockwise from 12 o'clock; its head is at the end. */
export function TurnArc({ from, to, radius }: { from: number; to: number; radius: number }) {
  const way = to >= from ? 1 : -1
  // The head takes its length off the arc and leans along it.
  const short = Math.min(Math.abs(to - from), (head * 0.8) / radius)
  const [x1, y1] = atClock(from, radius)
  const [x2, y2] = atClock(to - way * short, radius)
  const [hx, hy] = atClock(to, radius)
  const large = Math.abs(to - from) > Math.PI ? 1 : 0
  return (
    <g>
      <path
        className="doing-move"
        d={`M${x1.toFixed(2)} ${y1.toFixed(2)}A${radius} ${radius} 0 ${large} ${way > 0 ? 1 : 0} ${x2.toFixed(2)} ${y2.toFixed(2)}`}
      />
      <Arrow
        x={hx}
        y={hy}
        angle={to - way * (short / 2) + (way > 0 ? 0 : Math.PI)}
        size={head}
        fill="var(--blue)"
      />
    </g>
  )
}
