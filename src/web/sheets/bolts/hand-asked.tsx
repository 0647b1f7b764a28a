import { useEffect, useId, useRef, useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import { anyKept } from '../../state/any-kept.ts'
import { AskBar } from './ask-bar.tsx'
import { CodeAsked } from './code-asked.tsx'

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
  const [people, setPeople] = useState<readonly string[]>([])
  const [asked, setAsked] = useState<string | null>(null)
  useEffect(() => {
    // Nobody has a code where nothing is kept: the demo is open to all.
    anyKept().then((any) => {
      if (any) askKeeper('people', null).then((back) => setPeople(back.people.map((one) => one.sign)))
    })
  }, [])
  const sign = text.trim()
  const take = (hand: string) => (people.includes(hand) ? setAsked(hand) : onHand(hand))
  const all = [...known, ...people.filter((one) => !known.includes(one))]
  if (asked) return <CodeAsked sign={asked} onHand={onHand} onBack={() => setAsked(null)} />
  return (
    <main className="hand" aria-label={title}>
      <form
        className="hand-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (sign) take(sign)
        }}
      >
        <h1>{title}</h1>
        <p id={`${id}-why`}>{why}</p>
        {all.length > 0 && (
          <div className="hand-known">
            {all.map((hand) => (
              <button key={hand} type="button" onClick={() => take(hand)}>
                {hand}
              </button>
            ))}
          </div>
        )}
        <label htmlFor={id}>{all.length > 0 ? 'Somebody else' : 'Initials'}</label>
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
        <AskBar isReady={sign !== ''} on={`Go on as ${sign}`} lacks="Type them above" onBack={onBack} />
      </form>
    </main>
  )
}
