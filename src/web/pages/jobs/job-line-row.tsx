import { useState } from 'react'
import type { JobRow } from '../../state/messages.ts'

/** One job as a row on paper; what else can be done with it is one touch away. */
export function JobLineRow({
  row,
  onOpen,
  onCarryOut,
  onCameBack,
}: {
  row: JobRow
  onOpen: () => void
  onCarryOut?: () => void
  onCameBack?: () => void
}) {
  const [more, setMore] = useState(false)
  const { line } = row
  const [due] = line.due
  return (
    <li className="job-row">
      <button type="button" className="bare job-row-open" onClick={onOpen}>
        <strong>{line.vehicle}</strong>
        <span className="job-row-complaint">{line.complaint}</span>
        <span className="job-row-stands">
          {row.kept ? line.stands : row.source}
          {due && (
            <>
              {' · due: '}
              {due.what}
              {due.on ? `, ${due.on}` : ''}
            </>
          )}
        </span>
        <span className="job-row-number figure-number">{line.job}</span>
      </button>
      {onCarryOut && (
        <div className="job-row-more">
          <button type="button" className="bare" aria-expanded={more} onClick={() => setMore(!more)}>
            {more ? 'Less' : 'More'}
          </button>
          {more && (
            <div className="beside-do">
              <button type="button" onClick={onCarryOut}>
                Export as a file
              </button>
              <button type="button" onClick={onCameBack}>
                It came back
              </button>
              <span className="beside-note">{exported(row)}</span>
            </div>
          )}
        </div>
      )}
    </li>
  )
}

/** What was exported of it so far. */
function exported({ id, version }: JobRow): string {
  const last = localStorage.getItem(`axlewright/exported/${id}`)
  if (last === null) return 'Never exported from here.'
  return last === version ? 'Exported as it stands.' : 'Changed since it was exported.'
}
