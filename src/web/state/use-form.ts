import { useCallback, useState } from 'react'

/** A form that is being filled in: its texts are kept on this device until they are noted. */
export interface Form {
  /** What stands in a field; before it was touched, what is proposed. */
  text(name: string, proposed?: string): string
  set(name: string, text: string): void
  clear(): void
  /** Every field that holds something. */
  readonly filled: Readonly<Record<string, string>>
}

const placeOf = (form: string) => `axlewright/form/${form}`

function keptTexts(form: string): Readonly<Record<string, string>> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(placeOf(form)) ?? '{}')
    if (typeof kept !== 'object' || kept === null) return {}
    return Object.fromEntries(Object.entries(kept).filter(([, text]) => typeof text === 'string'))
  } catch {
    return {}
  }
}

/** Holds the texts of a form by their names; a reload in the middle loses none. */
export function useForm(form: string): Form {
  const [texts, setTexts] = useState(() => keptTexts(form))
  const keep = useCallback(
    (next: Readonly<Record<string, string>>) => {
      setTexts(next)
      try {
        if (Object.keys(next).length === 0) localStorage.removeItem(placeOf(form))
        else localStorage.setItem(placeOf(form), JSON.stringify(next))
      } catch {
        // A browser that keeps nothing still holds it for as long as the page is open.
      }
    },
    [form],
  )
  return {
    text: (name, proposed = '') => texts[name] ?? proposed,
    set: (name, text) => keep({ ...texts, [name]: text }),
    clear: () => keep({}),
    filled: Object.fromEntries(Object.entries(texts).filter(([, text]) => text.trim() !== '')),
  }
}
