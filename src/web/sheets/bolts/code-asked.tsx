import { useEffect, useId, useRef, useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { Plain } from '../../state/messages.ts'
import { AskBar } from './ask-bar.tsx'

/** Asks a person's short code before they take over; each wrong one lets the next wait longer. */
export function CodeAsked({
  sign,
  onHand,
  onBack,
}: {
  sign: string
  onHand: (hand: string) => void
  onBack: () => void
}) {
  const id = useId()
  const [code, setCode] = useState('')
  const [said, setSaid] = useState('')
  const field = useRef<HTMLInputElement>(null)
  useEffect(() => field.current?.focus(), [])
  const check = () =>
    askKeeper('checkCode', { sign, code }).then(
      ({ isTheirs, waits }) => {
        if (isTheirs) return onHand(sign)
        setCode('')
        setSaid(
          waits > 0
            ? `That is not the code of ${sign}. The next one can be typed in ${Math.ceil(waits / 1000)} s.`
            : `That is not the code of ${sign}.`,
        )
      },
      (why: Plain) => setSaid(`${why.sentence} ${why.remedy}`),
    )
  return (
    <main className="hand" aria-label={`The code of ${sign}`}>
      <form
        className="hand-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (code !== '') void check()
        }}
      >
        <h1>{sign}</h1>
        <label htmlFor={id}>Your code</label>
        <input
          id={id}
          ref={field}
          type="password"
          inputMode="numeric"
          value={code}
          maxLength={8}
          autoComplete="off"
          onChange={(event) => setCode(event.target.value)}
        />
        <p role="status">{said}</p>
        <AskBar isReady={code !== ''} on={`Go on as ${sign}`} lacks="Type it above" onBack={onBack} />
      </form>
    </main>
  )
}
