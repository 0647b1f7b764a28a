import type { ReactNode } from 'react'
import type { PlanSheetLine } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import type { LineStep } from '../../state/moved-line.ts'
import { upper } from '../bolts/upper.ts'

const steps: readonly (readonly [LineStep, string])[] = [
  ['earlier', 'Earlier'],
  ['later', 'Later'],
  ['station before', 'Station before'],
  ['station after', 'Station after'],
]
/** As many as the eye takes in; the rest is counted. */
const most = 5

/** Why a line stands where it stands, and the buttons that move it. */
export function PlanLineMore({
  line,
  first,
  last,
  onGo,
  onMove,
  onFailed,
  drawn,
}: {
  line: PlanSheetLine
  first: boolean
  last: boolean
  onGo: (id: string) => void
  onMove: (id: string, step: LineStep) => void
  /** Notes what went wrong there: the plan is made anew with it. */
  onFailed: (what: string) => void
  /** The corner with the line's joint; null where it stands elsewhere. */
  drawn: ReactNode
}) {
  return (
    <>
      <div className="plan-steps">
        {steps.map(([step, word]) => (
          <button
            key={step}
            type="button"
            data-step={step}
            disabled={step === 'earlier' || step === 'station before' ? first : last}
            onClick={() => onMove(line.id, step)}
          >
            {word}
          </button>
        ))}
      </div>
      <dl>
        {line.why && (
          <>
            <dt>Why</dt>
            <dd>{glued(sentence(line.why))}</dd>
          </>
        )}
        {line.records.length > 0 && (
          <>
            <dt>Write down</dt>
            <dd>{glued(sentence(line.records.join(', ')))}</dd>
          </>
        )}
        {line.waitsFor.length > 0 && (
          <>
            <dt>Waits for</dt>
            <dd>
              <Lines
                lines={line.waitsFor.map(({ id, words, why }) => ({
                  id,
                  words,
                  note: why === words ? '' : why,
                }))}
                onGo={onGo}
              />
            </dd>
          </>
        )}
        {line.waitedForBy.length > 0 && (
          <>
            <dt>Waited for by</dt>
            <dd>
              <Lines lines={line.waitedForBy.map((one) => ({ ...one, note: '' }))} onGo={onGo} />
            </dd>
          </>
        )}
      </dl>
      {line.at && line.at.fails.length > 0 && <WentWrong fails={line.at.fails} onFailed={onFailed} />}
      {drawn}
    </>
  )
}

const sentence = (words: string) => `${upper(words)}${/[.?!]$/.test(words) ? '' : '.'}`

function Lines({
  lines,
  onGo,
}: {
  lines: readonly { readonly id: string; readonly words: string; readonly note: string }[]
  onGo: (id: string) => void
}) {
  return (
    <ul className="plan-waits">
      {lines.slice(0, most).map(({ id, words, note }) => (
        <li key={id}>
          <button type="button" className="bare" onClick={() => onGo(id)}>
            {glued(words)}
          </button>
          {note && <span className="plan-why">{glued(sentence(note))}</span>}
        </li>
      ))}
      {lines.length > most && <li className="plan-waits-more">and {lines.length - most} more</li>}
    </ul>
  )
}

/** What can go wrong at the joint: one touch notes it, and the plan goes on from there. */
function WentWrong({ fails, onFailed }: { fails: readonly string[]; onFailed: (what: string) => void }) {
  return (
    <details className="plan-wrong screen-only">
      <summary>It does not go as planned</summary>
      <p>Touch what it is. It is noted in the log, and the plan is made anew from there.</p>
      <div className="plan-steps">
        {fails.map((what) => (
          <button key={what} type="button" onClick={() => onFailed(what)}>
            {upper(what)}
          </button>
        ))}
      </div>
    </details>
  )
}
