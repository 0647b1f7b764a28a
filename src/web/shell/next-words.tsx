import { useState } from 'react'
import { glued } from '../drawing/glued.ts'
import { useWidth } from '../drawing/use-width.ts'

/** Letters in two or three lines, four on a phone: more than that would hide the sheet. */
const room = (width: number) => Math.max(175, Math.round(width * 0.22))

/** The first whole sentences that fit, and the rest. */
function split(text: string, most: number): readonly [string, string] {
  const sentences = text.match(/[^.!?]+(?:[.!?](?=\S)[^.!?]*)*[.!?]*\s*/g) ?? [text]
  let first = ''
  for (const sentence of sentences) {
    if (first !== '' && first.length + sentence.length > most) break
    first += sentence
  }
  return [first.trim(), text.slice(first.length).trim()]
}

/** The plain sentence of the next strip; what goes on for long is one touch away. */
export function NextWords({ text }: { text: string }) {
  const [open, setOpen] = useState(false)
  const [element, width] = useWidth<HTMLDivElement>(390)
  const [first, rest] = split(text, room(width))
  return (
    <div className="next-words" ref={element}>
      <p>
        {glued(first)}
        {open && rest ? ` ${glued(rest)}` : ''}
      </p>
      {rest && (
        <button type="button" className="bare" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? 'Less' : 'More'}
        </button>
      )}
    </div>
  )
}
