import type { SheetBolt, Stage } from '../../../sheet/index.ts'
import { usePrinting } from '../../drawing/use-printing.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { Cautions } from '../angles/cautions.tsx'
import { Troubles } from '../angles/troubles.tsx'
import { BoltRow } from './bolt-row.tsx'

/** The bolt book of a job: what is open first, then what is done, then what nobody opened. */
export function BoltsSheet({ job, id, stage }: { job: OpenJob; id: string; stage: Stage }) {
  const { bolts: book } = job
  const printing = usePrinting()
  if (!book) return job.trouble ? null : <p className="page-wait">Opening the bolt book …</p>
  const closed = book.bolts.filter(({ state, done }) => done && state === 'closed')
  const rows = (bolts: readonly SheetBolt[]) => (
    <ul className="bolts">
      {bolts.map((bolt) => (
        <BoltRow key={`${bolt.wheel} ${bolt.joint}`} bolt={bolt} id={id} stage={stage.toLowerCase()} />
      ))}
    </ul>
  )
  const part = (title: string, bolts: readonly SheetBolt[]) =>
    bolts.length > 0 && (
      <section aria-label={title}>
        <h2 className="bolts-head">
          {title}: {bolts.length}
        </h2>
        {rows(bolts)}
      </section>
    )
  return (
    <div className="bolt-book">
      <Troubles troubles={book.troubles} />
      <Cautions cautions={book.cautions} title="Before a joint is touched" job={id} />
      {part(
        'Open joints',
        book.bolts.filter(({ done }) => !done),
      )}
      {part(
        'Done',
        book.bolts.filter((bolt) => bolt.done && !closed.includes(bolt)),
      )}
      {closed.length > 0 && (
        <details className="bolts-closed" open={stage === 'Strip' || printing}>
          <summary>
            <h2>Not opened in this job: {closed.length}</h2>
          </summary>
          {rows(closed)}
        </details>
      )}
    </div>
  )
}
