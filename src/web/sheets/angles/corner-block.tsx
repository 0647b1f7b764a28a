import { memo, useState } from 'react'
import type { SheetCorner } from '../../../sheet/index.ts'
import { CornerViews } from '../../drawing/corner-views.tsx'
import './choice.css'
import './corner-block.css'

/** The corner drawn from its points, with its parts list. */
export const CornerBlock = memo(function CornerBlock({ corner }: { corner: SheetCorner }) {
  const [chosen, setChosen] = useState<string | null>(null)
  const joint = corner.ride.joints.find((one) => one.letter === chosen)
  return (
    <>
      <CornerViews
        label={corner.title}
        className="corner"
        corner={corner}
        chosen={chosen}
        onChoose={setChosen}
      >
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
      </CornerViews>
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
