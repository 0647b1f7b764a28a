import type { SheetMove } from '../../../sheet/index.ts'
import { Arrow } from '../../drawing/arrow.tsx'
import { Balloon } from '../../drawing/balloon.tsx'
import './part-drawing.css'

/** A bolt in its slot: where it sits now in ink, then in blue. */
export function SlotDrawing({ move }: { move: SheetMove }) {
  const most = Math.max(Math.abs(move.from), Math.abs(move.to), 1e-6)
  const now = (16 * move.from) / most
  const then = (16 * move.to) / most
  return (
    <svg viewBox="-64 -64 128 128" aria-hidden="true">
      <path className="part-centre" d="M-58 -14H58M0 -50V50" />
      <rect className="part-line" x="-32" y="-26" width="64" height="24" rx="12" />
      <circle className="part-line" cx="0" cy="28" r="10" />
      <circle className="part-now" cx={now} cy="-14" r="10" />
      <circle className="part-then" cx={then} cy="-14" r="10" />
      <path className="part-move" d={`M${now} 8H${then}`} />
      <Arrow x={then} y={8} angle={then > now ? 0 : Math.PI} size={10} fill="var(--blue)" />
      <Balloon x={-50} y={-50} text={String(move.order)} filled colour="var(--blue)" />
    </svg>
  )
}
