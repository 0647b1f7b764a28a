import { Suspense, useEffect } from 'react'
import type { Stage } from '../../sheet/index.ts'
import { AnglesSheet } from '../sheets/angles/angles-sheet.tsx'
import type { Units } from '../state/messages.ts'
import type { Address } from '../state/use-address.ts'
import { useJob } from '../state/use-job.ts'
import type { KeptRows } from '../state/use-kept-rows.ts'
import { boltParts } from './bolt-parts.tsx'
import { built } from './built-stages.ts'
import { NextStrip } from './next-strip.tsx'
import { ownStages } from './plan-parts.tsx'
import { SheetHead } from './sheet-head.tsx'
import { Spine } from './spine.tsx'
import { StaleNote } from './stale-note.tsx'
import { TitleBlock } from './title-block.tsx'

const stages = Object.keys(built) as Stage[]

/** A job at one of its stages: spine, sheet, title block, next strip; or one joint that fills the screen. */
export function JobPage({
  id,
  address,
  go,
  kept,
  units,
  onUnits,
}: {
  id: string
  address: Address
  go: (...parts: readonly string[]) => void
  kept: KeptRows
  units: Units
  onUnits: (units: Units) => void
}) {
  const stage = stages.find((one) => built[one] === address.stage) ?? 'Angles'
  const Own = ownStages[stage]
  const onBolts = stage === 'Strip' || stage === 'Refit'
  const job = useJob(id, { units, onBolts, kept })
  const { sheet } = job
  const vehicle = job.rows.find((row) => row.id === id)?.vehicle
  useEffect(() => {
    document.title = vehicle ? `${vehicle} · ${stage} · Axlewright` : 'Axlewright'
  }, [vehicle, stage])
  const wait = <p className="page-wait">Working out the sheet …</p>
  if (onBolts && address.joint)
    return (
      <Suspense fallback={wait}>
        <boltParts.Doing job={job} address={address} go={go} />
      </Suspense>
    )
  const head = <SheetHead job={job} id={id} stage={stage} units={units} onUnits={onUnits} onOpen={go} />
  const foot = sheet && <TitleBlock sheet={sheet} job={job} stage={stage} />
  return (
    <div className="page">
      <a className="page-skip" href="#sheet">
        To the sheet
      </a>
      <Spine stages={sheet?.stages ?? []} id={id} open={stage} />
      {Own ? (
        <Suspense
          fallback={
            <main className="page-sheet" id="sheet" tabIndex={-1}>
              {head}
              {wait}
            </main>
          }
        >
          <Own key={id} job={job} id={id} units={units} head={head} foot={foot} />
        </Suspense>
      ) : (
        <>
          <main className="page-sheet" id="sheet" tabIndex={-1}>
            {head}
            <StaleNote job={job} />
            {onBolts ? (
              <Suspense fallback={wait}>
                <boltParts.Sheet key={id} job={job} id={id} stage={stage} />
              </Suspense>
            ) : (
              sheet && <AnglesSheet key={id} sheet={sheet} job={job} />
            )}
            {foot}
            {!sheet && !job.trouble && !onBolts && wait}
          </main>
          {onBolts ? (
            <Suspense>
              <boltParts.Next job={job} id={id} stage={stage} />
            </Suspense>
          ) : (
            sheet && <NextStrip sheet={sheet} job={job} />
          )}
        </>
      )}
    </div>
  )
}
