import { useId } from 'react'
import { formatChance } from '../../../quantity/index.ts'
import type { SheetReading } from '../../../sheet/index.ts'
import { LimitLine } from '../../drawing/limit-line.tsx'
import { typeset } from '../../drawing/typeset.ts'
import { VerdictMark } from '../../drawing/verdict-mark.tsx'
import type { JobHand } from '../../state/use-job.ts'
import { ReadingField } from './reading-field.tsx'
import './reading-row.css'
import { Why } from './why.tsx'

/** The words under "camber left" when no eye sees the drawing. */
function spoken(reading: SheetReading): string {
  const limit = reading.limit
    ? `Limits ${typeset(reading.limit.lowText)} to ${typeset(reading.limit.highText)}.`
    : ''
  const moved = reading.predicted
    ? `After the moves ${reading.predicted.text} ${reading.predicted.spread}.`
    : ''
  return `${limit} ${moved}`.trim()
}

/** One reading: what it is, how surely, against which limits; opened: what was typed, and why. */
export function ReadingRow({
  reading,
  hand,
  open,
  folded,
  onToggle,
}: {
  reading: SheetReading
  hand: JobHand
  open: boolean
  /** Inside, and not asked for: left out on the screen, not on paper. */
  folded: boolean
  onToggle: () => void
}) {
  const panel = useId()
  const refused = reading.inputs.some((input) => hand.refusalOf(input) !== null)
  const shown = open || refused
  return (
    <li
      className={`reading${shown ? ' reading-open' : folded ? ' reading-folded' : ''}`}
      data-reading={reading.name}
    >
      <div className="reading-name">
        <h3>{reading.label}</h3>
        <span>{reading.of}</span>
      </div>
      <p className="reading-result">
        <strong className="figure-number">{reading.text}</strong>
        <span className="figure-number reading-spread">{reading.spread}</span>
        <span className="reading-verdict">
          <VerdictMark verdict={reading.verdict} />
          <span>{reading.verdict}</span>
        </span>
      </p>
      <div className="reading-line">
        <LimitLine reading={reading} />
        <span className="unseen">{spoken(reading)}</span>
      </div>
      <button
        type="button"
        className="bare reading-toggle"
        aria-expanded={shown}
        aria-controls={panel}
        onClick={onToggle}
      >
        <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
          <path d={shown ? 'M3 10H17' : 'M3 10H17M10 3V17'} />
        </svg>
        <span className="unseen">
          {reading.label} {reading.of}: what was read, and why this number
        </span>
      </button>
      {shown && (
        <div className="reading-panel" id={panel}>
          {reading.inputs.length > 0 && (
            <div className="reading-fields">
              {reading.inputs.map((input) => (
                <ReadingField key={`${input.entry} ${input.path}`} input={input} hand={hand} />
              ))}
            </div>
          )}
          <dl className="reading-facts">
            {reading.predicted && (
              <>
                <dt>After the moves</dt>
                <dd className="figure-number">
                  {reading.predicted.text} {reading.predicted.spread}
                </dd>
              </>
            )}
            {reading.atSheetHeight && (
              <>
                <dt>At the sheet’s ride height</dt>
                <dd className="figure-number">
                  {reading.atSheetHeight.text} {reading.atSheetHeight.spread}
                </dd>
              </>
            )}
            {reading.probability !== null && (
              <>
                <dt>Chance to be inside the limits</dt>
                <dd className="figure-number">{formatChance(reading.probability)}</dd>
              </>
            )}
            {reading.limit && (
              <>
                <dt>Limits</dt>
                <dd>
                  <span className="figure-number">
                    {typeset(reading.limit.lowText)} to {typeset(reading.limit.highText)}
                  </span>
                  , {reading.limit.source}
                </dd>
              </>
            )}
          </dl>
          <Why why={reading.why} of={`${reading.label} ${reading.of}`} />
        </div>
      )}
    </li>
  )
}
