import { memo } from 'react'
import { formatChance } from '../../../quantity/index.ts'
import type { SheetMoves } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { MoveCard } from './move-card.tsx'
import './moves.css'

/**
 * What the hand does, in order. Noted as made and not read yet, it says so: whoever takes the job over must not
 * turn them a second time.
 */
export const Moves = memo(function Moves({ moves, made }: { moves: SheetMoves; made: boolean }) {
  return (
    <section aria-label="Moves">
      <h2 className="moves-head">{made ? 'Moves, noted as made' : 'Moves'}</h2>
      {made && (
        <div className="moves-out">
          <h3>Do not turn these again</h3>
          <p>
            They are noted as made. The next moves come from the new readings. Not turned after all? Undo.
          </p>
        </div>
      )}
      {moves.moves.length === 0 && moves.outOfReach.length === 0 && (
        <p className="moves-none">{glued(moves.sentence)}</p>
      )}
      {moves.outOfReach.length > 0 && (
        <div className="moves-out">
          <h3>Out of reach</h3>
          <p>{glued(moves.sentence)}</p>
        </div>
      )}
      <ol className="moves">
        {moves.moves.map((move) => (
          <MoveCard key={move.order} move={move} made={made} />
        ))}
      </ol>
      {moves.insideNow !== null && (
        <p className="moves-chance">
          Inside every limit at once:{' '}
          <strong className="figure-number">{formatChance(moves.insideNow)}</strong> as{' '}
          {made ? 'it was read' : 'it stands'}
          {moves.moves.length > 0 && (
            <>
              , <strong className="figure-number">{moves.insideAfterText}</strong> after the moves
            </>
          )}
          .
        </p>
      )}
      {moves.steeringWheel && <p className="moves-wheel">{glued(moves.steeringWheel.sentence)}</p>}
    </section>
  )
})
