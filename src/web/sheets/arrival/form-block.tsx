import { type ReactNode, useEffect, useRef } from 'react'
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
  const form = useRef<HTMLFormElement>(null)
  const was = useRef(button)
  // The button goes once it is noted: who works by keyboard stays at the block.
  useEffect(() => {
    if (was.current !== null && button === null && document.activeElement === document.body)
      form.current?.focus({ preventScroll: true })
    was.current = button
  }, [button])
  return (
    <form
      ref={form}
      tabIndex={-1}
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
        <p className="form-noted" role="status">
          {noted ?? unnoted}
        </p>
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
