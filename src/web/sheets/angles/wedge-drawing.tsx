import type { SheetMove } from '../../../sheet/index.ts'
import { Balloon } from '../../drawing/balloon.tsx'
import './part-drawing.css'

/** How much steeper than it is a wedge is drawn, so that the eye can tell which edge is the thick one. */
const steep = 14
const height = 72
const thin = 3

/** A wedge between axle and hub, seen along its thin edge: the one that is in now in ink, the one to fit in blue. */
export function WedgeDrawing({ move }: { move: SheetMove }) {
  const face = (angle: number) => Math.min(Math.abs(angle) * steep, 0.6) * height
  const wedge = (angle: number) => {
    const thick = thin + face(angle)
    // A negative angle has its thick edge at the other side.
    const [top, bottom] = angle >= 0 ? [thick, thin] : [thin, thick]
    return `M0 ${-height / 2}H${top.toFixed(2)}L${bottom.toFixed(2)} ${height / 2}H0Z`
  }
  return (
    <svg viewBox="-64 -64 128 128" aria-hidden="true">
      <path className="part-centre" d="M-60 0H60" />
      <rect className="part-hatch" x="-34" y="-44" width="34" height="88" />
      <path className="part-solid" d="M0 -44V44" strokeWidth="2.4" />
      <path className="part-now" d={wedge(move.from)} />
      <path className="part-then" d={wedge(move.to)} />
      <Balloon x={-50} y={-50} text={String(move.order)} filled colour="var(--blue)" />
    </svg>
  )
}
