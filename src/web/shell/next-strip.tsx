import type { Sheet } from '../../sheet/index.ts'
import type { RoundForm } from '../state/messages.ts'
import type { OpenJob } from '../state/use-job.ts'
import './next-strip.css'
import { NextWords } from './next-words.tsx'

/** What comes next: one plain sentence, and one large button when it can be done here. */
export function NextStrip({ sheet, job }: { sheet: Sheet; job: OpenJob }) {
  if (job.form) return <RoundStrip form={job.form} job={job} />
  const canTurn = !job.stale && !job.trouble
  return (
    <section className="next" aria-label="What comes next">
      <NextWords
        text={job.stale ? 'First settle the reading that was not understood.' : sheet.next.sentence}
      />
      {canTurn && (
        <button type="button" onClick={() => job.turned(sheet)}>
          {sheet.next.button}
        </button>
      )}
    </section>
  )
}

/** While a round is being read: how far it has come, and the button once a gauge is complete. */
function RoundStrip({ form, job }: { form: RoundForm; job: OpenJob }) {
  const done = form.observations.filter(({ complete }) => complete).length
  return (
    <section className="next" aria-label="What comes next">
      <p>
        Read again: {done} of {form.observations.length} gauges complete. What stays empty counts as not read.
      </p>
      {done > 0 && (
        <button type="button" onClick={job.taken}>
          Take this round
        </button>
      )}
    </section>
  )
}
