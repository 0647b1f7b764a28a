import type { ArrivalSheet } from '../../../sheet/index.ts'
import '../../shell/next-strip.css'
import { NextWords } from '../../shell/next-words.tsx'
import { addressOf } from '../../state/use-address.ts'
import { leadTo } from './lead-to.ts'

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
        <button type="button" onClick={() => leadTo(`arrival-${place}`)}>
          {button}
        </button>
      )}
    </section>
  )
}
