import type { DoingAct } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { isRetreat } from './is-retreat.ts'

/** The large buttons: back, what can be said now, and what comes after it, not yet to be pressed. */
export function DoingBar({
  ready,
  later,
  busy,
  goOn,
  onAct,
  onBack,
  onGoOn,
}: {
  ready: readonly DoingAct[]
  later: DoingAct | null
  busy: boolean
  /** What stands on the button that leads to the next joint; null while this one asks for more. */
  goOn: string | null
  onAct: (act: DoingAct) => void
  onBack: () => void
  onGoOn: () => void
}) {
  return (
    <div
      className={`doing-bar${ready.length + (later || goOn ? 1 : 0) > 2 || (goOn && ready.length > 0) ? ' doing-bar-many' : ''}`}
    >
      <button type="button" className="doing-back" onClick={onBack}>
        Back
      </button>
      {ready.map((act) => (
        <button
          key={act.label}
          type="button"
          className={isRetreat(act) ? 'doing-retreat' : 'doing-act'}
          aria-disabled={busy}
          onClick={() => onAct(act)}
        >
          {glued(wordsOf(act))}
        </button>
      ))}
      {later && (
        <button type="button" className="doing-later" disabled>
          {glued(later.label)}
        </button>
      )}
      {goOn && (
        <button type="button" className="doing-act" onClick={onGoOn}>
          {glued(goOn)}
        </button>
      )}
    </div>
  )
}

/** What an act's button says: how far it is undone means nothing by itself. */
const wordsOf = ({ label, entry }: DoingAct): string =>
  entry?.kind !== 'undone' || label === 'Undone'
    ? label
    : `Undone: ${label.slice(0, 1).toLowerCase()}${label.slice(1)}`
