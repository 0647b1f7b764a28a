import { useState } from 'react'
import type { FindingsSuspect, SheetCorner } from '../../../sheet/index.ts'
import { CornerViews } from '../../drawing/corner-views.tsx'
import { FigureLines } from '../../drawing/figure-lines.tsx'
import { glued } from '../../drawing/glued.ts'
import '../angles/choice.css'
import { upper } from '../bolts/upper.ts'

/** The corner as it was read, in ink; dashed over it the part displaced as this suspect would have it. */
export function FindingDrawn({
  corners,
  suspect,
}: {
  corners: readonly SheetCorner[]
  suspect: FindingsSuspect
}) {
  const [chosen, setChosen] = useState<string | null>(null)
  const { ghost } = suspect
  const corner =
    ghost && corners.find(({ side, title }) => side === ghost.side && title.includes(` ${ghost.axle},`))
  if (!ghost || !corner)
    return (
      <p className="finding-undrawn">Not drawn: this moves no single point of a corner against the others.</p>
    )
  const joint = corner.ride.joints.find((one) => one.letter === chosen)
  return (
    <CornerViews
      className="finding-drawn"
      label={`${corner.title}: ${suspect.words}`}
      corner={corner}
      chosen={chosen}
      onChoose={setChosen}
      over={(on) => (
        <g className="finding-ghost">
          <FigureLines figure={ghost.figure} on={on} wanted={moved(corner)} />
        </g>
      )}
    >
      <p className="finding-key">
        Ink: as it was read. Dashed:{' '}
        {glued(`${suspect.words}${ghost.times > 1 ? `, drawn ${ghost.times} times as far as it is` : ''}.`)}
        {joint ? ` ${joint.letter}: ${upper(joint.name)}.` : ''}
      </p>
    </CornerViews>
  )
}

/** Lines that stay where they are need no ghost, m. */
const still = 0.001

const moved =
  ({ ride }: SheetCorner) =>
  (stroke: SheetCorner['ride']['strokes'][number], i: number): boolean =>
    (['from', 'to'] as const).some((end) =>
      stroke[end].some((x, k) => Math.abs(x - (ride.strokes[i]?.[end][k] ?? x)) > still),
    )
