import { atClock } from './at-clock.ts'
import { TurnArc } from './turn-arc.tsx'

/** Radius of the crown, and half the width across the flats below it. */
const crown = 80
const flats = 88
const stud = 38
const thread = 32
const sweep = 116
const half = 10
/** Half of the pin hole's width. */
const hole = 6

/** How far off the hole the next slot is drawn, as a share of a pitch: where it really is, the eye sees. */
const off = 0.68

/** The two sides of a slot at the top, from the crown's rim to the stud; and half of what it takes off the rim. */
const rim = -Math.sqrt(crown ** 2 - half ** 2)
const sides = [-half, half].map((x) => `M${x} ${rim}V${-Math.sqrt(stud ** 2 - half ** 2)}`).join('')
const edge = Math.asin(half / crown)
const bore = Math.sqrt(stud ** 2 - hole ** 2)

const degrees = (angle: number) => `${Math.round((angle * 180) / Math.PI)}°`

/** A castle nut seen along its stud: the pin hole upright, the next slot before it, forward as the nut turns on. */
export function CastleDrawing({ slots, pitch }: { slots: number; pitch: number }) {
  const step = (2 * Math.PI) / slots
  const next = -off * Math.min(pitch, step)
  const corners = Array.from({ length: 6 }, (_, i) =>
    atClock(next + ((2 * i + 1) * Math.PI) / 6, flats / Math.cos(Math.PI / 6)),
  )
  const [lx, ly] = atClock(next / 2, sweep + 12)
  return (
    <svg
      viewBox="-146 -146 292 260"
      role="img"
      aria-label={`Castle nut with ${slots} slots, seen along its stud. The next slot comes to the pin hole within ${degrees(pitch)} forward, clockwise.`}
    >
      {slots === 6 && (
        <polygon
          className="doing-line"
          points={corners.map((p) => p.map((n) => n.toFixed(2)).join(',')).join(' ')}
        />
      )}
      {Array.from({ length: slots }, (_, i) => {
        const clock = next + i * step
        const [x1, y1] = atClock(clock + edge, crown)
        const [x2, y2] = atClock(clock + step - edge, crown)
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: the slots keep their places
          <g key={i}>
            <path className="doing-line" d={`M${x1} ${y1}A${crown} ${crown} 0 0 1 ${x2} ${y2}`} />
            <path
              className={i === 0 ? 'doing-slot doing-slot-next' : 'doing-slot'}
              d={sides}
              transform={`rotate(${((clock * 180) / Math.PI).toFixed(2)})`}
            />
          </g>
        )
      })}
      <circle className="doing-stud" r={stud} />
      <circle className="doing-thread" r={thread} />
      <path className="doing-hole" d={`M${-hole} ${-bore}V${bore}M${hole} ${-bore}V${bore}`} />
      <path className="doing-centre" d={`M0 ${-sweep - 20}V${crown + 24}`} />
      <text x="10" y={-sweep - 12} fontSize="19">
        pin hole
      </text>
      <TurnArc from={next} to={0} radius={sweep - 4} />
      <text className="doing-angle" x={lx - 4} y={ly} textAnchor="end" fontSize="24">
        at most {degrees(pitch)}
      </text>
    </svg>
  )
}
