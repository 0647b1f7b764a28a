import type { OpenJob } from '../state/use-job.ts'
import './stale-note.css'

/**
 * Says plainly when the sheet below is not of everything that was typed. A text that was not understood is told
 * aloud here and shown in the strip: the sheet must not jump under the hand that types.
 */
export function StaleNote({ job }: { job: OpenJob }) {
  const text = job.trouble
    ? `${job.trouble.sentence} ${job.trouble.remedy}`
    : job.stale
      ? 'A text was not understood, so this sheet is still that of the last readings that were. The reason stands by the field.'
      : ''
  return (
    <p className={`stale${job.trouble ? '' : ' unseen'}`} role="status" aria-live="polite">
      {text}
      {job.trouble && job.sheet ? ' The sheet below is the last good one.' : ''}
    </p>
  )
}
