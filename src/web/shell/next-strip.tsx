import { Suspense } from 'react'
import type { Sheet } from '../../sheet/index.ts'
import { addressOf } from '../state/use-address.ts'
import type { OpenJob } from '../state/use-job.ts'
import { later } from './later.tsx'
import './next-strip.css'
import { NextWords } from './next-words.tsx'

/** Needed while a round is being read, and loaded then. */
const RoundStrip = later(async () => ({ default: (await import('./round-strip.tsx')).RoundStrip }))

/** What comes next: one plain sentence, and one large button when it can be done here. */
export function NextStrip({ sheet, job }: { sheet: Sheet; job: OpenJob }) {
  if (job.form)
    return (
      <Suspense>
        <RoundStrip form={job.form} job={job} />
      </Suspense>
    )
  const over = sheet.next.act === 'handover'
  // Readings without a limit judge nothing: the limits come first.
  const values =
    job.row?.kept && sheet.readings.length > 0 && sheet.readings.every(({ limit }) => !limit)
      ? addressOf('values', job.row.id, 'angles')
      : null
  const canTurn = !job.stale && !job.trouble && !values
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
            : sheet.next.sentence
        }
      />
      {job.stale && !job.trouble && (
        <button type="button" onClick={showRefused}>
          To the field
        </button>
      )}
      {values && (
        <a className="next-button" href={values}>
          Type the limits
        </a>
      )}
      {canTurn && over && job.row && (
        <a className="next-button" href={addressOf(job.row.id, 'handover')}>
          {sheet.next.button}
        </a>
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
