import { useEffect } from 'react'
import { AnglesSheet } from '../sheets/angles/angles-sheet.tsx'
import { firstJob } from '../state/demo-jobs.ts'
import { useAddress } from '../state/use-address.ts'
import { useJob } from '../state/use-job.ts'
import './app.css'
import { NextStrip } from './next-strip.tsx'
import { SheetHead } from './sheet-head.tsx'
import { Spine } from './spine.tsx'
import { StaleNote } from './stale-note.tsx'
import { TitleBlock } from './title-block.tsx'

/** The whole page: spine, sheet, title block, next strip. */
export function App() {
  const [address, go] = useAddress()
  const id = address || firstJob
  const job = useJob(id)
  const { sheet } = job
  useEffect(() => {
    document.title = sheet ? `${sheet.title.vehicle} · Angles · Axlewright` : 'Axlewright'
  }, [sheet])
  return (
    <div className="page">
      <a className="page-skip" href="#sheet">
        To the sheet
      </a>
      <Spine stages={sheet?.stages ?? []} />
      <main className="page-sheet" id="sheet" tabIndex={-1}>
        <SheetHead job={job} id={id} onOpen={go} />
        <StaleNote job={job} />
        {sheet && (
          <>
            <AnglesSheet key={id} sheet={sheet} job={job} />
            <TitleBlock sheet={sheet} job={job} />
          </>
        )}
        {!sheet && !job.trouble && <p className="page-wait">Working out the sheet …</p>}
      </main>
      {sheet && <NextStrip sheet={sheet} job={job} />}
    </div>
  )
}
