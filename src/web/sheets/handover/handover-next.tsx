import type { HandoverSheet } from '../../../sheet/index.ts'
import '../../shell/next-strip.css'
import { NextWords } from '../../shell/next-words.tsx'
import { addressOf } from '../../state/use-address.ts'
import { leadTo } from '../arrival/lead-to.ts'

/** The one next thing of the handover. */
export function HandoverNext({ sheet, id }: { sheet: HandoverSheet; id: string }) {
  const { sentence, button, place, stage } = sheet.next
  return (
    <section className="next" aria-label="What comes next">
      <NextWords text={sentence} />
      {stage ? (
        <a className="next-button" href={addressOf(id, stage)}>
          {button}
        </a>
      ) : (
        <button type="button" onClick={() => leadTo(`handover-${place}`)}>
          {button}
        </button>
      )}
    </section>
  )
}
