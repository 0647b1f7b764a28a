import type { PlanSheet, SheetCorner } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { useMatch } from '../../drawing/use-match.ts'
import { usePrinting } from '../../drawing/use-printing.ts'
import { upper } from '../bolts/upper.ts'
import { cornerOfLine } from './corner-of-line.ts'
import { PlanDrawn } from './plan-drawn.tsx'
import { PlanTicks } from './plan-ticks.tsx'

/** Beside the lines: the joint in hand on the drawing, what to have before lifting, what follows from the work. */
export function PlanBeside({
  sheet,
  corners,
  open,
  id,
}: {
  sheet: PlanSheet
  corners: readonly SheetCorner[]
  open: string | null
  id: string
}) {
  const printing = usePrinting()
  const wide = useMatch('(min-width: 1180px)')
  const lines = sheet.bands.flatMap((band) => band.lines)
  // Nothing opened: the corner where the work begins.
  const line = lines.find((one) => one.id === open) ?? null
  const shown = cornerOfLine(corners, line ?? lines.find(({ wheel }) => wheel !== null) ?? null)
  return (
    <aside className="plan-beside" aria-label="What to have, and what follows">
      {shown && wide && !printing && <PlanDrawn corner={shown} letter={line?.letter ?? null} />}
      {sheet.shopping.length > 0 && (
        <section className="plan-list" aria-label="To have before lifting">
          <h2>To have before lifting</h2>
          {sheet.shopping.map(({ heading, items }) => (
            <PlanTicks key={heading} heading={heading} items={items} job={id} />
          ))}
        </section>
      )}
      {sheet.missing.length > 0 && (
        <section className="plan-list" aria-label="Not in the kit">
          <h2>Not in the kit</h2>
          <Sentences sentences={sheet.missing} />
        </section>
      )}
      {sheet.consequences.length > 0 && (
        <section className="plan-list" aria-label="What follows from the work">
          <h2>What follows from the work</h2>
          <ul className="plan-said">
            {sheet.consequences.map(({ words, because }) => (
              <li key={words}>
                {glued(words)} <span className="plan-because">{glued(upper(because))}.</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {sheet.alternatives.length > 0 && (
        <section className="plan-list" aria-label="Other ways">
          <h2>Other ways</h2>
          <Sentences sentences={sheet.alternatives} />
        </section>
      )}
    </aside>
  )
}

const Sentences = ({ sentences }: { sentences: readonly string[] }) => (
  <ul className="plan-said">
    {sentences.map((one) => (
      <li key={one}>{glued(one)}</li>
    ))}
  </ul>
)
