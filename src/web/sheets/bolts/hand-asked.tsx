import { useEffect, useId, useRef, useState } from 'react'

/** Asks whose hand it was; those known on this device are one touch. */
export function HandAsked({
  title,
  why,
  known,
  onHand,
  onBack,
}: {
  title: string
  why: string
  known: readonly string[]
  onHand: (hand: string) => void
  onBack: () => void
}) {
  const id = useId()
  const [text, setText] = useState('')
  const field = useRef<HTMLInputElement>(null)
  useEffect(() => field.current?.focus(), [])
  const sign = text.trim()
  return (
    <main className="hand" aria-label={title}>
      <form
        className="hand-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (sign) onHand(sign)
        }}
      >
        <h1>{title}</h1>
        <p id={`${id}-why`}>{why}</p>
        {known.length > 0 && (
          <div className="hand-known">
            {known.map((hand) => (
              <button key={hand} type="button" onClick={() => onHand(hand)}>
                {hand}
              </button>
            ))}
          </div>
        )}
        <label htmlFor={id}>{known.length > 0 ? 'Somebody else' : 'Initials'}</label>
        <input
          id={id}
          ref={field}
          type="text"
          value={text}
          maxLength={12}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          aria-describedby={`${id}-why`}
          onChange={(event) => setText(event.target.value)}
        />
        <div className="doing-bar">
          <button type="button" className="doing-back" onClick={onBack}>
            Back
          </button>
          <button
            type="submit"
            className={sign === '' ? 'doing-later' : 'doing-act'}
            aria-disabled={sign === ''}
          >
            {sign === '' ? 'Type them above' : `Go on as ${sign}`}
          </button>
        </div>
      </form>
    </main>
  )
}
