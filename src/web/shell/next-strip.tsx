import type { Sheet } from '../../sheet/index.ts'
import type { OpenJob } from '../state/use-job.ts'
import './next-strip.css'

/** What comes next: one plain sentence, and one large button when it can be done here. */
export function NextStrip({ sheet, job }: { sheet: Sheet; job: OpenJob }) {
  const canTurn = sheet.moves.moves.length > 0 && !job.stale && !job.trouble
  return (
    <section className="next" aria-label="What comes next">
      <p>{job.stale ? 'First settle the reading that was not understood.' : sheet.next.sentence}</p>
      {canTurn && (
        <button type="button" onClick={() => job.turned(sheet)}>
          {sheet.next.button}
        </button>
      )}
    </section>
  )
}
