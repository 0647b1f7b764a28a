import { glued } from '../../drawing/glued.ts'
import { StageFrame } from '../../shell/stage-frame.tsx'
import type { StageProps } from '../../shell/stage-props.ts'
import { useCounter } from '../../state/use-counter.ts'
import { Troubles } from '../angles/troubles.tsx'
import { ArrivalNext } from './arrival-next.tsx'
import { HeightBlock } from './height-block.tsx'
import { PressureBlock } from './pressure-block.tsx'
import { ToldBlock } from './told-block.tsx'
import { TyreBlock } from './tyre-block.tsx'

/** The arrival: what is told and looked at before anything is undone, in the order in which it is done. */
export function ArrivalStage({ job, id, units, head, foot }: StageProps) {
  const { sheet, trouble: own, working } = useCounter('arrival', job, id, units)
  const trouble = job.trouble ?? own
  const shared = sheet && { sheet, job, id, units }
  return (
    <>
      <StageFrame head={head} foot={foot} trouble={trouble} wait={sheet ? null : 'Reading what is noted …'}>
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
      </StageFrame>
      {sheet && <ArrivalNext sheet={sheet} id={id} />}
    </>
  )
}
