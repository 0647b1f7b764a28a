import { useId, useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { Workshop } from '../../keep/keep-messages.ts'
import type { Plain } from '../../state/messages.ts'
import { deviceName } from './device-name.ts'
import { holdPaper } from './shown-paper.ts'

/** Makes the workshop that this device works for. */
export function BeginWorkshop({
  onBegun,
}: {
  onBegun: (workshop: Workshop, paper: readonly string[]) => void
}) {
  const id = useId()
  const [name, setName] = useState('')
  const [trouble, setTrouble] = useState<Plain | null>(null)
  const begin = () =>
    askKeeper('begin', { name: name.trim(), device: deviceName() }).then(
      ({ workshop, paper }) => {
        holdPaper(paper)
        onBegun(workshop, paper)
      },
      (why: Plain) => setTrouble(why),
    )
  return (
    <form
      className="beside-field"
      onSubmit={(event) => {
        event.preventDefault()
        if (name.trim()) void begin()
      }}
    >
      <label htmlFor={id}>What is the workshop called?</label>
      <input id={id} value={name} autoComplete="off" onChange={(event) => setName(event.target.value)} />
      <small>
        The name stands on every proof. This device becomes its owner, and a root is made that is put on
        paper.
      </small>
      {trouble && (
        <p role="alert">
          {trouble.sentence} {trouble.remedy}
        </p>
      )}
      <div className="beside-do">
        <button type="submit" className="primary" aria-disabled={!name.trim()}>
          Make the workshop
        </button>
      </div>
    </form>
  )
}
