import type { ArrivalSheet } from '../../../sheet/index.ts'
import '../../shell/next-strip.css'
import { NextWords } from '../../shell/next-words.tsx'
import { addressOf } from '../../state/use-address.ts'

/** The one next thing, and where it is done; nothing keeps anybody from going on to the findings. */
export function ArrivalNext({ sheet, id }: { sheet: ArrivalSheet; id: string }) {
  const { sentence, button, place } = sheet.next
  return (
    <section className="next" aria-label="What comes next">
      <NextWords text={sentence} />
      {place === null ? (
        <a className="next-button" href={addressOf(id, 'findings')}>
          {button}
        </a>
      ) : (
        <button type="button" onClick={() => lead(place)}>
          {button}
        </button>
      )}
    </section>
  )
}

/** Brings a block into view, its first empty field in hand. */
function lead(place: string) {
  const block = document.getElementById(`arrival-${place}`)
  const fields = [...(block?.querySelectorAll<HTMLInputElement>('input, textarea') ?? [])]
  const field = fields.find(({ value }) => value.trim() === '') ?? fields[0]
  block?.scrollIntoView({ block: 'start' })
  field?.focus({ preventScroll: true })
}
