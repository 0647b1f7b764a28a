import { useState } from 'react'
import type { PlanSheet, SheetCorner } from '../../../sheet/index.ts'
import { CornerDrawing } from '../../drawing/corner-drawing.tsx'
import { glued } from '../../drawing/glued.ts'
import { usePrinting } from '../../drawing/use-printing.ts'
import { upper } from '../bolts/upper.ts'
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
  const line = sheet.bands.flatMap(({ lines }) => lines).find((one) => one.id === open)
  const shown = cornerOf(corners, line?.wheel ?? null)
  const [picked, setPicked] = useState<string | null>(null)
  const letter = line?.letter ?? picked
  const joint = shown?.ride.joints.find((one) => one.letter === letter)
  return (
    <aside className="plan-beside" aria-label="What to have, and what follows">
      {shown && !printing && (
        <section className="plan-drawn" aria-label={shown.title}>
          <h2>{shown.title}</h2>
          <CornerDrawing corner={shown} view="front" chosen={letter ?? null} onChoose={setPicked} />
          <p>{joint ? `${joint.letter} ${joint.name}` : 'The joint of an opened line is marked here.'}</p>
        </section>
      )}
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

/** The corner of the wheel at hand; without a wheel the first that is drawn. */
const cornerOf = (corners: readonly SheetCorner[], wheel: string | null): SheetCorner | null =>
  corners.find(
    ({ side, title }) => wheel?.endsWith(side) && title.toLowerCase().includes(wheel.split(' ')[0]!),
  ) ?? (wheel === null ? (corners[0] ?? null) : null)
