import type { ComponentType } from 'react'
import type { Stage } from '../../sheet/index.ts'
import { later } from './later.tsx'
import type { StageProps } from './stage-props.ts'

type Own = ComponentType<StageProps>

/** Stages that are another part of the page, with a worker of their own: both are loaded when they are opened. */
export const ownStages: Partial<Record<Stage, Own>> = {
  Arrival: later(() => import('../sheets/arrival/arrival-door.ts')),
  Plan: later(() => import('../sheets/plan/plan-door.ts')),
  Handover: later(() => import('../sheets/handover/handover-door.ts')),
  Findings: later(() => import('../sheets/findings/findings-door.ts')),
}
