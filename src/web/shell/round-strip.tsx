import type { RoundForm } from '../state/messages.ts'
import type { OpenJob } from '../state/use-job.ts'

/** While a round is being read: how far it has come, and the button once a gauge is complete. */
export function RoundStrip({ form, job }: { form: RoundForm; job: OpenJob }) {
  const all = form.observations.length
  if (all === 0)
    return (
      <section className="next" aria-label="What comes next">
        <p>
          The kit of this job has no gauge that reads an angle or a height. Say under Kit what there is, and
          let the job be worked with it.
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
        {done === all
          ? `All ${all} gauges are complete.`
          : `${form.number === 1 ? 'Read' : 'Read again'}: ${done} of ${all} gauges complete.`}{' '}
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
