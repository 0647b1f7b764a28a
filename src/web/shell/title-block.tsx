import type { Sheet, Stage } from '../../sheet/index.ts'
import type { OpenJob } from '../state/use-job.ts'
import './title-block.css'

/** The title block, as on a drawing: what, which, whose, and whether it is kept. */
export function TitleBlock({ sheet, job, stage }: { sheet: Sheet; job: OpenJob; stage: Stage }) {
  const { title } = sheet
  const changes = job.edits.length
  const kept = !job.kept
    ? 'not kept: this browser refuses to store anything'
    : changes === 0
      ? 'as in the file'
      : `kept on this device · ${changes} ${changes === 1 ? 'change' : 'changes'} to the file`
  const fields = [
    ['Vehicle', title.vehicle],
    ['Job', title.job],
    ['Workshop', title.workshop],
    ...(stage === 'Angles'
      ? [
          ['Readings', `${title.round.replace(/^Readings, /, '')}: ${title.method}`] as const,
          ['Inside means', `at least ${Math.round(sheet.threshold * 100)} % sure`] as const,
        ]
      : []),
    ['Source', title.source],
    ['State', kept],
  ] as const
  return (
    <footer className="title-block">
      <dl>
        {fields.map(([name, text]) => (
          <div key={name} className={text.length > 40 ? 'title-block-wide' : undefined}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <p>
        Arrival and Handover have no sheet in this version; “noted” means that the job’s log has what belongs
        to it. Values of a vehicle come from the workshop’s own service information, which stands above this
        tool, as does local inspection law.
      </p>
    </footer>
  )
}
