import { useId, useState } from 'react'
import type { HandoverFact } from '../../../sheet/index.ts'
import type { OpenJob } from '../../state/use-job.ts'
import type { Who } from './use-who.ts'

/** Says how something was put right or done. */
export function ClearField({
  fact,
  job,
  who,
  button,
}: {
  fact: HandoverFact
  job: OpenJob
  who: Who
  button: string
}) {
  const id = useId()
  const [how, setHow] = useState('')
  const ready = how.trim() !== '' && who.hand !== ''
  return (
    <form
      className="handover-clear"
      onSubmit={(event) => {
        event.preventDefault()
        if (!ready) return
        const data = { of: fact.noted.of, how: how.trim(), hand: who.take() }
        job.note(`cleared: ${fact.what}`, [{ kind: 'cleared', data }])
        setHow('')
      }}
    >
      <div className="field">
        <label htmlFor={id}>How it was done: {fact.what}</label>
        <input id={id} value={how} autoComplete="off" onChange={({ target }) => setHow(target.value)} />
      </div>
      <button type="submit" aria-disabled={!ready}>
        {button}
      </button>
    </form>
  )
}
