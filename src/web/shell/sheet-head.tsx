import { useId, useState } from 'react'
import type { Stage } from '../../sheet/index.ts'
import type { Units } from '../state/messages.ts'
import type { OpenJob } from '../state/use-job.ts'
import { JobList } from './job-list.tsx'
import { LookChoice } from './look-choice.tsx'
import './sheet-head.css'
import { UnitsChoice } from './units-choice.tsx'

/** Which job this is, and what can be done with the sheet as a whole. */
export function SheetHead({
  job,
  id,
  stage,
  units,
  onUnits,
  onOpen,
}: {
  job: OpenJob
  id: string
  stage: Stage
  units: Units
  onUnits: (units: Units) => void
  onOpen: (...parts: readonly string[]) => void
}) {
  const [open, setOpen] = useState<'jobs' | 'sheet' | null>(null)
  const panel = useId()
  const title = job.sheet?.title
  const toggle = (which: 'jobs' | 'sheet') => setOpen(open === which ? null : which)
  return (
    <header className="head">
      <div className="head-row">
        <h1>
          <span className="head-stage">{stage}</span>{' '}
          <span>{title?.vehicle ?? job.rows.find((row) => row.id === id)?.vehicle ?? ''}</span>
          {job.working && job.sheet && <span className="head-working">working it out …</span>}
        </h1>
        <div className="head-buttons">
          {job.undoable && (
            <button type="button" onClick={job.undo}>
              Undo<span className="head-undo">: {job.undoable.label}</span>
            </button>
          )}
          <button
            type="button"
            aria-expanded={open === 'jobs'}
            aria-controls={panel}
            onClick={() => toggle('jobs')}
          >
            Jobs
          </button>
          <button
            type="button"
            aria-expanded={open === 'sheet'}
            aria-controls={panel}
            onClick={() => toggle('sheet')}
          >
            Sheet
          </button>
        </div>
      </div>
      <div id={panel}>
        {open === 'jobs' && (
          <JobList
            rows={job.rows}
            id={id}
            onOpen={(next) => {
              onOpen(next)
              setOpen(null)
            }}
          />
        )}
        {open === 'sheet' && (
          <div className="head-panel">
            <LookChoice />
            <UnitsChoice units={units} onChoose={onUnits} />
            <div className="head-actions">
              {job.row?.kept && (
                <button type="button" onClick={() => onOpen('values', id, stage.toLowerCase())}>
                  Values of this vehicle
                </button>
              )}
              {job.row?.kept && (
                <button type="button" onClick={() => onOpen('vehicles', id)}>
                  Its corner models
                </button>
              )}
              <button type="button" onClick={() => window.print()}>
                Print
              </button>
              {job.edits.length > 0 && !job.row?.kept && (
                <StartAgain onSure={job.startAgain} count={job.edits.length} />
              )}
            </div>
          </div>
        )}
      </div>
    </header>
  )
}

function StartAgain({ onSure, count }: { onSure: () => void; count: number }) {
  const [asking, setAsking] = useState(false)
  if (!asking)
    return (
      <button type="button" onClick={() => setAsking(true)}>
        Start again from the file
      </button>
    )
  return (
    <span className="head-sure">
      <span>
        {count === 1 ? 'Your one change' : `Your ${count} changes`} to this job will be gone from this device.
      </span>
      <button type="button" onClick={onSure}>
        Start again
      </button>
      <button type="button" onClick={() => setAsking(false)}>
        Keep them
      </button>
    </span>
  )
}
