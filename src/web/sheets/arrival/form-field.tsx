import { useId } from 'react'
import type { ArrivalNoted } from '../../../sheet/index.ts'
import type { Form } from '../../state/use-form.ts'
import type { OpenJob } from '../../state/use-job.ts'
import type { NoteHand } from '../../state/use-note.ts'
import '../angles/reading-field.css'

/**
 * One text of a form. What is noted already stands as it was typed and is typed over in its place; the rest waits in the
 * form until it is noted.
 */
export function FormField({
  name,
  label,
  noted,
  form,
  job,
  said,
  proposed = '',
  example,
  hint,
  long = false,
  kind,
}: {
  /** Its path in the entry. */
  name: string
  label: string
  noted: ArrivalNoted | null
  form: Form
  job: OpenJob
  said: NoteHand
  proposed?: string
  /** What such a text looks like, shown while the field is empty. */
  example?: string | undefined
  hint?: string | undefined
  long?: boolean
  kind?: 'tel'
}) {
  const id = useId()
  const stands = noted?.texts[name]
  const input = { entry: noted?.entry ?? -1, path: name, label, text: stands ?? '' }
  const isNoted = stands !== undefined
  const text = isNoted ? job.hand.textOf(input) : form.text(name, proposed)
  const refusal = isNoted
    ? job.hand.refusalOf(input)
    : isAbout(said.refusal?.field, name)
      ? said.refusal
      : null
  const change = (next: string) => {
    if (isNoted) job.hand.type(input, next)
    else {
      said.forget()
      form.set(name, next)
    }
  }
  const shared = {
    id,
    value: text,
    placeholder: exampleWords(example),
    autoComplete: 'off',
    'aria-invalid': refusal !== null,
    'aria-describedby': `${id}-why`,
  } as const
  return (
    <div className={`field${refusal ? ' field-refused' : ''}${long ? ' field-long' : ''}`}>
      <label htmlFor={id}>{label}</label>
      {long ? (
        <textarea {...shared} rows={2} onChange={({ target }) => change(target.value)} />
      ) : (
        <input
          {...shared}
          type={kind ?? 'text'}
          autoCapitalize="none"
          spellCheck={false}
          onChange={({ target }) => change(target.value)}
        />
      )}
      <p className="field-why" id={`${id}-why`} aria-live="polite">
        {refusal ? `${refusal.sentence} ${refusal.remedy}` : hint}
      </p>
    </div>
  )
}

/** In a narrow field there is only room for the text itself. */
const exampleWords = (example: string | undefined) =>
  example === undefined || example.length < 6 ? example : `such as ${example}`

/** A refusal names the field by its path in the entry, and then what corrected it. */
function isAbout(field: string | undefined, name: string): boolean {
  const path = field?.split(',')[0]
  return path === name || path?.startsWith(`${name}.`) === true
}
