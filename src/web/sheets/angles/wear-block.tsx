import type { Sheet } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { VerdictMark } from '../../drawing/verdict-mark.tsx'
import type { JobHand } from '../../state/use-job.ts'
import { ReadingField } from './reading-field.tsx'
import './wear-block.css'

/** Play that was found at joints, against its limit. */
export function WearBlock({ wear, hand }: { wear: Sheet['wear']; hand: JobHand }) {
  if (wear.length === 0) return null
  return (
    <section aria-label="Play found">
      <h2 className="heights-head">Play found</h2>
      <ul className="wear">
        {wear.map((one) => (
          <li key={one.inputs.map(({ entry, path }) => `${entry} ${path}`).join()}>
            <div className="wear-name">
              {one.letter && <span className="clamp-letter">{one.letter}</span>}
              <h3>
                {one.name}, {one.wheel}
                {one.direction && <span>{one.direction}</span>}
              </h3>
            </div>
            <div>
              <p className="heights-number">
                <strong className="figure-number">{one.play.text}</strong>{' '}
                <span className="figure-number">{one.play.spread}</span>
              </p>
              <p className="heights-verdict">
                <VerdictMark verdict={one.verdict} />
                <span>
                  {one.verdict}
                  {one.since && `; ${one.since} since`}
                </span>
              </p>
            </div>
            <div className="wear-limits">
              <p>{glued(one.sentence)}</p>
              {one.limits.map((limit) => (
                <p key={`${limit.what} ${limit.text}`} className="heights-limit">
                  {glued(limit.text)}, {limit.what} ({limit.jurisdiction ?? limit.whose}; {limit.source})
                </p>
              ))}
            </div>
            <div className="wear-fields reading-fields">
              {one.inputs.map((input) => (
                <ReadingField key={`${input.entry} ${input.path}`} input={input} hand={hand} />
              ))}
            </div>
          </li>
        ))}
      </ul>
    </section>
  )
}
