import { useState } from 'react'
import '../sheets/angles/choice.css'
import { chooseLook, keptLook, looks } from './look.ts'

/** Day, night, or the high-contrast day for sun glare. */
export function LookChoice() {
  const [look, setLook] = useState(keptLook)
  return (
    <fieldset className="choice">
      <legend className="overline">Paper</legend>
      {looks.map(([one, word]) => (
        <button
          key={one}
          type="button"
          aria-pressed={one === look}
          onClick={() => {
            chooseLook(one)
            setLook(one)
          }}
        >
          {word}
        </button>
      ))}
    </fieldset>
  )
}
