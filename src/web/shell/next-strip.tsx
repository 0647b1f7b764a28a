import type { Sheet } from '../../sheet/index.ts'
import type { RoundForm } from '../state/messages.ts'
import type { OpenJob } from '../state/use-job.ts'
import './next-strip.css'
import { NextWords } from './next-words.tsx'

/** What comes next: one plain sentence, and one large button when it can be done here. */
export function NextStrip({ sheet, job }: { sheet: Sheet; job: OpenJob }) {
  if (job.form) return <RoundStrip form={job.form} job={job} />
  const canTurn = !job.stale && !job.trouble
  const turn = () => {
    if (!job.behind) job.turned(sheet)
  }
  return (
    <section className="next" aria-label="What comes next">
      <NextWords
        text={job.stale ? 'First settle the reading that was not understood.' : sheet.next.sentence}
      />
      {canTurn && (
        <button type="button" aria-disabled={job.behind} onClick={turn}>
          {sheet.next.button}
        </button>
      )}
    </section>
  )
}

/** While a round is being read: how far it has come, and the button once a gauge is complete. */
function RoundStrip({ form, job }: { form: RoundForm; job: OpenJob }) {
  const all = form.observations.length
  const done = form.observations.filter(({ complete }) => complete).length
  const begun = form.observations.filter(
    ({ complete, fields }) => !complete && fields.some(({ kept, text }) => !kept && text.trim() !== ''),
  ).length
  return (
    <section className="next" aria-label="What comes next">
      <p>
        {done === all ? `All ${all} gauges are complete.` : `Read again: ${done} of ${all} gauges complete.`}{' '}
        {done < all &&
          (begun > 0
            ? `${begun} begun: not counted until every field is filled.`
            : 'A gauge left empty counts as not read.')}
      </p>
      {done > 0 && (
        <button type="button" onClick={job.taken}>
          Take this round
        </button>
      )}
    </section>
  )
}
