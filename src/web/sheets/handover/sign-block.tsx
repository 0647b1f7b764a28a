import { useState } from 'react'
import { glued } from '../../drawing/glued.ts'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { Plain, Units } from '../../state/messages.ts'
import { useForm } from '../../state/use-form.ts'
import type { HandoverParts } from './handover-parts.ts'
import { ProofButtons } from './proof-buttons.tsx'
import { WhoField } from './who-field.tsx'

/** What is open, what a signature covers, the signature, and what came after it. */
export function SignBlock({ sheet, job, id, who, units }: HandoverParts & { units: Units }) {
  const form = useForm(`${id}/sign`)
  const [busy, setBusy] = useState(false)
  const [trouble, setTrouble] = useState<Plain | null>(null)
  const stops = stopsOf({ sheet, job, id, who })
  const sign = async () => {
    if (busy || stops.length > 0) return
    setBusy(true)
    setTrouble(null)
    try {
      const remark = form.text('remark').trim()
      const { row } = await askKeeper('signOff', { job: id, hand: who.take(), remark: remark || null })
      job.update(row)
      form.clear()
    } catch (why) {
      setTrouble(why as Plain)
    }
    setBusy(false)
  }
  return (
    <section className="form-block" id="handover-sign" aria-label="Proof and sign-off" tabIndex={-1}>
      <div className="form-head">
        <h2>Proof and sign-off</h2>
        <p className="form-noted" role="status">
          {sheet.signed?.words ?? 'not signed'}
        </p>
      </div>
      <p className="handover-said">{glued(sheet.sentence)}</p>
      {sheet.open.length > 0 && (
        <section className="handover-open" aria-label="What is open">
          <h3>What is open</h3>
          <ul>
            {sheet.open.map((sentence) => (
              <li key={sentence}>{glued(sentence)}</li>
            ))}
          </ul>
        </section>
      )}
      {sheet.doubts.length > 0 && (
        <section className="handover-open" aria-label="Road-test answers that are not well">
          <h3>On the road test, not well</h3>
          <ul>
            {sheet.doubts.map((sentence) => (
              <li key={sentence}>{glued(sentence)}</li>
            ))}
          </ul>
        </section>
      )}
      {sheet.signed && sheet.signed.late.length > 0 && (
        <section className="handover-late" aria-label="After the sign-off">
          <h3>After the sign-off, and not covered by it: {sheet.signed.late.length}</h3>
          <ul>
            {sheet.signed.late.map((line, i) => (
              // Two notes of one minute may read the same.
              // biome-ignore lint/suspicious/noArrayIndexKey: the list is only added to
              <li key={`${i} ${line}`}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      {(!sheet.signed || sheet.signed.late.length > 0) && <p>{glued(sheet.covers)}</p>}
      <div className="form-fields">
        <WhoField who={who} />
        <div className="field">
          <label>
            Remark, signed with it
            <input
              value={form.text('remark')}
              autoComplete="off"
              onChange={({ target }) => form.set('remark', target.value)}
            />
          </label>
        </div>
      </div>
      <div role="status">
        {stops.map((line) => (
          <p key={line} className="form-aside">
            {line}
          </p>
        ))}
      </div>
      <div role="alert">
        {trouble && (
          <p className="form-refused">
            {trouble.sentence} {trouble.remedy}
          </p>
        )}
      </div>
      {job.row?.kept && (!sheet.signed || sheet.signed.late.length > 0) && (
        <button type="button" className="form-note" aria-disabled={stops.length > 0 || busy} onClick={sign}>
          {`Sign${sheet.signed ? ' again' : ''}${who.hand ? ` as ${who.hand}` : ''}`}
        </button>
      )}
      <ProofButtons job={job} id={id} units={units} />
    </section>
  )
}

/** What keeps it from being signed now, each in a sentence. */
function stopsOf({ sheet, job, who }: HandoverParts): readonly string[] {
  const { row, edits, sealing } = job
  if (!row?.kept)
    return [
      'This job came with the page to be looked at: nothing in it is sealed, so there is nothing to sign.',
    ]
  const n = edits.length
  return [
    ...(n > 0
      ? [
          `${n} ${n === 1 ? 'thing is' : 'things are'} not sealed yet: ${sealing ? `${sealing.sentence} ${sealing.remedy}` : job.refused.length > 0 ? `${job.refused[0]!.sentence} ${job.refused[0]!.remedy}` : 'wait a moment.'}`,
        ]
      : []),
    ...(sheet.conflicts.length > 0 ? ['The log says two things: decide first.'] : []),
    ...(who.hand === '' ? ['Type your initials.'] : []),
  ]
}
