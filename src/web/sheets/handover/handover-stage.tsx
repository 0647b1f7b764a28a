import type { ReactNode } from 'react'
import type { Units } from '../../state/messages.ts'
import { useCounter } from '../../state/use-counter.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { Cautions } from '../angles/cautions.tsx'
import { Troubles } from '../angles/troubles.tsx'
import { DecideBlock } from './decide-block.tsx'
import { ElectronicsBlock } from './electronics-block.tsx'
import { ExtraBlock } from './extra-block.tsx'
import { FollowUpBlock } from './follow-up-block.tsx'
import { HandoverNext } from './handover-next.tsx'
import { NotReadyBlock } from './not-ready-block.tsx'
import { PartsBlock } from './parts-block.tsx'
import { RoadBlock } from './road-block.tsx'
import { SignBlock } from './sign-block.tsx'
import { useWho } from './use-who.ts'

/** The handover: what holds the vehicle back, what is due, what is open, and the signature. */
export function HandoverStage({
  job,
  id,
  units,
  head,
  foot,
}: {
  job: OpenJob
  id: string
  units: Units
  head: ReactNode
  foot: ReactNode
}) {
  const { sheet, trouble: own, working } = useCounter('handover', job, id, units)
  const who = useWho()
  const trouble = job.trouble ?? own
  const parts = sheet && { sheet, job, id, who }
  return (
    <>
      <main className="page-sheet" id="sheet" tabIndex={-1}>
        {head}
        <p className={`stale${trouble ? '' : ' unseen'}`} role="status" aria-live="polite">
          {trouble && `${trouble.sentence} ${trouble.remedy}`}
        </p>
        {!sheet && !trouble && <p className="page-wait">Reading what is done and what is open …</p>}
        {sheet && parts && (
          <div className="arrival handover" aria-busy={working}>
            <Troubles troubles={sheet.troubles} />
            <DecideBlock {...parts} />
            <Cautions cautions={sheet.cautions} title="For whoever drives it" job={`${id} handover`} />
            <RoadBlock {...parts} />
            <ElectronicsBlock {...parts} />
            <ExtraBlock {...parts} />
            <FollowUpBlock {...parts} units={units} />
            <PartsBlock {...parts} />
            <NotReadyBlock {...parts} />
            <SignBlock {...parts} units={units} />
          </div>
        )}
        {foot}
      </main>
      {sheet && <HandoverNext sheet={sheet} id={id} />}
    </>
  )
}
