import { useId } from 'react'
import { typeset } from '../../drawing/typeset.ts'
import type { JobHand } from '../../state/use-job.ts'
import { withUnit } from '../../state/with-unit.ts'
import './reading-field.css'

/** The field after this one in the same block; in a round that is read, the next that is still empty. */
function nextField(field: HTMLInputElement): HTMLInputElement | undefined {
  const block = field.closest('.round, .reading-panel, .heights, .wear')
  const fields = [...(block?.querySelectorAll<HTMLInputElement>('.field input') ?? [])].filter(
    (one) => one.offsetParent !== null,
  )
  const after = fields.slice(fields.indexOf(field) + 1)
  return block?.classList.contains('round') ? after.find((one) => one.value === '') : after[0]
}

/** One thing that was typed. A bare number takes the unit that stood there before, for the eye to see. A text that is not understood stays, with the reason beside it. */
export function ReadingField({
  input,
  hand,
  before,
  like,
}: {
  input: { readonly entry: number; readonly path: string; readonly label: string; readonly text: string }
  hand: JobHand
  /** What stood here in the round before, shown while the field is empty. */
  before?: string | undefined
  /** How such a figure is written, where nothing stood here before. */
  like?: string | undefined
}) {
  const id = useId()
  const text = hand.textOf(input)
  const refusal = hand.refusalOf(input)
  const whole = withUnit(text, like ?? before ?? input.text)
  return (
    <div className={`field${refusal ? ' field-refused' : ''}`}>
      <label htmlFor={id}>{input.label}</label>
      <input
        id={id}
        type="text"
        value={text}
        placeholder={before && like === undefined ? `was ${typeset(before)}` : like && `as ${typeset(like)}`}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        enterKeyHint="next"
        data-entry={input.entry}
        data-path={input.path}
        aria-invalid={refusal !== null}
        aria-describedby={refusal ? `${id}-why` : undefined}
        onChange={(event) => hand.type(input, event.target.value)}
        onBlur={() => {
          if (whole !== text) hand.type(input, whole)
        }}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return
          const next = nextField(event.currentTarget)
          if (next) next.focus()
          else event.currentTarget.blur()
        }}
      />
      <p className="field-why" id={`${id}-why`} aria-live="polite">
        {refusal && (
          <>
            {refusal.sentence}{' '}
            {whole === text ? refusal.remedy : `It counts as ${typeset(whole)} when you leave the field.`}
          </>
        )}
      </p>
    </div>
  )
}
