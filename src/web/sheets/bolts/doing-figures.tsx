import type { BoltDoing } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'

/** The numbers, as they stand on the scale in the hand. A turn stands in the drawing where there is a torque too. */
export function DoingFigures({ doing }: { doing: BoltDoing }) {
  const torques = doing.figures.filter(({ unit }) => unit !== '°')
  const shown = torques.length > 0 ? torques : doing.figures
  return (
    <>
      {shown.length > 0 && (
        <dl className="doing-figures">
          {shown.map(({ label, value, unit, atFastener }) => (
            <div key={label}>
              <dt className="overline">{label}</dt>
              <dd>
                <p className="doing-number figure-number">
                  <strong>{value}</strong> {unit}
                </p>
                {atFastener && <p>{glued(atFastener)}</p>}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {doing.with && <p className="doing-with">{glued(doing.with)}</p>}
    </>
  )
}
