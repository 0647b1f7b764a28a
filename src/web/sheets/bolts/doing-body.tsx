import type { SheetBolt, SheetCorner } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import type { Plain } from '../../state/messages.ts'
import { BoldWords } from './bold-words.tsx'
import { DoingDrawn } from './doing-drawn.tsx'
import { DoingFigures } from './doing-figures.tsx'
import { MarksFound } from './marks-found.tsx'
import { StateMark } from './state-mark.tsx'
import { upper } from './upper.ts'

/** What is done now: which joint, what to set, what it looks like, what to do, what to beware of. */
export function DoingBody({
  bolt,
  corner,
  refusal,
  job,
}: {
  bolt: SheetBolt
  /** The corner that it belongs to; null where none is drawn. */
  corner: SheetCorner | null
  refusal: Plain | null
  /** Under which the job is kept on this device; null where it is not. */
  job: string | null
}) {
  const { doing } = bolt
  return (
    <>
      <div className="doing-first">
        <div className="doing-name">
          {bolt.letter && (
            <span className="doing-letter">
              <span className="unseen">Letter </span>
              {bolt.letter}
            </span>
          )}
          <div>
            <h1>
              {upper(bolt.name)}, {bolt.wheel}
            </h1>
            <p className="doing-kind">
              {upper(bolt.kind)} ·{' '}
              <span className="doing-state">
                <StateMark bolt={bolt} size={15} /> {bolt.state}
              </span>
            </p>
          </div>
        </div>
        <DoingFigures doing={doing} />
      </div>
      <DoingDrawn bolt={bolt} corner={corner} />
      <div className="doing-words">
        <div className="doing-says" aria-live="polite">
          {refusal && (
            <p className="doing-blocked">
              Not taken in: {refusal.sentence} {refusal.remedy}
            </p>
          )}
          {doing.blocked.map((sentence) => (
            <p key={sentence} className="doing-blocked">
              <BoldWords text={sentence} />
            </p>
          ))}
          {doing.says.map((sentence) => (
            <p key={sentence}>
              <BoldWords text={upper(sentence)} />
            </p>
          ))}
        </div>
        {doing.cautions.length > 0 && (
          <ul className="doing-cautions" aria-label="Caution">
            {doing.cautions.map((sentence) => (
              <li key={sentence}>{glued(sentence)}</li>
            ))}
          </ul>
        )}
        <MarksFound bolt={bolt} job={job} />
        {bolt.recorded.length > 0 && (
          <div className="doing-recorded">
            <h2>On record</h2>
            <ul>
              {bolt.recorded.map((sentence) => (
                <li key={sentence}>{glued(upper(sentence))}</li>
              ))}
            </ul>
          </div>
        )}
      </div>
    </>
  )
}
