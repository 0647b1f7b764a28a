import { useState } from 'react'
import type { FindingsSuspect, SheetCorner } from '../../../sheet/index.ts'
import { CornerDrawing } from '../../drawing/corner-drawing.tsx'
import type { CornerView } from '../../drawing/corner-view.ts'
import { glued } from '../../drawing/glued.ts'
import { tyre } from '../../drawing/tyre.ts'
import '../angles/choice.css'
import { upper } from '../bolts/upper.ts'

const views: readonly (readonly [CornerView, string])[] = [
  ['front', 'Front'],
  ['side', 'Side'],
  ['plan', 'Plan'],
]

/** The corner as it was read, in ink; dashed over it the part displaced as this suspect would have it. */
export function FindingDrawn({
  corners,
  suspect,
}: {
  corners: readonly SheetCorner[]
  suspect: FindingsSuspect
}) {
  const [view, setView] = useState<CornerView>('front')
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
    <section className="finding-drawn" aria-label={`${corner.title}: ${suspect.words}`}>
      <h2>{corner.title}</h2>
      <fieldset className="choice">
        <legend className="unseen">View</legend>
        {views.map(([one, word]) => (
          <button key={one} type="button" aria-pressed={one === view} onClick={() => setView(one)}>
            {word}
          </button>
        ))}
      </fieldset>
      <CornerDrawing
        corner={corner}
        view={view}
        chosen={chosen}
        onChoose={setChosen}
        over={(eye, spot) => (
          <g className="finding-ghost">
            <path
              d={`M${tyre(ghost.figure.wheel, eye)
                .outline.map(spot)
                .map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`)
                .join('L')}Z`}
            />
            {ghost.figure.strokes.filter(moved(corner)).map((stroke) => {
              const [p, q] = [spot(eye(stroke.from)), spot(eye(stroke.to))]
              return (
                <line
                  key={`${stroke.part} ${stroke.from} ${stroke.to}`}
                  x1={p.x}
                  y1={p.y}
                  x2={q.x}
                  y2={q.y}
                />
              )
            })}
          </g>
        )}
      />
      <p className="finding-key">
        Ink: as it was read. Dashed:{' '}
        {glued(`${suspect.words}${ghost.times > 1 ? `, drawn ${ghost.times} times as far as it is` : ''}.`)}
        {joint ? ` ${joint.letter}: ${upper(joint.name)}.` : ''}
      </p>
    </section>
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
