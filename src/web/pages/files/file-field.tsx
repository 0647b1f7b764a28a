import { useId } from 'react'
import { typeset } from '../../drawing/typeset.ts'
import { withUnit } from '../../state/with-unit.ts'
import { type FilePath, textAt } from './in-file.ts'
import type { FileDraft } from './use-file-draft.ts'
import './files.css'

/** One text of a file. A bare number takes the unit that such a figure has, for the eye to see. */
export function FileField({
  draft,
  path,
  label,
  like,
  of,
}: {
  draft: FileDraft
  path: FilePath
  label: string
  /** How such a text is written; a figure lends its unit. */
  like?: string
  /** What the field belongs to: eyes read it from the row, ears hear it with the label. */
  of?: string
}) {
  const id = useId()
  const text = textAt(draft.file, path)
  const problem = text === '' ? null : draft.problemAt(path)
  return (
    <div className={`file-field${problem ? ' field-refused' : ''}`}>
      <label htmlFor={id}>
        {label}
        {of && <span className="file-unseen">, {of}</span>}
      </label>
      <input
        id={id}
        type="text"
        value={text}
        placeholder={like && `as ${typeset(like)}`}
        autoComplete="off"
        spellCheck={false}
        aria-invalid={problem !== null}
        aria-describedby={problem ? `${id}-why` : undefined}
        onChange={(event) => draft.set(path, event.target.value || undefined)}
        onBlur={() => {
          const whole = like && text ? withUnit(text, like) : text
          if (whole !== text) draft.set(path, whole)
        }}
      />
      {problem && (
        <p className="file-why" id={`${id}-why`}>
          {problem.wrong} Right would be {problem.right}.
        </p>
      )}
    </div>
  )
}
