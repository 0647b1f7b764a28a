import type { Stage } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import '../../shell/next-strip.css'
import { addressOf } from '../../state/use-address.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { wheelInAddress } from './bolt-place.ts'
import { nextOpen } from './next-open.ts'
import { upper } from './upper.ts'

/** What comes next in the bolt book: the first joint that is open. */
export function BoltsNext({ job, id, stage }: { job: OpenJob; id: string; stage: Stage }) {
  const { bolts: book } = job
  if (!book) return null
  const next = nextOpen(book.bolts)
  return (
    <section className="next" aria-label="What comes next">
      <p>{glued(book.sentence)}</p>
      {next && (
        <a
          className="next-button"
          href={addressOf(id, stage.toLowerCase(), wheelInAddress(next.wheel), next.joint)}
        >
          {upper(next.name)}, {next.wheel}
        </a>
      )}
    </section>
  )
}
