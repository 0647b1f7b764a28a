import type { SheetMoves } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { chance } from './chance.ts'
import { MoveCard } from './move-card.tsx'
import './moves.css'

/** What the hand does, in order. */
export function Moves({ moves }: { moves: SheetMoves }) {
  return (
    <section aria-label="Moves">
      <h2 className="moves-head">Moves</h2>
      {moves.outOfReach.length > 0 && (
        <div className="moves-out">
          <h3>Out of reach</h3>
          <p>{glued(moves.sentence)}</p>
        </div>
      )}
      <ol className="moves">
        {moves.moves.map((move) => (
          <MoveCard key={move.order} move={move} />
        ))}
      </ol>
      <p className="moves-chance">
        Inside every limit at once: <strong className="figure-number">{chance(moves.insideNow)}</strong> as it
        stands
        {moves.moves.length > 0 && (
          <>
            , <strong className="figure-number">{moves.insideAfterText}</strong> after the moves
          </>
        )}
        .
      </p>
    </section>
  )
}
