import { StageFrame } from '../../shell/stage-frame.tsx'
import type { StageProps } from '../../shell/stage-props.ts'
import { useCounter } from '../../state/use-counter.ts'
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
export function HandoverStage({ job, id, units, head, foot }: StageProps) {
  const { sheet, trouble: own, working } = useCounter('handover', job, id, units)
  const who = useWho()
  const trouble = job.trouble ?? own
  const parts = sheet && { sheet, job, id, who }
  return (
    <>
      <StageFrame
        head={head}
        foot={foot}
        trouble={trouble}
        wait={sheet ? null : 'Reading what is done and what is open …'}
      >
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
      </StageFrame>
      {sheet && <HandoverNext sheet={sheet} id={id} />}
    </>
  )
}
