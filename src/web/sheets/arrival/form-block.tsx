import type { ReactNode } from 'react'
import type { NoteHand } from '../../state/use-note.ts'

/** A block of the sheet that is noted as a whole: its title, since when it stands, its fields, and one button. */
export function FormBlock({
  place,
  title,
  noted,
  unnoted = 'not noted yet',
  said,
  button,
  onNote,
  children,
}: {
  /** What the next strip leads to. */
  place: string
  title: string
  /** "noted 07:12 by KB"; null while it is not. */
  noted: string | null
  /** What stands there meanwhile. */
  unnoted?: string
  said: NoteHand
  /** What the button says; null where there is nothing to note. */
  button: string | null
  onNote: () => void
  children: ReactNode
}) {
  return (
    <form
      className="form-block"
      id={place}
      aria-label={title}
      onSubmit={(event) => {
        event.preventDefault()
        if (button !== null && !said.busy) onNote()
      }}
    >
      <div className="form-head">
        <h2>{title}</h2>
        <p className="form-noted">{noted ?? unnoted}</p>
      </div>
      {children}
      <div role="alert">
        {said.refusal && (
          <p className="form-refused">
            Not noted. {said.refusal.sentence} {said.refusal.remedy}
          </p>
        )}
      </div>
      {button && (
        <button type="submit" className="form-note" aria-disabled={said.busy}>
          {button}
        </button>
      )}
    </form>
  )
}
