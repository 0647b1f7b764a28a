import { useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { PageProps } from '../../shell/page-props.ts'
import type { JobRow, Plain } from '../../state/messages.ts'
import { useCameRows } from '../../state/use-came-rows.ts'
import { Beside } from '../beside.tsx'
import { ToldLines } from '../told-lines.tsx'
import { TroubleBox } from '../trouble-box.tsx'
import { JobLineRow } from './job-line-row.tsx'
import './jobs.css'
import { KeptWords } from './kept-words.tsx'
import { saveFile } from './save-file.ts'
import { isFound } from './search.ts'
import { TakeIn } from './take-in.tsx'

/** Every job on this device: what, which vehicle, where it stands, what is next, what is due. */
export function JobsPage(page: PageProps) {
  const { kept, go } = page
  const came = useCameRows()
  const [words, setWords] = useState('')
  const [told, setTold] = useState<readonly string[]>([])
  const rows = kept.rows ?? []
  const found = rows.filter((row) => isFound(row, words))
  const open = (row: JobRow) => go(row.id, (row.line.stage ?? 'Handover').toLowerCase())
  const carryOut = (row: JobRow) =>
    askKeeper('carryOut', { job: row.id }).then(
      ({ name, bytes }) => {
        saveFile(name, bytes)
        localStorage.setItem(`axlewright/exported/${row.id}`, row.version)
        setTold([`${name} was handed to the browser’s downloads. Anybody can verify it, on any device.`])
      },
      (why: Plain) => setTold([why.sentence, why.remedy]),
    )
  return (
    <Beside here="jobs" title="Jobs" page={page}>
      <div className="beside-do">
        <button type="button" className="primary" onClick={() => go('new')}>
          New job
        </button>
        <TakeIn onTold={setTold} onRow={kept.update} />
      </div>
      <TroubleBox trouble={kept.trouble} />
      <ToldLines lines={told} />
      {rows.length > 1 && (
        <div className="beside-field">
          <label htmlFor="search">Search</label>
          <input
            id="search"
            type="search"
            value={words}
            placeholder="vehicle, complaint, number, lot of a part"
            onChange={(event) => setWords(event.target.value)}
          />
        </div>
      )}
      {rows.length === 0 ? (
        <p className="beside-note">
          No job is kept on this device yet. Open a new one: a complaint and a layout are enough for a first
          answer. Or look at one of the jobs below, which were invented to show what a job looks like.
        </p>
      ) : (
        <section aria-label="Kept on this device">
          <h2>Kept on this device: {rows.length}</h2>
          <ul className="jobs">
            {found.map((row) => (
              <JobLineRow
                key={row.id}
                row={row}
                onOpen={() => open(row)}
                onCarryOut={() => carryOut(row)}
                onCameBack={() => go('new', row.id)}
              />
            ))}
          </ul>
          {found.length === 0 && (
            <p className="beside-note">Nothing here holds “{words.trim()}”. Search by fewer letters.</p>
          )}
          <KeptWords />
        </section>
      )}
      <section aria-label="To look at">
        <h2>To look at</h2>
        <ul className="jobs">
          {(came ?? []).map((row) => (
            <JobLineRow key={row.id} row={row} onOpen={() => go(row.id, 'angles')} />
          ))}
        </ul>
      </section>
    </Beside>
  )
}
