import type { SheetMove } from '../../../sheet/index.ts'
import { Arrow } from '../../drawing/arrow.tsx'
import { Balloon } from '../../drawing/balloon.tsx'
import './part-drawing.css'

const disc = 40
const offset = 9
const hole = 8.5
const sweep = 49

/** A place on the dial: `clock` is rad clockwise from 12 o'clock. */
const dialAt = (clock: number, radius: number) =>
  [radius * Math.sin(clock), -radius * Math.cos(clock)] as const

/** The washer seen from its side between its two stops: mark and hole now in ink, then in blue. */
export function EccentricDrawing({ move }: { move: SheetMove }) {
  const { dial } = move
  const sense = move.looks
  // Without a known mark the turn itself is still drawn, from the top.
  const amount = Math.abs(move.to - move.from) * (sense === 'anticlockwise' ? -1 : 1)
  const turn = dial
    ? Math.atan2(Math.sin(dial.to - dial.from), Math.cos(dial.to - dial.from))
    : sense
      ? amount
      : 0
  const ends = dial || sense ? { from: dial?.from ?? 0, to: (dial?.from ?? 0) + turn } : null
  const arc = () => {
    if (!ends) return null
    const way = Math.sign(turn) || 1
    // The arrow's head takes its length off the arc.
    const stop = ends.to - way * Math.min(Math.abs(turn), 0.14)
    const [x1, y1] = dialAt(ends.from, sweep)
    const [x2, y2] = dialAt(stop, sweep)
    const [hx, hy] = dialAt(ends.to, sweep)
    return (
      <g>
        <path
          className="part-move"
          d={`M${x1.toFixed(2)} ${y1.toFixed(2)}A${sweep} ${sweep} 0 0 ${way > 0 ? 1 : 0} ${x2.toFixed(2)} ${y2.toFixed(2)}`}
        />
        <Arrow
          x={hx}
          y={hy}
          angle={ends.to - way * 0.08 + (way > 0 ? 0 : Math.PI)}
          size={11}
          fill="var(--blue)"
        />
      </g>
    )
  }
  const mark = (clock: number, kind: string) => {
    const [hx, hy] = dialAt(clock + Math.PI, offset)
    const [x1, y1] = dialAt(clock, 6)
    const [x2, y2] = dialAt(clock, disc - 2)
    return (
      <g className={kind}>
        <circle cx={hx} cy={hy} r={hole} />
        <line x1={x1} y1={y1} x2={x2} y2={y2} />
      </g>
    )
  }
  return (
    <svg viewBox="-64 -64 128 128" aria-hidden="true">
      <path className="part-centre" d="M-58 0H58M0 -58V58" />
      {/* The stops that the washer turns between; a sleeve has none. */}
      {move.kind === 'eccentric' && (
        <path className="part-solid" d={`M${-disc - 1.5} -24V24M${disc + 1.5} -24V24`} strokeWidth="3.4" />
      )}
      <circle className="part-line" r={disc} />
      {Array.from({ length: 12 }, (_, i) => {
        const clock = (i * Math.PI) / 6
        const [x1, y1] = dialAt(clock, disc - (i % 3 === 0 ? 7 : 4))
        const [x2, y2] = dialAt(clock, disc)
        // biome-ignore lint/suspicious/noArrayIndexKey: the hours of a clock face keep their places
        return <line key={i} className="part-tick" x1={x1} y1={y1} x2={x2} y2={y2} />
      })}
      {dial && ends && mark(ends.from, 'part-now')}
      {dial && ends && Math.abs(turn) > 0.01 && mark(ends.to, 'part-then')}
      {arc()}
      <Balloon x={-50} y={-50} text={String(move.order)} filled colour="var(--blue)" />
    </svg>
  )
}
