import type { ReactNode } from 'react'
import '../angles/choice.css'

/** A few words to choose one or several of, each one touch; what is noted already is pressed. */
export function FormChoice<W extends string>({
  legend,
  words,
  chosen,
  onChoose,
  drawn,
}: {
  legend: string
  words: readonly W[]
  chosen: readonly string[]
  onChoose: (word: W) => void
  drawn?: (word: W) => ReactNode
}) {
  return (
    <fieldset className="form-choice">
      <legend>{legend}</legend>
      <div className="form-choices">
        {words.map((word) => (
          <button
            key={word}
            type="button"
            aria-pressed={chosen.includes(word)}
            onClick={() => onChoose(word)}
          >
            {drawn?.(word)}
            {word}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
