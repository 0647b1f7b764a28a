import type { SheetMove } from '../../../sheet/index.ts'
import { Arrow } from '../../drawing/arrow.tsx'
import { Balloon } from '../../drawing/balloon.tsx'
import './part-drawing.css'

const flats = Array.from({ length: 6 }, (_, i) => {
  const t = ((i + 0.5) * Math.PI) / 3
  return `${(15 * Math.cos(t)).toFixed(1)},${(15 * Math.sin(t) - 22).toFixed(1)}`
}).join(' ')

/** A tie rod: above, seen along itself with the way it turns; below, seen from its side with what becomes of its length. */
export function RodDrawing({ move }: { move: SheetMove }) {
  const longer = move.to > move.from
  const colour = 'var(--blue)'
  const r = 25
  const sense = move.looks
  const clockwise = sense === 'clockwise'
  // The turn: from 8 over 12 to 4 o'clock, or the other way about.
  const [a, b] = clockwise ? [-2.6, -0.35] : [-0.54, -2.79]
  const at = (t: number) => [r * Math.cos(t), r * Math.sin(t) - 22] as const
  const [x1, y1] = at(a)
  const [x2, y2] = at(b)
  const way = clockwise ? 1 : -1
  const [hx, hy] = at(b + way * 0.34)
  return (
    <svg viewBox="-64 -64 128 128" aria-hidden="true">
      <path className="part-centre" d="M-32 -22H32M0 -54V6" />
      <circle className="part-line" cx="0" cy="-22" r="8" />
      <polygon className="part-line" points={flats} />
      {sense && (
        <g>
          <path
            className="part-move"
            d={`M${x1.toFixed(1)} ${y1.toFixed(1)}A${r} ${r} 0 0 ${clockwise ? 1 : 0} ${x2.toFixed(1)} ${y2.toFixed(1)}`}
          />
          <Arrow x={hx} y={hy} angle={b + way * (Math.PI / 2 + 0.2)} size={11} fill={colour} />
        </g>
      )}
      {/* The rod from its side: joint, lock nut, thread, rod. */}
      <path className="part-centre" d="M-62 32H62" />
      <circle className="part-line" cx="-46" cy="32" r="10" />
      <circle className="part-line" cx="-46" cy="32" r="4" />
      <path
        className="part-line"
        d="M-36 27.5H-14M-36 36.5H-14M-14 24H-4V40H-4H-14ZM20 26H60M20 38H60M20 26V38"
      />
      <path className="part-tick" d="M-4 28H20M-4 36H20M0 28L3 36M5 28L8 36M10 28L13 36M15 28L18 36" />
      <line x1="-46" y1="50" x2="-46" y2="60" className="part-move" style={{ strokeWidth: 1.4 }} />
      <line x1="40" y1="50" x2="40" y2="60" className="part-move" style={{ strokeWidth: 1.4 }} />
      <line
        x1={longer ? -46 : -60}
        y1="55"
        x2={longer ? 40 : 56}
        y2="55"
        className="part-move"
        style={{ strokeWidth: 1.4 }}
      />
      <Arrow x={-46} y={55} angle={longer ? Math.PI : 0} size={8} fill={colour} />
      <Arrow x={40} y={55} angle={longer ? 0 : Math.PI} size={8} fill={colour} />
      <Balloon x={-50} y={-50} text={String(move.order)} filled colour={colour} />
    </svg>
  )
}
