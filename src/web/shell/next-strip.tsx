import type { Sheet } from '../../sheet/index.ts'
import type { RoundForm } from '../state/messages.ts'
import type { OpenJob } from '../state/use-job.ts'
import './next-strip.css'
import { NextWords } from './next-words.tsx'

/** What comes next: one plain sentence, and one large button when it can be done here. */
export function NextStrip({ sheet, job }: { sheet: Sheet; job: OpenJob }) {
  if (job.form) return <RoundStrip form={job.form} job={job} />
  // The one step that leads to a sheet that this version does not have.
  const over = sheet.next.act === 'handover'
  const canTurn = !job.stale && !job.trouble
  const turn = () => {
    if (job.behind) return
    job.turned(sheet)
  }
  return (
    <section className="next" aria-label="What comes next">
      <NextWords
        text={
          job.stale
            ? 'A text was not understood; the reason stands by its field. Until then this sheet is that of the last readings that were.'
            : `${sheet.next.sentence}${over ? ' Handover has no sheet in this version: print this one for the record.' : ''}`
        }
      />
      {job.stale && !job.trouble && (
        <button type="button" onClick={showRefused}>
          To the field
        </button>
      )}
      {canTurn && over && (
        <button type="button" onClick={() => window.print()}>
          Print this sheet
        </button>
      )}
      {canTurn && !over && (
        <button type="button" aria-disabled={job.behind} onClick={turn}>
          {sheet.next.button}
        </button>
      )}
    </section>
  )
}

/** The first field whose text was not understood, for the hand to mend. */
const showRefused = () => document.querySelector<HTMLInputElement>('.field-refused input')?.focus()

/** While a round is being read: how far it has come, and the button once a gauge is complete. */
function RoundStrip({ form, job }: { form: RoundForm; job: OpenJob }) {
  const all = form.observations.length
  if (all === 0)
    return (
      <section className="next" aria-label="What comes next">
        <p>
          No gauge stands in this job’s log, so there is none to read again. This version takes the first
          round from the job’s file.
        </p>
      </section>
    )
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
