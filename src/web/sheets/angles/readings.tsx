import { useState } from 'react'
import type { Sheet } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import type { JobHand } from '../../state/use-job.ts'
import { ReadingRow } from './reading-row.tsx'
import './readings.css'
import { VerdictCount } from './verdict-count.tsx'

/** All readings of the round against their limits. */
export function Readings({ sheet, hand }: { sheet: Sheet; hand: JobHand }) {
  const [open, setOpen] = useState<readonly string[]>([])
  const names = sheet.readings.map((reading) => reading.name)
  const all = names.length > 0 && names.every((name) => open.includes(name))
  const toggle = (name: string) =>
    setOpen(open.includes(name) ? open.filter((other) => other !== name) : [...open, name])
  return (
    <section className="readings" aria-label="Readings">
      <div className="readings-head">
        <h2>
          {sheet.title.round} <span className="readings-method">· {sheet.title.method}</span>
        </h2>
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
            onToggle={() => toggle(reading.name)}
          />
        ))}
      </ul>
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
