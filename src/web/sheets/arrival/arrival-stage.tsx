import type { ReactNode } from 'react'
import { glued } from '../../drawing/glued.ts'
import type { Units } from '../../state/messages.ts'
import { useCounter } from '../../state/use-counter.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { Troubles } from '../angles/troubles.tsx'
import { ArrivalNext } from './arrival-next.tsx'
import { HeightBlock } from './height-block.tsx'
import { PressureBlock } from './pressure-block.tsx'
import { ToldBlock } from './told-block.tsx'
import { TyreBlock } from './tyre-block.tsx'

/** The arrival: what is told and looked at before anything is undone, in the order in which it is done. */
export function ArrivalStage({
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
  const { sheet, trouble: own, working } = useCounter('arrival', job, id, units)
  const trouble = job.trouble ?? own
  const shared = sheet && { sheet, job, id, units }
  return (
    <>
      <main className="page-sheet" id="sheet" tabIndex={-1}>
        {head}
        <p className={`stale${trouble ? '' : ' unseen'}`} role="status" aria-live="polite">
          {trouble && `${trouble.sentence} ${trouble.remedy}`}
        </p>
        {!sheet && !trouble && <p className="page-wait">Reading what is noted …</p>}
        {sheet && shared && (
          <div className="arrival" aria-busy={working}>
            <Troubles troubles={sheet.troubles} />
            <ToldBlock {...shared} />
            <TyreBlock {...shared} />
            <PressureBlock {...shared} />
            <HeightBlock {...shared} />
            <section className="arrival-missing" aria-label="Not noted">
              <h2>Not noted</h2>
              {sheet.missing.length === 0 ? (
                <p>Nothing is missing.</p>
              ) : (
                <ul>
                  {sheet.missing.map(({ what, why }) => (
                    <li key={what}>
                      <strong>{what}:</strong> {glued(why)}.
                    </li>
                  ))}
                </ul>
              )}
            </section>
          </div>
        )}
        {foot}
      </main>
      {sheet && <ArrivalNext sheet={sheet} id={id} />}
    </>
  )
}
