import type { SheetMove } from '../../../sheet/index.ts'
import { Fractions } from '../../drawing/fractions.tsx'
import { glued } from '../../drawing/glued.ts'
import './move-card.css'
import { MoveDrawing } from './move-drawing.tsx'

/** One move: drawn as the part is seen, said as the hand does it. */
export function MoveCard({ move, made }: { move: SheetMove; made: boolean }) {
  return (
    <li className={`move${made ? ' move-made' : ''}`} data-adjuster={move.adjuster}>
      <div className="move-drawing" aria-hidden="true">
        <MoveDrawing move={move} />
      </div>
      <div>
        <h3>
          {made && 'Made: '}
          {move.name}, {move.wheel}
        </h3>
        <p className="move-amount figure-number">
          <Fractions text={move.amount} />
        </p>
        <p className="move-how">{glued(move.how)}</p>
        {move.seenFrom && <p className="move-how">{move.seenFrom}</p>}
        <p className="move-boxes">
          <span>turned</span> <span>nipped up</span>
        </p>
        {move.warning && <p className="move-warning">{glued(move.warning)}</p>}
      </div>
    </li>
  )
}
