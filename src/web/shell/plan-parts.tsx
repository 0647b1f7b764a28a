import { lazy } from 'react'
import { NotLoaded } from './not-loaded.tsx'

/** The plan is another part of the page, with a worker of its own: both are loaded when it is opened. */
export const PlanStage = lazy(() =>
  import('../sheets/plan/plan-door.ts').then(
    ({ PlanStage: stage }) => ({ default: stage }),
    () => ({ default: NotLoaded as never }),
  ),
)
