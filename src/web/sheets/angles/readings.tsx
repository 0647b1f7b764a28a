import { useState } from 'react'
import type { Sheet, SheetReading } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import type { JobHand } from '../../state/use-job.ts'
import { InsideFold } from './inside-fold.tsx'
import { ReadingRow } from './reading-row.tsx'
import './readings.css'
import { VerdictCount } from './verdict-count.tsx'

const settled = ({ verdict }: SheetReading) => verdict === 'inside' || verdict === 'no limit'

/** All readings of the round against their limits. Where there is little room, those inside are one line. */
export function Readings({ sheet, hand, narrow }: { sheet: Sheet; hand: JobHand; narrow: boolean }) {
  const [open, setOpen] = useState<readonly string[]>([])
  const [asked, setAsked] = useState<boolean | null>(null)
  const names = sheet.readings.map((reading) => reading.name)
  const all = names.length > 0 && names.every((name) => open.includes(name))
  const toggle = (name: string) =>
    setOpen(open.includes(name) ? open.filter((other) => other !== name) : [...open, name])
  const inside = sheet.readings.filter((reading) => settled(reading) && !open.includes(reading.name))
  // Nothing left to do: then those inside are what there is to see.
  const fold = asked ?? (narrow && !sheet.readings.every(settled))
  return (
    <section className="readings" aria-label="Readings">
      <div className="readings-head">
        <div>
          <h2>{sheet.title.round}</h2>
          <p className="readings-method">{sheet.title.method}</p>
        </div>
        <button type="button" className="bare" aria-pressed={all} onClick={() => setOpen(all ? [] : names)}>
          {all ? 'Close all' : 'Open all'}
        </button>
      </div>
      <VerdictCount readings={sheet.readings} />
      <ul>
        {sheet.readings.map((reading) => (
          <ReadingRow
            key={reading.name}
            reading={reading}
            hand={hand}
            open={open.includes(reading.name)}
            folded={fold && settled(reading)}
            onToggle={() => toggle(reading.name)}
          />
        ))}
      </ul>
      {inside.length > 0 && <InsideFold readings={inside} folded={fold} onFold={setAsked} />}
      <p className="readings-key">
        Open mark: as read, between ticks of 95 %. Filled mark: after the moves. Hatched: within the limits.
      </p>
      {sheet.advice.length > 0 && (
        <div className="readings-advice">
          {sheet.advice.map((sentence) => (
            <p key={sentence}>{glued(sentence)}</p>
          ))}
        </div>
      )}
    </section>
  )
}
