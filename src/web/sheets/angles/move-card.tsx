import type { SheetMove } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { EccentricDrawing } from './eccentric-drawing.tsx'
import './move-card.css'
import { RodDrawing } from './rod-drawing.tsx'
import { ShimDrawing } from './shim-drawing.tsx'
import { SlotDrawing } from './slot-drawing.tsx'

/** One move: drawn as the part is seen, said as the hand does it. */
export function MoveCard({ move }: { move: SheetMove }) {
  return (
    <li className="move" data-adjuster={move.adjuster}>
      <div className="move-drawing" aria-hidden="true">
        {move.kind === 'eccentric' && <EccentricDrawing move={move} />}
        {move.kind === 'thread' && <RodDrawing move={move} />}
        {move.kind === 'shims' && <ShimDrawing move={move} />}
        {move.kind === 'slotted bolt' && <SlotDrawing move={move} />}
      </div>
      <div>
        <h3>
          {move.name}, {move.wheel}
        </h3>
        <p className="move-amount figure-number">{move.amount}</p>
        <p className="move-how">{glued(move.how)}</p>
        {move.seenFrom && <p className="move-how">{move.seenFrom}</p>}
        {move.warning && <p className="move-warning">{glued(move.warning)}</p>}
      </div>
    </li>
  )
}
