import type { SheetBolt } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { addressOf } from '../../state/use-address.ts'
import { wheelInAddress } from './bolt-place.ts'
import { StateMark } from './state-mark.tsx'
import { upper } from './upper.ts'
import { withoutName } from './without-name.ts'

/** One joint as a row: touched anywhere, it opens. */
export function BoltRow({ bolt, id, stage }: { bolt: SheetBolt; id: string; stage: string }) {
  const place = addressOf(id, stage, wheelInAddress(bolt.wheel), bolt.joint)
  return (
    <li className="bolt">
      <span className="bolt-letter" aria-hidden="true">
        {bolt.letter && <span>{bolt.letter}</span>}
      </span>
      <h3 className="bolt-name">
        <a href={place}>
          {bolt.letter && <span className="unseen">{bolt.letter} </span>}
          {upper(bolt.name)}
        </a>
        <span>{bolt.wheel}</span>
      </h3>
      <p className="bolt-required figure-number">
        <span className="unseen">Required: </span>
        {glued(bolt.required)}
      </p>
      <p className="bolt-state">
        <StateMark bolt={bolt} />
        <span>{bolt.state}</span>
      </p>
      <div className="bolt-todo">
        {bolt.toDo.map((one) => (
          <p key={one.sentence}>
            {glued(withoutName(one.sentence, bolt))}{' '}
            <span className="bolt-remedy">{glued(withoutRequired(one.remedy, bolt))}</span>
          </p>
        ))}
        {bolt.recorded.length > 0 && (
          <p className="bolt-recorded">{glued(bolt.recorded.map(upper).join('. '))}.</p>
        )}
      </div>
      <span className="bolt-box" aria-hidden="true" />
    </li>
  )
}

/** What to do, without the value that stands in the same row already. */
const withoutRequired = (remedy: string, { required }: SheetBolt): string =>
  remedy.replace(` to ${required}`, '')
