import type { SheetMove } from '../../../sheet/index.ts'
import { Arrow } from '../../drawing/arrow.tsx'
import { Balloon } from '../../drawing/balloon.tsx'
import './part-drawing.css'

/** A shim pack between bracket and pivot shaft: its thickness now in ink, then in blue. */
export function ShimDrawing({ move }: { move: SheetMove }) {
  const most = Math.max(move.from, move.to, 1e-6)
  const now = (46 * move.from) / most
  const then = (46 * move.to) / most
  const left = -30
  return (
    <svg viewBox="-64 -64 128 128" aria-hidden="true">
      <path className="part-centre" d="M-60 0H60" />
      <rect className="part-hatch" x={left - 14} y="-40" width="14" height="80" />
      <line className="part-now" x1={left} y1="-40" x2={left} y2="40" />
      <rect className="part-now" x={left} y="-30" width={now} height="60" />
      <rect className="part-then" x={left} y="-24" width={then} height="48" />
      <path className="part-line" d="M-58 -6H58M-58 6H58" />
      <path className="part-move" d={`M${left + now} 50H${left + then}`} />
      <Arrow x={left + then} y={50} angle={move.to > move.from ? 0 : Math.PI} size={10} fill="var(--blue)" />
      <Balloon x={-50} y={-50} text={String(move.order)} filled colour="var(--blue)" />
    </svg>
  )
}
