import type { JobRow } from '../state/messages.ts'
import './job-list.css'

/** The jobs on this device: rows on paper. */
export function JobList({
  rows,
  id,
  onOpen,
}: {
  rows: readonly JobRow[]
  id: string
  onOpen: (id: string) => void
}) {
  return (
    <ul className="job-list" aria-label="Jobs">
      {rows.map((row) => (
        <li key={row.id}>
          <button
            type="button"
            className="bare"
            aria-current={row.id === id ? 'true' : undefined}
            onClick={() => onOpen(row.id)}
          >
            <strong>{row.vehicle}</strong>
            <span>{row.job}</span>
            <span className="job-list-source">{row.id === id ? 'open now' : row.source}</span>
          </button>
        </li>
      ))}
    </ul>
  )
}
