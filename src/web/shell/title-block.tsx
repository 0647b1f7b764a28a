import type { Sheet, Stage } from '../../sheet/index.ts'
import type { OpenJob } from '../state/use-job.ts'
import './title-block.css'

/** The title block, as on a drawing: what, which, whose, and whether it is kept. */
export function TitleBlock({ sheet, job, stage }: { sheet: Sheet; job: OpenJob; stage: Stage }) {
  const { title } = sheet
  const fields = [
    ['Vehicle', title.vehicle],
    ['Job', title.job],
    ['Workshop', title.workshop],
    ...(stage === 'Angles'
      ? [
          [
            'Readings',
            [title.round.replace(/^Readings, /, ''), title.method].filter(Boolean).join(': '),
          ] as const,
          ['Inside means', `at least ${Math.round(sheet.threshold * 100)} % sure`] as const,
        ]
      : []),
    ['Source', title.source],
    ['State', stateOf(job)],
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
        Values of a vehicle come from the workshop’s own service information, which stands above this tool, as
        does local inspection law.
      </p>
    </footer>
  )
}

/** Where what was noted is: sealed, a draft and why, or laid on a file that came with the page. */
function stateOf({ edits, row, sealing, kept }: OpenJob): string {
  if (!kept) return 'not kept: this browser refuses to store anything'
  const n = edits.length
  if (row?.kept)
    return n === 0
      ? 'sealed on this device'
      : `${n} not sealed yet${sealing ? `: ${sealing.sentence} ${sealing.remedy}` : ''}`
  return n === 0
    ? 'as in the file'
    : `kept on this device · ${n} ${n === 1 ? 'change' : 'changes'} to the file`
}
