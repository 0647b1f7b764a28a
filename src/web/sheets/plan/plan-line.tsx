import { type ReactNode, useId } from 'react'
import type { PlanSheetLine } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import type { LineStep } from '../../state/moved-line.ts'
import { upper } from '../bolts/upper.ts'
import { PlanLineMore } from './plan-line-more.tsx'

/** One action. Touched, it says why it stands here; what is wrong with it stands open always. */
export function PlanLine({
  line,
  number,
  open,
  first,
  last,
  onOpen,
  onGo,
  onMove,
  onFailed,
  drawn,
}: {
  line: PlanSheetLine
  number: number
  open: boolean
  first: boolean
  last: boolean
  onOpen: () => void
  onGo: (id: string) => void
  onMove: (id: string, step: LineStep) => void
  onFailed: (line: PlanSheetLine, what: string) => void
  drawn: ReactNode
}) {
  const more = useId()
  const facts = [line.value, line.tool, line.place].filter((one) => one !== '')
  return (
    <li
      className={`plan-line${line.broken.length > 0 ? ' plan-line-broken' : ''}${open ? ' plan-line-here' : ''}`}
      data-line={line.id}
    >
      <span className="plan-number figure-number">{number}</span>
      <span className="plan-letter" aria-hidden="true">
        {line.letter && <span className="plan-ring">{line.letter}</span>}
      </span>
      <div className="plan-words">
        <button
          type="button"
          className="plan-line-open"
          aria-expanded={open}
          aria-controls={more}
          onClick={onOpen}
          onKeyDown={(event) => {
            if (!event.altKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return
            event.preventDefault()
            onMove(line.id, event.key === 'ArrowUp' ? 'earlier' : 'later')
          }}
        >
          {glued(line.words)}
        </button>
        {facts.length > 0 && <p className="plan-facts">{glued(facts.map(upper).join(' · '))}</p>}
      </div>
      <span className="plan-minutes figure-number">{line.minutes}</span>
      <span className="plan-box" aria-hidden="true" />
      {line.cautions.length > 0 && (
        <ul className="plan-cautions">
          {line.cautions.map((caution) => (
            <li key={caution}>{glued(caution)}</li>
          ))}
        </ul>
      )}
      {line.broken.map(({ rule, sentence, instead }) => (
        <p key={sentence} className="plan-broken">
          <strong>{rule === 'not yet' ? 'Not yet.' : `Rule ${rule}.`}</strong> {glued(sentence)}{' '}
          <span className="plan-instead">{glued(instead)}</span>
        </p>
      ))}
      <div id={more} className="plan-more" hidden={!open}>
        {open && (
          <PlanLineMore
            line={line}
            first={first}
            last={last}
            onGo={onGo}
            onMove={onMove}
            onFailed={(what) => onFailed(line, what)}
            drawn={drawn}
          />
        )}
      </div>
    </li>
  )
}
