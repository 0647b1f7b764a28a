import { useId } from 'react'
import type { Who } from './use-who.ts'

/** Whose hand stands beside what is decided and signed on this sheet. */
export function WhoField({ who }: { who: Who }) {
  const id = useId()
  return (
    <div className="field who">
      <label htmlFor={id}>Your initials</label>
      <input
        id={id}
        value={who.hand}
        maxLength={12}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        aria-describedby={`${id}-why`}
        onChange={({ target }) => who.set(target.value)}
      />
      <p className="field-why" id={`${id}-why`}>
        {who.hand === '' ? 'Type them first: they stand beside what you decide and sign.' : ''}
      </p>
    </div>
  )
}
