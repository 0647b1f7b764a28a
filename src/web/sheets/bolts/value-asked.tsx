import { useEffect, useId, useRef, useState } from 'react'
import type { DoingAct } from '../../../sheet/index.ts'
import { withUnit } from '../../state/with-unit.ts'
import { AskBar } from './ask-bar.tsx'

/** Asks what was read before an act is taken in: an end float. A bare number takes the unit that stands there. */
export function ValueAsked({
  act,
  of,
  onValues,
  onBack,
}: {
  act: DoingAct
  /** Which joint. */
  of: string
  onValues: (values: Readonly<Record<string, string>>) => void
  onBack: () => void
}) {
  const id = useId()
  const asks = act.asks ?? []
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({})
  const first = useRef<HTMLInputElement>(null)
  useEffect(() => first.current?.focus(), [])
  const missing = asks.some(({ path }) => !texts[path]?.trim())
  return (
    <main className="hand" aria-label={act.label}>
      <form
        className="hand-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (missing) return
          onValues(
            Object.fromEntries(asks.map(({ path, text }) => [path, withUnit(texts[path]!.trim(), text)])),
          )
        }}
      >
        <h1>{act.label}</h1>
        <p>{of}</p>
        {asks.map(({ path, label, text }, i) => (
          <div key={path}>
            <label htmlFor={`${id}-${path}`}>{label}</label>
            <input
              id={`${id}-${path}`}
              ref={i === 0 ? first : undefined}
              type="text"
              placeholder={text}
              value={texts[path] ?? ''}
              autoComplete="off"
              autoCapitalize="none"
              spellCheck={false}
              onChange={(event) => setTexts({ ...texts, [path]: event.target.value })}
            />
          </div>
        ))}
        <AskBar isReady={!missing} on="Take it" lacks="Type it above" onBack={onBack} />
      </form>
    </main>
  )
}
