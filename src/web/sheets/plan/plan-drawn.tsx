import { useState } from 'react'
import type { SheetCorner } from '../../../sheet/index.ts'
import { CornerDrawing } from '../../drawing/corner-drawing.tsx'

/** The corner in hand, lettered; the opened line's joint is marked, or one that is touched. */
export function PlanDrawn({ corner, letter }: { corner: SheetCorner; letter: string | null }) {
  const [picked, setPicked] = useState<string | null>(null)
  const chosen = letter ?? picked
  const joint = corner.ride.joints.find((one) => one.letter === chosen)
  return (
    <section className="plan-drawn" aria-label={corner.title}>
      <h2>{corner.title}</h2>
      <CornerDrawing corner={corner} view="front" chosen={chosen} onChoose={setPicked} />
      <p>{joint ? `${joint.letter} ${joint.name}` : 'The joint of an opened line is marked here.'}</p>
    </section>
  )
}
