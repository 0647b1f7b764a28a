import { memo, useState } from 'react'
import type { SheetCorner } from '../../../sheet/index.ts'
import { CornerDrawing } from '../../drawing/corner-drawing.tsx'
import type { CornerView } from '../../drawing/corner-view.ts'
import './choice.css'
import './corner-block.css'

const views: readonly (readonly [CornerView, string])[] = [
  ['front', 'Front'],
  ['side', 'Side'],
  ['plan', 'Plan'],
]

/** The corner drawn from its points, with its parts list. */
export const CornerBlock = memo(function CornerBlock({ corner }: { corner: SheetCorner }) {
  const [view, setView] = useState<CornerView>('front')
  const [chosen, setChosen] = useState<string | null>(null)
  const joint = corner.ride.joints.find((one) => one.letter === chosen)
  return (
    <>
      <section aria-label={corner.title} className="corner">
        <h2>{corner.title}</h2>
        <fieldset className="choice">
          <legend className="unseen">View</legend>
          {views.map(([one, word]) => (
            <button key={one} type="button" aria-pressed={one === view} onClick={() => setView(one)}>
              {word}
            </button>
          ))}
        </fieldset>
        <CornerDrawing corner={corner} view={view} chosen={chosen} onChoose={setChosen} />
        <p className="corner-key" aria-live="polite">
          {joint ? (
            <>
              <strong>
                {joint.letter} {joint.name}
              </strong>
              {joint.adjuster ? `: ${joint.adjuster}` : ''}
            </>
          ) : (
            <>
              Ink: ride height{corner.present ? '. Dashed: as it stands' : ''}.{' '}
              <span className="screen-only">Touch a letter for its name.</span>
            </>
          )}
        </p>
      </section>
      <ul className="corner-list" aria-label="Parts list">
        {corner.ride.joints.map((one) => (
          <li key={one.letter}>
            <button
              type="button"
              className="bare"
              aria-pressed={one.letter === chosen}
              onClick={() => setChosen(one.letter === chosen ? null : one.letter)}
            >
              <span className="corner-letter">{one.letter}</span> {one.name}
            </button>
          </li>
        ))}
      </ul>
    </>
  )
})
