import type { ComponentType, ReactNode } from 'react'
import type { Stage } from '../../sheet/index.ts'
import type { Units } from '../state/messages.ts'
import type { OpenJob } from '../state/use-job.ts'
import { later } from './later.tsx'

type Own = ComponentType<{ job: OpenJob; id: string; units: Units; head: ReactNode; foot: ReactNode }>

/** Stages that are another part of the page, with a worker of their own: both are loaded when they are opened. */
export const ownStages: Partial<Record<Stage, Own>> = {
  Arrival: later(() => import('../sheets/arrival/arrival-door.ts')),
  Plan: later(() => import('../sheets/plan/plan-door.ts')),
  Handover: later(() => import('../sheets/handover/handover-door.ts')),
  Findings: later(() => import('../sheets/findings/findings-door.ts')),
}
