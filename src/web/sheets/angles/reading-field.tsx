import { useId } from 'react'
import type { JobHand } from '../../state/use-job.ts'
import './reading-field.css'

/** One thing that was typed. A text that is not understood stays, with the reason beside it. */
export function ReadingField({
  input,
  hand,
  before,
}: {
  input: { readonly entry: number; readonly path: string; readonly label: string; readonly text: string }
  hand: JobHand
  /** What stood here in the round before, shown while the field is empty. */
  before?: string
}) {
  const id = useId()
  const text = hand.textOf(input)
  const refusal = hand.refusalOf(input)
  return (
    <div className={`field${refusal ? ' field-refused' : ''}`}>
      <label htmlFor={id}>{input.label}</label>
      <input
        id={id}
        type="text"
        value={text}
        placeholder={before ? `was ${before}` : undefined}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="done"
        data-entry={input.entry}
        data-path={input.path}
        aria-invalid={refusal !== null}
        aria-describedby={refusal ? `${id}-why` : undefined}
        onChange={(event) => hand.type(input, event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur()
        }}
      />
      <p className="field-why" id={`${id}-why`} aria-live="polite">
        {refusal && (
          <>
            {refusal.sentence} {refusal.remedy}
          </>
        )}
      </p>
    </div>
  )
}
