import { useState } from 'react'
import type { PlanSheetLine } from '../../../sheet/index.ts'
import { StageFrame } from '../../shell/stage-frame.tsx'
import type { StageProps } from '../../shell/stage-props.ts'
import { firstHand } from '../../state/use-hand.ts'
import { usePlan } from '../../state/use-plan.ts'
import { Cautions } from '../angles/cautions.tsx'
import { Troubles } from '../angles/troubles.tsx'
import { PlanBands } from './plan-bands.tsx'
import { PlanBeside } from './plan-beside.tsx'
import { PlanFailed } from './plan-failed.tsx'
import { PlanGoal } from './plan-goal.tsx'
import { PlanNext } from './plan-next.tsx'
import { PlanSums } from './plan-sums.tsx'

/** The plan of a job: what is replaced, the order station by station, what to have, what follows. */
export function PlanStage({ job, id, head, foot }: StageProps) {
  const plan = usePlan(job, id)
  const [open, setOpen] = useState<string | null>(null)
  const { sheet } = plan
  const failed = ({ at, words }: PlanSheetLine, what: string) => {
    if (!at) return
    const hand = firstHand()
    setOpen(null)
    job.note(`${what}: ${words}`, [
      {
        kind: 'deviation',
        data: { what, joint: at.joint, wheel: at.wheel, ...(hand ? { hand } : {}) },
      },
    ])
  }
  const trouble = job.trouble ?? plan.trouble
  return (
    <>
      <StageFrame
        head={head}
        foot={foot}
        trouble={trouble}
        wait={sheet ? null : 'Working out what must come apart, and in which order …'}
      >
        {sheet && (
          <div className="plan" aria-busy={plan.working}>
            <Troubles troubles={sheet.troubles} />
            <Cautions cautions={sheet.cautions} title="Before anything is lifted" job={`${id} plan`} />
            <PlanGoal plan={plan} sheet={sheet} />
            {sheet.bands.length > 0 && (
              <div className="plan-laid">
                <div className="plan-main">
                  <PlanSums plan={plan} sheet={sheet} />
                  <PlanFailed branches={sheet.branches} />
                  <PlanBands
                    plan={plan}
                    sheet={sheet}
                    corners={job.sheet?.corners ?? []}
                    open={open}
                    onOpen={setOpen}
                    onFailed={failed}
                  />
                </div>
                <PlanBeside sheet={sheet} corners={job.sheet?.corners ?? []} open={open} id={id} />
              </div>
            )}
          </div>
        )}
      </StageFrame>
      {sheet && <PlanNext plan={plan} sheet={sheet} id={id} onOpen={setOpen} />}
    </>
  )
}
