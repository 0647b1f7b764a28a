import type { FindingsCheck } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { useRead } from '../../state/use-read.ts'
import { upper } from '../bolts/upper.ts'

/** What to check next, each with a box, how the vehicle is held for it, and its minutes. */
export function FindingsChecks({
  checks,
  id,
  onFound,
}: {
  checks: readonly FindingsCheck[]
  id: string
  /** Notes what was found; null where nothing can be noted. */
  onFound: (check: FindingsCheck, found: string) => void
}) {
  if (checks.length === 0) return null
  return (
    <section className="findings-checks" aria-label="Check next">
      <h2>Check next</h2>
      <p className="findings-note">The most telling for its minutes first.</p>
      <ol>
        {checks.map((check) => (
          <Check key={check.id} check={check} place={`${id} findings check ${check.id}`} onFound={onFound} />
        ))}
      </ol>
    </section>
  )
}

function Check({
  check,
  place,
  onFound,
}: {
  check: FindingsCheck
  place: string
  onFound: (check: FindingsCheck, found: string) => void
}) {
  const [done, setDone] = useRead(place, [check.id])
  const { what, where, hold, minutes, tells, notes } = check
  return (
    <li className="check">
      <button type="button" className="bare" aria-pressed={done} onClick={() => setDone(!done)}>
        <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
          <rect x="2" y="2" width="18" height="18" />
          {done && <path d="M6 11.5L9.5 15.5L16.5 6.5" />}
        </svg>
        <span>{glued(`${what}, ${where}`)}</span>
        <span className="check-minutes figure-number">{minutes} min</span>
      </button>
      <p className="check-hold">{glued(hold)}</p>
      {tells && <p className="check-tells">{glued(tells)}</p>}
      {notes && done && (
        <fieldset className="check-found screen-only">
          <legend>Found</legend>
          {notes.finds.map((found) => (
            <button key={found} type="button" onClick={() => onFound(check, found)}>
              {upper(found)}
            </button>
          ))}
        </fieldset>
      )}
    </li>
  )
}
